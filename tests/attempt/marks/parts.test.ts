/** What single habits cost in observation, judgement and record, and how each part says how it came about. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion, rightJudgement } from '../../../src/attempt/marks/worked.ts';
import type { Attempt } from '../../../src/attempt/record/attempt.ts';
import { rightPrediction } from '../../../src/attempt/record/prediction.ts';
import { act, note, startRun } from '../../../src/attempt/record/run.ts';
import { operation } from '../../../src/bench/operation.ts';
import { verify } from '../../../src/scenario/verify.ts';
import { actionNamed } from '../../../src/verification/actions.ts';
import { procedure } from '../../../src/verification/procedure.ts';
import { sumsInWords } from '../../../src/words/sums.ts';
import type { Ways } from '../../helpers/person.ts';
import { AS_ON_A_CORRECT_UNIT, attemptOf, doTest, NOT_SHOWN, SHOULD } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { faultlessAttempt } from '../../helpers/trainee.ts';

const mill = scenarioNamed('mill-race');
const sound = scenarioNamed('signal-cottage');
const by = ({ scenario, file }: typeof mill, ways: Ways) =>
  mark(scenario, attemptOf(scenario, file, { ...ways, looksAgain: true, conclude: rightConclusion }));

const asOnACorrectUnit: Ways = {
  judge: (right, run, action) => {
    const should = action.expectations(run.papers).filter((line) => line.should);
    const isShould = (id: string) => should.some((line) => line.id === id);
    return {
      ...right,
      lines: right.lines.map(({ id }) => ({ id, judged: AS_ON_A_CORRECT_UNIT(isShould(id)) })),
      limits: right.limits.map((limit) => ({ ...limit, judged: 'within' as const })),
    };
  },
};

/** Every expected test twice: first one way, then the other. */
function twice({ scenario, file }: typeof mill, first: Ways, second: Ways, rung: 2 | 4): Attempt {
  let run = startRun(scenario, file, { rung });
  for (const { action } of verify(scenario).actions) run = doTest(doTest(run, action, first), action, second);
  return note(run, rightConclusion(run), 0).attempt;
}

describe('each part says how it comes about', () => {
  test('of a faultless trainee', () => {
    const sums = sumsInWords(mark(mill.scenario, faultlessAttempt(mill.scenario, mill.file)));
    expect(sums.prediction).toMatch(/^prediction 15 of 15: should (\d+) of \1, should not (\d+) of \2, /);
    expect(sums.observation).toMatch(
      /^observation 10 of 10: typed as shown (\d+) of \1 \(figures other than 0: (\d+) of \2\)$/,
    );
    expect(sums.judgement).toMatch(/^judgement 30 of 30: accepted (\d+) of \1, rejected (\d+) of \2$/);
    expect(sums.record).toMatch(/^record 10 of 10: written in full (\d+) of \1$/);
    expect(sums.diagnosis).toBe('diagnosis 20 of 20: the fault, or what reads the same');
    expect(sums.reasons).toMatch(/^reasons 15 of 15: findings that hold (\d+) of \1, what next right/);
  });

  test('accepting everything on a unit with something wrong earns half', () => {
    const marks = by(mill, asOnACorrectUnit);
    const { parts, hurdles, passed } = marks;
    expect(parts.judgement).toBe(15);
    expect(sumsInWords(marks).judgement).toMatch(
      /^judgement 15 of 30: accepted (\d+) of \1, rejected 0 of \d+$/,
    );
    expect(hurdles).toEqual(['judgement']);
    expect(passed).toBe(false);
  });
});

type Predict = NonNullable<Ways['predict']>;

