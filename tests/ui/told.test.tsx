/**
 * What is told as soon as a test is finished gives nothing away of what later tests are to find: in a job of more than one aim
 * the page of every fault is the sound unit's, but for what was measured and what follows from that. And what is told is
 * true: the heading, the rows, the place.
 */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { typedAsShown } from '../../src/attempt/marks/worked.ts';
import { lockstep } from '../../src/attempt/opened/twin.ts';
import type { EntryOf } from '../../src/attempt/record/attempt.ts';
import { testLines } from '../../src/attempt/record/lines.ts';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { FAMILIES } from '../../src/faults/families.ts';
import { aimJob } from '../../src/scenario/aimJobs.ts';
import { AIMS } from '../../src/scenario/aims.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { opensThisUnit } from '../../src/ui/screens/bench/opensThisUnit.ts';
import { ToldPlace } from '../../src/ui/screens/bench/ToldPlace.tsx';
import type { ToldLine } from '../../src/ui/screens/bench/toldLines.ts';
import { toldLines } from '../../src/ui/screens/bench/toldLines.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { logOf } from '../attempt/logs.ts';
import type { InstallationName } from '../faults/installations.ts';
import { scenarioOn } from '../faults/installations.ts';
import { TELLS } from '../faults/tells.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import type { Done, Sitting } from './sittings.tsx';
import { FAULTS, pageOf, perceptible, SITES, sit, soundRun } from './sittings.tsx';

const action = (id: string): TestAction => {
  const found = actionNamed(id);
  if (found === undefined) throw new Error(id);
  return found;
};

interface Finished {
  readonly lines: readonly ToldLine[];
  readonly page: string;
  readonly shown: string;
}

/** Does a test, answers `should` to every line, types what is shown, judges that the unit did all of it. Null where harm ends it. */
function finished(sitting: Sitting, { test: name, operations }: Done): Finished | null {
  sitting.send({ type: 'choose', test: name });
  const { scenario } = sitting.getSnapshot().context.bench.run;
  const { id, expectations } = action(name);
  sitting.send({ type: 'predict' });
  for (const line of testLines(scenario, action(name)))
    sitting.send({ type: 'answer', id: line.id, answer: 'should' });
  sitting.send({ type: 'lock', sure: 'would-sign', wall: 0 });
  const shown: string[] = [];
  for (const operation of operations) {
    sitting.send({ type: 'do', operation, wall: 0 });
    const { bench } = sitting.getSnapshot().context;
    shown.push(perceptible((bench.happened.at(-1) as (typeof bench.happened)[number]).outcome));
    if (sitting.getSnapshot().matches('harmed')) return null;
  }
  const { run } = sitting.getSnapshot().context.bench;
  for (const [i, taken] of run.readings.entries())
    if (taken.test === name) sitting.send({ type: 'note', note: typedAsShown(taken, i), wall: 0 });
  sitting.send({ type: 'judge' });
  sitting.send({
    type: 'judged',
    note: {
      kind: 'judgement',
      test: id,
      lines: expectations(run.papers).map((one) => ({ id: one.id, judged: 'did' })),
      limits: [],
    },
    wall: 0,
  });
  expect(sitting.getSnapshot().matches({ working: 'told' }), name).toBe(true);
  const { bench, since } = sitting.getSnapshot().context;
  const told = {
    lines: toldLines(bench, action(name), bench.run.attempt.entries[since] as EntryOf<'prediction'>),
    page: pageOf(sitting),
    shown: shown.join(''),
  };
  sitting.send({ type: 'next' });
  return told;
}

/** What of a line does not follow from what was measured. */
const unmeasured = ({ id, text, so, otherwise, limit, source, place }: ToldLine) => ({
  id,
  text,
  otherwise,
  limit,
  source,
  points: place?.points,
  so: limit === null ? so : null,
});

