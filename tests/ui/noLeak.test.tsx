/**
 * Before the lock the page tells nothing of what is wrong. For every fault of the catalogue the
 * same log is acted out on the sound unit and on the faulty one, test after test, and every page before a lock is the
 * sound unit's to the byte, up to the first thing read, seen or heard that differs. What a browser adds to the markup
 * (what it announces, asks for, focuses) is looked at in tests/browser/twin.test.ts.
 */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { Router } from 'wouter';
import type { Actor } from 'xstate';
import { createActor } from 'xstate';
import { testFigures, testLines } from '../../src/attempt/lines.ts';
import type { Rung } from '../../src/attempt/rung.ts';
import { rightJudgement, typedAsShown, workedAttempt } from '../../src/attempt/worked.ts';
import type { Operation } from '../../src/bench/operation.ts';
import type { Outcome } from '../../src/bench/perform.ts';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { readScenario } from '../../src/scenario/scenario.ts';
import { attemptMachine } from '../../src/ui/flow/attemptMachine.ts';
import { newBench } from '../../src/ui/flow/bench.ts';
import { BenchScreen } from '../../src/ui/screens/bench/BenchScreen.tsx';
import { ACTIONS } from '../../src/verification/actions.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

type Sitting = Actor<typeof attemptMachine>;

/** One test of a sound run: what was done in it. */
interface Done {
  readonly test: string;
  readonly operations: readonly Operation[];
}

function sit(file: object, rung: Rung): Sitting {
  const read = readScenario(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return createActor(attemptMachine, {
    input: { bench: newBench(read.scenario, read.file, { rung }) },
  }).start();
}

const pageOf = (sitting: Sitting): string =>
  renderToStaticMarkup(
    <Router ssrPath="/attempt">
      <BenchScreen state={sitting.getSnapshot()} send={sitting.send} wall={() => 0} keepFailed={false} />
    </Router>,
  );

const soundRun = (file: object): readonly Done[] => {
  const read = readScenario(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { entries } = workedAttempt(read.scenario, read.file);
  const order = entries.flatMap((entry) => (entry.kind === 'prediction' ? [entry.test] : []));
  return order.map((name) => ({
    test: name,
    operations: entries.flatMap((entry) =>
      entry.kind === 'operation' && entry.test === name ? [entry.operation] : [],
    ),
  }));
};

/** The pages of one test before its lock: before it is chosen, chosen, every line answered. */
function pagesBeforeLock(sitting: Sitting, name: string): readonly string[] {
  const pages = [pageOf(sitting)];
  sitting.send({ type: 'choose', test: name });
  pages.push(pageOf(sitting));
  const { scenario } = sitting.getSnapshot().context.bench.run;
  const action = ACTIONS.find(({ id }) => id === name);
  if (action === undefined) throw new Error(name);
  for (const { id } of testLines(scenario, action)) sitting.send({ type: 'answer', id, answer: 'should' });
  for (const { id } of testFigures(scenario, action)) sitting.send({ type: 'figure', id, value: 1 });
  pages.push(pageOf(sitting));
  sitting.send({ type: 'lock', sure: 'would-sign', wall: 0 });
  return pages;
}

const perceptible = ({ readings, seen, events, found, refused, unsafe }: Outcome): string =>
  JSON.stringify({ readings, seen, events, found, refused, unsafe: unsafe.map(({ id }) => id) });

/** Does the test's operations, types and judges; what each operation showed. Stops where `goesOn` says so. */
function carryOn(sitting: Sitting, done: Done, goesOn: (shown: string, i: number) => boolean): boolean {
  for (const [i, operation] of done.operations.entries()) {
    sitting.send({ type: 'do', operation, wall: 0 });
    const last = sitting.getSnapshot().context.bench.happened.at(-1);
    if (last === undefined || !goesOn(perceptible(last.outcome), i)) return false;
  }
  const { run } = sitting.getSnapshot().context.bench;
  for (const [i, taken] of run.readings.entries())
    if (taken.test === done.test) sitting.send({ type: 'note', note: typedAsShown(taken, i), wall: 0 });
  const action = ACTIONS.find(({ id }) => id === done.test);
  if (action === undefined) throw new Error(done.test);
  const note = rightJudgement(sitting.getSnapshot().context.bench.run, action);
  sitting.send({ type: 'judged', note, wall: 0 });
  sitting.send({ type: 'next' });
  return true;
}

const isPossible = (file: object, fault: string): boolean =>
  readScenario({ ...file, faults: [{ fault }] }).ok;

const soundFile = (id: string) => ({ ...(scenarioNamed(id).file as { unit: object }), faults: [] });
const home = soundFile('harbour-mews');

/** A site of each kind, sound; each fault is tried on the first of them that can have it. */
/** Every line asked in turn, or ten lines to choose from. */
const SITES: readonly { readonly id: string; readonly rung: Rung; readonly file: object }[] = [
  { id: 'TN-C-S', rung: 2, file: home },
  { id: 'TN-S, three-phase', rung: 3, file: soundFile('foundry-yard') },
  { id: 'TT', rung: 3, file: soundFile('weir-cottage') },
  {
    rung: 3,
    id: 'TN-C-S, with an arrester and a sensor on its service',
    file: { ...home, unit: { ...home.unit, surgeArrester: true, serviceLimit: 60 } },
  },
];
const siteOf = (fault: string): string | undefined => SITES.find(({ file }) => isPossible(file, fault))?.id;
/** A wrong design stands in the papers: that is where it is to be read. */
const isHidden = (entry: (typeof CATALOGUE)[number]): boolean =>
  entry.kind === 'fault' && entry.alter === undefined;
const FAULTS = CATALOGUE.filter(isHidden).map(({ id }) => ({ id, site: siteOf(id) }));

test('every fault of the catalogue has a site here', () => {
  expect(FAULTS.filter(({ site }) => site === undefined)).toEqual([]);
});

describe.each(SITES)('$id', ({ id, rung, file }) => {
  const run = soundRun(file);
  const sound = run.map((): { pages: readonly string[]; shown: string[] } => ({ pages: [], shown: [] }));
  const sitting = sit(file, rung);
  for (const [i, done] of run.entries()) {
    const shown: string[] = [];
    const pages = pagesBeforeLock(sitting, done.test);
    carryOn(sitting, done, (text) => shown.push(text) > 0);
    sound[i] = { pages, shown };
  }
  const faults = FAULTS.filter(({ site }) => site === id).map((fault) => fault.id);

  test('the sound unit’s own pages hold no reading before it is taken', () => {
    expect(sound[0]?.pages.join('')).not.toMatch(/class="shown"|you wrote/);
  });

  test.each(faults)('%s', (fault) => {
    const faulty = sit({ ...file, faults: [{ fault }] }, rung);
    for (const [i, done] of run.entries()) {
      const pages = pagesBeforeLock(faulty, done.test);
      // Compared as a whole: thousands of pages, and a difference is looked for only where there is one.
      if (pages.join('') !== sound[i]?.pages.join(''))
        expect(pages, `before ${done.test}`).toEqual(sound[i]?.pages);
      const shown = sound[i]?.shown ?? [];
      if (!carryOn(faulty, done, (text, at) => text === shown[at])) return expect(i).toBeLessThan(run.length);
    }
    // A fault that the whole run never showed would be no fault at all, or one that this run cannot show.
    expect(fault, 'never seen in the whole run').toBe('');
  });
});
