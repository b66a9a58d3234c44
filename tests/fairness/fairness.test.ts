/**
 * Whether shipped jobs can be solved, against keys written by hand (keys.ts), with the causes that might be taken for
 * what is wrong; the whole catalogue is tried by `npm run soak`. And the shortest way acted out a second time, by the
 * readings that the instruments show.
 */
import { describe, expect, test } from 'vitest';
import { sameToTheBench } from '../../src/attempt/marks/telling.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { causesOn } from '../../src/fairness/cause.ts';
import { Cells } from '../../src/fairness/cell.ts';
import { testsOf } from '../../src/fairness/dictionary.ts';
import { fairnessOf } from '../../src/fairness/fairness.ts';
import { toldBeforehand } from '../../src/fairness/relations.ts';
import type { Row } from '../../src/fairness/row.ts';
import { begunWith } from '../../src/fairness/row.ts';
import { sweeping } from '../../src/fairness/severity.ts';
import { seconds } from '../../src/laws/quantities.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { beginningOf, papersOf } from '../../src/scenario/scenario.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { greedily, rightNames } from '../helpers/solvers.ts';
import { KEYS } from './keys.ts';

/** What the instruments show in these tests alone. */
function shownIn(scenario: Scenario, faults: Scenario['faults'], tests: readonly string[]) {
  const { world } = beginningOf(scenario, [...faults]);
  return tests.map((id) => {
    const began = seconds(world.timeline.now);
    return { began, run: carryOut(world, actionNamed(id) as TestAction, papersOf(scenario, faults)) };
  });
}

type Shown = ReturnType<typeof shownIn>;

/** Whether no operation of the tests shows a difference beyond both readings' errors; times as the tests began. */
const showsTheSame = (x: Shown, y: Shown): boolean =>
  x.every(({ run, began }, i) => {
    const other = y[i];
    return (
      other !== undefined &&
      run.outcomes.length === other.run.outcomes.length &&
      run.outcomes.every((outcome, n) => {
        const its = other.run.outcomes[n];
        return its !== undefined && sameToTheBench(outcome, its, { x: began, y: other.began });
      })
    );
  });

describe.each(KEYS)('$id', ({ id, rivals, revealedBy, lookalikes, shortest }) => {
  const { scenario } = scenarioNamed(id);
  const found = fairnessOf(scenario, { only: rivals });

  test('can be solved, and comes to its key', () => {
    expect(found.solvable).toBe(true);
    expect(found.revealedBy).toEqual(revealedBy);
    expect(found.lookalikes.map(({ causes }) => causes.join(' + ')).sort()).toEqual([...lookalikes].sort());
    expect(found.shortest?.tests).toEqual(shortest);
    expect(found.shortest?.by).toBe('exact search');
  });

  test('who always does the test that tells most comes to it, or to what reads the same', () => {
    const { left, path } = greedily(found);
    expect([...left].sort()).toEqual([...rightNames(found)].sort());
    expect(path.length).toBeLessThanOrEqual(rivals.length + 1);
  });

  test('its shortest way, done by itself, shows it and nothing that could be told from it', () => {
    const way = found.shortest?.tests ?? [];
    const own = shownIn(scenario, scenario.faults, way);
    expect(own).toHaveLength(shortest.length);
    for (const { cause, sheet } of found.dictionary.rows) {
      if (sheet === null || cause.of === 'own' || (cause.of === 'sound' && revealedBy.length === 0)) continue;
      if (cause.causes.some((one) => lookalikes.includes(one))) continue;
      expect(showsTheSame(own, shownIn(scenario, cause.faults, way)), cause.causes.join()).toBe(false);
    }
  });
});

/** A pilot source of 1.5 kΩ, looked at in A and B alone: the low half hangs on the load in both. */
const FEW = {
  ...(scenarioNamed('harbour-mews').file as object),
  id: 'few-tests',
  faults: [{ fault: 'pilot-source-high', ohms: 1500 }],
  allowed: ['state-a', 'state-b'],
};

test('a job that cannot be solved says which causes read the same, and which tests would tell', () => {
  const read = readScenario(FEW);
  if (!read.ok) throw new Error('not read');
  const { solvable, revealedBy, lookalikes } = fairnessOf(read.scenario, {
    only: ['pilot-contact-dirty', 'pilot-high-half-weak', 'pilot-shorted'],
  });
  expect(revealedBy).toEqual(['state-b']);
  expect(lookalikes.map(({ causes }) => causes)).toEqual([['pilot-contact-dirty']]);
  // Series resistance in the conductor drops the same volts in B, and others where the load is larger.
  expect(lookalikes[0]?.splitBy).toContain('state-d');
  expect(solvable).toBe(false);
  const more = readScenario({ ...FEW, allowed: [...FEW.allowed, ...(lookalikes[0]?.splitBy ?? [])] });
  if (!more.ok) throw new Error('not read');
  expect(fairnessOf(more.scenario, { only: ['pilot-contact-dirty'] }).solvable).toBe(true);
});

test('a fault that no allowed test shows cannot be solved, and has no shortest way', () => {
  const read = readScenario({ ...FEW, allowed: ['state-a', 'coding'] });
  if (!read.ok) throw new Error('not read');
  const found = fairnessOf(read.scenario, { only: ['pilot-contact-dirty'] });
  expect(found.solvable).toBe(false);
  expect(found.shortest).toBeNull();
  expect(found.lookalikes.map(({ causes }) => causes)).toContainEqual([]);
});

test('what is handed over is left at the first reading that differs only where the whole sheet differs', () => {
  const { scenario } = scenarioNamed('fen-barn');
  const cells = new Cells();
  const causes = causesOn(scenario).filter((_, i) => i % 12 === 0);
  const whole = (cause: (typeof causes)[number]) => toItsEnd(begunWith(scenario, cause, cells));
  const own = whole(causesOn(scenario)[0] as (typeof causes)[number]);
  const rowOf = (begun: NonNullable<typeof own>): Row => ({
    ...{ cause: begun.cause, papers: '', sheet: begun.sheet, cells: new Map(), stopped: null },
    ...{ isUnsafe: false, closest: null },
  });
  let left = 0;
  for (const cause of causes) {
    const begun = whole(cause);
    if (own === null || begun === null) throw new Error('no bench');
    const quick = toItsEnd(begunWith(scenario, cause, cells, own.truths));
    const isTold = toldBeforehand(rowOf(own), rowOf(begun));
    // What was seen by looking is not a reading: such a row is done to its end, and told all the same.
    if (quick === null) expect(isTold, cause.causes.join()).toBe(true);
    if (quick === null) left += 1;
  }
  expect(left).toBeGreaterThan(3);
});

/** A positive peak of 11.2 V is nearer to the 12 V of a sound pilot (IEC 61851-1:2017 Table A.2) than one of 9.5 V. */
test('where a cause stops showing follows from the bench, whichever end of its range that is', () => {
  const { scenario } = scenarioNamed('harbour-mews');
  const tests = testsOf(scenario).filter(({ id }) => ['state-a', 'state-b'].includes(id));
  const swept = toItsEnd(
    sweeping(scenario, { fault: 'pilot-high-half-weak', values: { volts: 10.8 } }, tests),
  );
  expect(swept).toMatchObject({ leastVisible: 11.2, mostVisible: 9.5, shows: 'throughout' });
  const frequency = toItsEnd(
    sweeping(scenario, { fault: 'offer-too-high', values: { share: 0.1 } }, tests.slice(0, 1)),
  );
  expect(frequency).toMatchObject({ shows: 'nowhere', from: null });
});