describe.each(SITES)('$id', ({ id, rung, file }) => {
  const run = soundRun(file);
  const sitting = sit(file, rung);
  const sound = run.map((done) => finished(sitting, done));

  test('the sound unit is told of', () => {
    expect(sound).not.toContain(null);
    expect(sound[0]?.page).toContain('What was true');
    const wrong = sound.flatMap((told) => told?.lines.filter(({ takeaway }) => takeaway !== null) ?? []);
    expect(wrong.length).toBeGreaterThan(20);
    for (const { said, so } of wrong) {
      expect(said.length).toBeGreaterThan(0);
      for (const { as, you, truth } of said) {
        expect(you).not.toBe(truth);
        // Of what was said beforehand, how sure that was.
        if (as === 'said' && you !== 'nothing') expect(you).toMatch(/, would sign for it$/);
      }
      expect(so).not.toBe('');
    }
    const [most] = sound.filter((told) =>
      told?.lines.some(({ said }) => said.some(({ as }) => as === 'said')),
    );
    expect(most?.page).toMatch(/Sure and wrong: \d+\./);
    expect(most?.page).toContain('you would see');
  });

  test.each(FAULTS.filter(({ site }) => site === id).map((fault) => fault.id))('%s', (fault) => {
    const faulty = sit({ ...file, faults: [{ fault }] }, rung);
    let isAlike = true;
    for (const [i, done] of run.entries()) {
      const told = finished(faulty, done);
      const own = sound[i];
      // Harm ends it, as does what a test finds: then the next one is no longer done as on the sound unit.
      if (told === null || own === null || own === undefined) break;
      isAlike &&= told.shown === own.shown;
      if (isAlike && told.page !== own.page) expect(told.page, done.test).toEqual(own.page);
      const known = new Map(own.lines.map((line) => [line.id, line]));
      for (const line of told.lines) {
        const other = known.get(line.id);
        if (other === undefined) expect(line.limit, `${done.test} ${line.id}`).not.toBeNull();
        else {
          const [a, b] = [unmeasured(line), unmeasured(other)];
          // Where nothing can be read there is no place.
          if (line.place === null || other.place === null)
            expect({ ...a, points: 0 }).toEqual({ ...b, points: 0 });
          else expect(a).toEqual(b);
        }
      }
      if (!isAlike) break;
    }
    expect(isAlike, 'never seen in the whole run').toBe(false);
  });
});

/** Plugged in and read from L1 to PE: what is shown of the place, with that fault or none. */
function placeOf(installation: InstallationName, faults: readonly string[], opensUnit: boolean): string {
  const scenario = scenarioOn(
    installation,
    faults.map((fault) => ({
      fault,
      values: Object.fromEntries(
        CATALOGUE.find(({ id }) => id === fault)?.parameters.map(({ name, default: value }) => [
          name,
          value,
        ]) ?? [],
      ),
    })),
  );
  const followed = lockstep(
    scenario,
    logOf('state-b', [
      { op: 'vehicle', plugged: true, state: 'B' },
      { op: 'measure', quantity: 'voltage', tool: 'meter', between: ['outlet.L1', 'outlet.PE'] },
    ]),
  );
  return renderToStaticMarkup(
    <ToldPlace
      papers={papersOf(scenario)}
      followed={followed}
      place={{ entry: 1, points: FAMILIES }}
      opensUnit={opensUnit}
      number={1}
    />,
  );
}

describe('the place of a wrong line', () => {
  test.each(FAULTS)('of the correct twin tells nothing of $id', ({ id }) => {
    const on = (TELLS[id] as (typeof TELLS)[string])[0];
    const twin = placeOf(on, [id], false);
    expect(twin).toContain('Correct twin');
    expect(twin).toContain('class="ringed"');
    expect(twin).toBe(placeOf(on, [], false));
  });

  test('of this unit rings what is wrong in it', () => {
    const on = (TELLS['line-pole-welded'] as (typeof TELLS)[string])[0];
    expect(placeOf(on, ['line-pole-welded'], true)).toMatch(/This unit, opened.*L1 pole: /s);
  });
});

const UNTOLD = { title: 'a job', brief: 'a brief', by: 'somebody' };

test('this unit is opened in a job of one aim and in no other', () => {
  for (const { id } of AIMS)
    expect(
      opensThisUnit(aimJob({ aim: id, site: 'single-pme', seed: 7 }, UNTOLD) as Pick<Scenario, 'task'>),
      id,
    ).toBe(true);
  for (const id of scenarioIds) expect(opensThisUnit(scenarioNamed(id).scenario), id).toBe(false);
});
