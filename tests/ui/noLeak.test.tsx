/**
 * Before the lock the page tells nothing of what is wrong. For every fault of the catalogue the
 * same log is acted out on the sound unit and on the faulty one, test after test, and every page before a lock is the
 * sound unit's to the byte, up to the first thing read, seen or heard that differs. What a browser adds to the markup
 * (what it announces, asks for, focuses) is looked at in tests/browser/twin.test.ts.
 */
import { describe, expect, test } from 'vitest';
import { rightJudgement, typedAsShown } from '../../src/attempt/marks/worked.ts';
import { testFigures, testLines } from '../../src/attempt/record/lines.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import type { Done, Sitting } from './sittings.tsx';
import { FAULTS, pageOf, perceptible, SITES, sit, soundRun } from './sittings.tsx';

/** The pages of one test before its lock: before it is chosen, chosen, every line answered. */
function pagesBeforeLock(sitting: Sitting, name: string): readonly string[] {
  const pages = [pageOf(sitting)];
  sitting.send({ type: 'choose', test: name });
  pages.push(pageOf(sitting));
  sitting.send({ type: 'predict' });
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

/** Does the test's operations, types and judges; what each operation showed. Stops where `goesOn` says so. */
function carryOn(sitting: Sitting, done: Done, goesOn: (shown: string, i: number) => boolean): boolean {
  for (const [i, operation] of done.operations.entries()) {
    const before = sitting.getSnapshot().context.bench.happened.length;
    sitting.send({ type: 'do', operation, wall: 0 });
    const { happened } = sitting.getSnapshot().context.bench;
    const last = happened.at(-1);
    if (last === undefined || happened.length === before) throw new Error(`${done.test}: not done`);
    if (!goesOn(perceptible(last.outcome), i)) return false;
  }
  const { run } = sitting.getSnapshot().context.bench;
  for (const [i, taken] of run.readings.entries())
    if (taken.test === done.test) sitting.send({ type: 'note', note: typedAsShown(taken, i), wall: 0 });
  const action = ACTIONS.find(({ id }) => id === done.test);
  if (action === undefined) throw new Error(done.test);
  sitting.send({ type: 'judge' });
  const note = rightJudgement(sitting.getSnapshot().context.bench.run, action);
  sitting.send({ type: 'judged', note, wall: 0 });
  sitting.send({ type: 'next' });
  return true;
}

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
