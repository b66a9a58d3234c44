/** What was not done, not read, not judged, or said at the wrong time counts as missed; and what the hurdles look at. */
import { describe, expect, test } from 'vitest';
import { judgementMark } from '../../../src/attempt/marks/judgement.ts';
import { markWhole } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion, rightJudgement, typedAsShown } from '../../../src/attempt/marks/worked.ts';
import type { Judged } from '../../../src/attempt/record/attempt.ts';
import { rightPrediction } from '../../../src/attempt/record/prediction.ts';
import type { Run } from '../../../src/attempt/record/run.ts';
import { act, note, startRun } from '../../../src/attempt/record/run.ts';
import { readRightly } from '../../../src/attempt/record/typed.ts';
import { operation } from '../../../src/bench/operation.ts';
import { actionNamed } from '../../../src/verification/actions.ts';
import { procedure } from '../../../src/verification/procedure.ts';
import type { TestAction } from '../../../src/verification/testAction.ts';
import { AS_ON_A_CORRECT_UNIT, attemptOf, doTest } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { attemptBy } from '../../helpers/trainee.ts';

const mill = scenarioNamed('mill-race');
const { scenario, file } = mill;
const actionOf = (id: string) => actionNamed(id) as TestAction;
const start = () => startRun(scenario, file, { rung: 2 });
const marked = (run: Run) => markWhole(scenario, note(run, rightConclusion(run), 0).attempt);
const sumsOf = (run: Run) => marked(run).marks.sums;

const asked = (tests: readonly TestAction[]) => tests.filter(({ optional }) => optional !== true);
const whole = markWhole(scenario, attemptBy(scenario, file, { tests: asked })).marks.sums;
const nothing = sumsOf(start());

test('tests that were not done are asked for all the same', () => {
  // Whoever types every pair of a proving has more readings to be right in than are due.
  const { observation, record } = nothing;
  for (const [none, all] of [
    [observation, whole.observation],
    [observation.figures, whole.observation.figures],
    [record.written, whole.record.written],
  ] as const) {
    expect(none.right).toBe(0);
    expect(none.of).toBeGreaterThan(all.of / 2);
    expect(none.of).toBeLessThanOrEqual(all.of);
  }
  expect(nothing.judgement).toEqual({
    accepted: { right: 0, of: whole.judgement.accepted.of },
    rejected: { right: 0, of: whole.judgement.rejected.of },
  });
});

describe('pe-circuit, whose reading is the one that is wrong', () => {
  const action = actionOf('pe-circuit');
  const rejectedIn = (sums: typeof whole) => sums.judgement.rejected.right;

  test('measured and not judged is as if it had not been', () => {
    const judged = doTest(start(), action, {});
    const { entries } = judged.attempt;
    let silent = start();
    silent = note(silent, rightPrediction(silent, action), 0);
    for (const step of procedure(silent.world, action, silent.papers))
      silent = act(silent, action.id, step, 0).run;
    expect(entries.at(-1)?.kind).toBe('judgement');
    expect(rejectedIn(sumsOf(judged))).toBeGreaterThan(0);
    expect(sumsOf(silent).judgement).toEqual(nothing.judgement);
  });

  test('a misreading is judged by what was typed', () => {
    const [sum] = action.figures(start().papers);
    const misread = doTest(start(), action, {
      type: (typed, { reading }) =>
        reading.quantity === 'continuity' ? { ...typed, value: sum?.value ?? 0 } : typed,
    });
    const { judgement } = sumsOf(misread);
    const { judgement: read } = sumsOf(doTest(start(), action, {}));
    // All well by what was typed, and judged so: as much is right as was asked.
    expect(judgement.accepted.right + judgement.rejected.right).toBe(
      read.accepted.right + read.rejected.right,
    );
    expect(judgement.rejected.right).toBe(0);
  });

  test('done without measuring, its readings are still due', () => {
    const dead = ['isolate', 'prove-dead'].reduce((so, id) => doTest(so, actionOf(id), {}), start());
    const before = sumsOf(dead).observation;
    let run = note(dead, rightPrediction(dead, action), 0);
    for (const step of procedure(run.world, action, run.papers))
      if (step.op !== 'measure') run = act(run, action.id, step, 0).run;
    run = note(run, rightJudgement(run, action), 0);
    expect(sumsOf(run).observation).toEqual(before);
  });
});

