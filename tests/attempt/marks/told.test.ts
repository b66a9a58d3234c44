/**
 * A test counts as it stood when it was first told; in an assessment, where nothing is told, as it stands at the
 * conclusion.
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion, typedAsShown } from '../../../src/attempt/marks/worked.ts';
import type { Run } from '../../../src/attempt/record/run.ts';
import { act, note, startRun } from '../../../src/attempt/record/run.ts';
import { operation } from '../../../src/bench/operation.ts';
import { actionNamed } from '../../../src/verification/actions.ts';
import type { TestAction } from '../../../src/verification/testAction.ts';
import type { Ways } from '../../helpers/person.ts';
import { doTest } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';

const { scenario, file } = scenarioNamed('harbour-mews');
const TEST = 'pe-circuit';
const action = actionNamed(TEST) as TestAction;

/** One test, done and judged in these ways, and what is done after it was judged. */
function sumsOf(rung: 2 | 4, ways: Ways, after: (run: Run) => Run = (run) => run) {
  const done = after(doTest(startRun(scenario, file, { rung }), action, ways));
  return mark(scenario, note(done, rightConclusion(done), 0).attempt).sums;
}

/** Every reading of the test written down anew, so many times what is shown. */
const writtenAnew =
  (times: number) =>
  (run: Run): Run =>
    run.readings.reduce((so, taken, i) => {
      const typed = typedAsShown(taken, i);
      return note(so, { ...typed, value: times * (typed.value ?? 0) }, 0);
    }, run);

/** The path read once more at its end, which nobody judges. */
const readAgain = (run: Run): Run =>
  act(run, TEST, operation({ op: 'measure', quantity: 'continuity', between: ['met', 'supply.PE'] }), 0).run;

const askew: Ways = {
  type: (shown) => ({ ...shown, value: 3 * (shown.value ?? 0), unit: shown.unit === 'Ω' ? 'V' : shown.unit }),
};

describe('told (rung 2)', () => {
  test('a figure written anew earns nothing, in observation and record', () => {
    const before = sumsOf(2, askew);
    const anew = sumsOf(2, askew, writtenAnew(1));
    expect(anew).toEqual(before);
    expect(sumsOf(2, {}).observation.right).toBeGreaterThan(before.observation.right);
    expect(sumsOf(2, {}).record.written.right).toBeGreaterThan(before.record.written.right);
  });

  test('nor does it cost the judgement, which was right of what then stood there', () => {
    expect(sumsOf(2, {}, writtenAnew(100)).judgement).toEqual(sumsOf(2, {}).judgement);
  });

  test('what is read after it is neither judged nor written down', () => {
    const before = sumsOf(2, {});
    const later = sumsOf(2, {}, readAgain);
    expect(later.judgement).toEqual(before.judgement);
    expect(later.observation).toEqual(before.observation);
    expect(later.record).toEqual(before.record);
  });
});

describe('nothing told (rung 4)', () => {
  test('a figure written anew counts', () => {
    expect(sumsOf(4, askew, writtenAnew(1)).observation).toEqual(sumsOf(4, {}).observation);
    expect(sumsOf(4, askew, writtenAnew(1)).record).toEqual(sumsOf(4, {}).record);
  });

  test('what is read later is still to be written down', () => {
    const later = sumsOf(4, {}, readAgain).observation;
    expect(later.of).toBe(sumsOf(4, {}).observation.of + 1);
    expect(later.right).toBe(sumsOf(4, {}).observation.right);
  });
});

test('putting right what was not wrong makes no other unit of it, and a test done anew after it counts no more', () => {
  const mill = scenarioNamed('mill-race');
  const sums = (isRepeated: boolean) => {
    const dead = ['isolate', 'prove-dead'].reduce(
      (so, id) => doTest(so, actionNamed(id) as TestAction, {}),
      startRun(mill.scenario, mill.file, { rung: 2 }),
    );
    const opened = act(doTest(dead, action, askew), null, operation({ op: 'open-cover' }), 0).run;
    const { run, outcome } = act(opened, null, operation({ op: 'put-right', what: 'neutral-joint' }), 0);
    expect(outcome.refused).toBeNull();
    const done = isRepeated ? doTest(run, action, {}) : run;
    return mark(mill.scenario, note(done, rightConclusion(done), 0).attempt).sums;
  };
  expect(sums(true).observation).toEqual(sums(false).observation);
  expect(sums(true).record).toEqual(sums(false).record);
});