describe('prediction', () => {
  const ofAll = (first: Predict, second?: Predict) => {
    let run = startRun(sound.scenario, sound.file, { rung: 2 });
    for (const { action } of verify(sound.scenario).actions.slice(0, 6)) {
      const right = rightPrediction(run, action);
      if (second !== undefined) run = note(run, first(right, run, action), 0);
      run = doTest(run, action, { predict: second ?? first });
    }
    return mark(sound.scenario, note(run, rightConclusion(run), 0).attempt).sums.prediction;
  };
  const allShould: Predict = (right) => ({
    ...right,
    lines: right.lines.map((line) => ({ ...line, answer: SHOULD })),
  });
  const asItIs: Predict = (right) => right;

  test('the first one counts, and one locked over it before any reading does not', () => {
    expect(ofAll(allShould, asItIs)).toEqual(ofAll(allShould));
    expect(ofAll(asItIs, allShould)).toEqual(ofAll(asItIs));
    expect(ofAll(allShould)).not.toEqual(ofAll(asItIs));
  });
});

describe('judgement', () => {
  test('not shown, where nothing was looked at, is no judgement', () => {
    const { scenario, file } = sound;
    let run = startRun(scenario, file);
    for (const { action } of verify(scenario).actions) {
      run = note(run, rightPrediction(run, action), 0);
      run = act(run, action.id, operation({ op: 'wait', seconds: 1 }), 0).run;
      const judged = rightJudgement(run, action);
      expect(judged.lines.every((line) => line.judged === NOT_SHOWN)).toBe(true);
      run = note(run, judged, 0);
    }
    expect(mark(scenario, note(run, rightConclusion(run), 0).attempt).parts.judgement).toBeLessThan(3);
  });

  test.each([
    [2, 15],
    [4, 30],
  ] as const)('a test repeated as it was told, rung %d: %d of 30', (rung, of) => {
    expect(mark(mill.scenario, twice(mill, asOnACorrectUnit, {}, rung)).parts.judgement).toBe(of);
  });
});

describe('figures and record', () => {
  const askew: Ways = {
    type: (shown) => ({ ...shown, value: shown.value === null ? null : 1.1 * shown.value }),
  };

  test('a figure that was written anew once the test was told earns nothing', () => {
    const told = mark(mill.scenario, twice(mill, askew, {}, 2)).parts.observation;
    expect(told).toBe(mark(mill.scenario, twice(mill, askew, askew, 2)).parts.observation);
    expect(told).toBeLessThan(5);
  });

  test('the wrong polarity costs the record and no figure', () => {
    const unsigned = by(sound, {
      type: (shown) => ({ ...shown, value: shown.value === null ? null : -shown.value }),
    });
    expect(unsigned.parts.observation).toBe(10);
    expect(unsigned.parts.record).toBeLessThan(8);
  });

  test('0 and no reading, typed as shown, are no figures: those are counted apart', () => {
    const { observation } = by(sound, {
      type: (shown) => (shown.tripMs === undefined && (shown.value ?? 0) === 0 ? shown : null),
    }).sums;
    expect(observation.right).toBeGreaterThan(0);
    expect(observation.figures.right).toBe(0);
    expect(observation.figures.of).toBeGreaterThan(observation.of / 2);
  });

  test('what was read and not written down is missing in both', () => {
    const { parts } = by(sound, { type: () => null });
    expect([parts.observation, parts.record]).toEqual([0, 0]);
  });
});

describe('a limit', () => {
  test('whose reading was not taken counts as missed', () => {
    const { scenario, file } = scenarioNamed('harbour-mews');
    const limitsOf = (measures: boolean) => {
      const loop = actionNamed('loop');
      if (loop === undefined) throw new Error('no such test');
      let run = note(
        startRun(scenario, file, { rung: 2 }),
        rightPrediction(startRun(scenario, file), loop),
        0,
      );
      for (const step of procedure(run.world, loop, run.papers))
        if (measures || !(step.op === 'measure' && step.quantity === 'loop'))
          run = act(run, 'loop', step, 0).run;
      run = note(run, rightJudgement(run, loop), 0);
      return mark(scenario, note(run, rightConclusion(run), 0).attempt).sums.judgement.accepted;
    };
    const [taken, left] = [limitsOf(true), limitsOf(false)];
    expect(left.of).toBe(taken.of);
    expect(left.right).toBeLessThan(taken.right);
  });
});