test('of the many pairs of one proving any one is enough, typed or not: one reading is due', () => {
  const action = actionOf('prove-dead');
  const last = (run: Run, taken: Run['readings'][number]) =>
    run.readings.findLast(({ entry }) => entry === taken.entry) === taken;
  let run = note(start(), rightPrediction(start(), action), 0);
  for (const step of procedure(run.world, action, run.papers)) run = act(run, action.id, step, 0).run;
  const proved = run.readings.length;
  for (const [i, taken] of run.readings.entries())
    if (last(run, taken)) run = note(run, typedAsShown(taken, i), 0);
  run = note(run, rightJudgement(run, action), 0);
  const { observation, record } = sumsOf(run);
  const places = new Set(run.readings.map(({ entry }) => entry)).size;
  expect(proved).toBeGreaterThan(places);
  expect(observation).toMatchObject({ right: places, of: nothing.observation.of });
  expect(record.written).toEqual({ right: places, of: nothing.record.written.of });
});

describe('too early and too late', () => {
  const action = actionOf('pe-circuit');

  test('a prediction locked after a reading of its test earns nothing', () => {
    let late = start();
    for (const step of procedure(late.world, action, late.papers)) late = act(late, action.id, step, 0).run;
    late = note(late, rightPrediction(late, action), 0);
    expect(sumsOf(late).prediction).toEqual(nothing.prediction);
    expect(sumsOf(note(start(), rightPrediction(start(), action), 0)).prediction).not.toEqual(
      nothing.prediction,
    );
  });

  test('a figure written before its reading earns nothing', () => {
    const honest = doTest(start(), action, {});
    const early = honest.readings.reduce((run, taken, i) => note(run, typedAsShown(taken, i), 0), start());
    const done = doTest(early, action, { type: () => null });
    expect(sumsOf(done).observation.right).toBe(0);
    expect(sumsOf(honest).observation.right).toBeGreaterThan(0);
  });

  test('what is done after the conclusion changes nothing, unsafe or not', () => {
    const ended = note(start(), rightConclusion(start()), 0);
    const { differs: _, untimely: __, ...once } = markWhole(scenario, ended.attempt).marks;
    const opened = act(ended, 'inspect', operation({ op: 'open-cover' }), 0).run;
    expect(opened.unsafe.map(({ critical }) => critical)).toEqual([true]);
    const { differs: ___, untimely, ...twice } = markWhole(scenario, opened.attempt).marks;
    expect(twice).toEqual(once);
    expect(untimely).toHaveLength(1);
  });

  test('a second conclusion changes nothing', () => {
    const ended = note(start(), rightConclusion(start()), 0);
    const { differs: _, untimely: __, ...once } = markWhole(scenario, ended.attempt).marks;
    const again = note(
      ended,
      { ...rightConclusion(start()), verdict: 'fit', cause: 'nothing', findings: [] },
      0,
    );
    const { differs: ___, untimely, ...twice } = markWhole(scenario, again.attempt).marks;
    expect(twice).toEqual(once);
    expect(untimely).toHaveLength(1);
  });
});

test.each([
  ['the negative peak', { low: -9 }],
  ['the duty', { duty: 0.4 }],
  ['the amperes worked out of it', { amps: 20 }],
] as const)('%s of a pilot reading has to be right too', (_, change) => {
  const harbour = scenarioNamed('harbour-mews');
  const run = doTest(startRun(harbour.scenario, harbour.file), actionOf('state-b'), {});
  const index = run.readings.findIndex(
    ({ reading }) => reading.quantity === 'pilot' && (reading.amps ?? 0) > 6,
  );
  const taken = run.readings[index];
  if (taken?.reading.quantity !== 'pilot') throw new Error('no offer was read');
  const typed = {
    ...typedAsShown(taken, index),
    amps: Math.round(taken.reading.amps ?? 0),
    at: 0,
    wall: 0,
    hash: '',
  };
  expect(readRightly(typed, taken)).toBe(true);
  expect(readRightly({ ...typed, ...change }, taken)).toBe(false);
});

describe('what the hurdle of judgement looks at', () => {
  const judging = (judged: (should: boolean) => Judged, limit: 'within' | 'outside') => {
    const attempt = attemptOf(scenario, file, {
      looksAgain: true,
      conclude: rightConclusion,
      judge: (right, run, action) => {
        const should = new Map(action.expectations(run.papers).map((line) => [line.id, line.should]));
        return {
          ...right,
          lines: right.lines.map(({ id }) => ({ id, judged: judged(should.get(id) === true) })),
          limits: right.limits.map((one) => ({ ...one, judged: limit })),
        };
      },
    });
    const { run, expected } = markWhole(scenario, attempt);
    return judgementMark(run, expected);
  };

  test('accepting everything rejects nothing of what was wrong', () => {
    expect(judging(AS_ON_A_CORRECT_UNIT, 'within').rejected).toBe(0);
  });

  test('one answer to every line never gives the others', () => {
    expect(judging(() => 'did', 'within').leastOfLines).toBe(0);
  });
});
