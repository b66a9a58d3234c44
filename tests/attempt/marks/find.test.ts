/**
 * What is behind a symptom: any way to the cause counts in full, and nothing but a way to it. Each rule here keeps a
 * mark fair.
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../../src/attempt/marks/worked.ts';
import type { NotedOf } from '../../../src/attempt/record/attempt.ts';
import type { Run } from '../../../src/attempt/record/run.ts';
import { note, startRun } from '../../../src/attempt/record/run.ts';
import { actionNamed } from '../../../src/verification/actions.ts';
import { attemptOf, doTest, rejected } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { attemptWithRepair } from '../../helpers/trainee.ts';

type Conclusion = NotedOf<'conclusion'>;

/** Only these tests, and what is said in place of what is right; the findings are those that one's own tests have. */
function marked(id: string, tests: readonly string[] | 'all', said: Partial<Conclusion> = {}) {
  const { scenario, file } = scenarioNamed(id);
  const attempt = attemptOf(scenario, file, {
    leavesOut: (action) => tests !== 'all' && !tests.includes(action.id),
    conclude: (run) => ({ ...rightConclusion(run), findings: rejected(run), ...said }),
  });
  return mark(scenario, attempt);
}

const NOTHING: Partial<Conclusion> = { verdict: 'nothing-wrong', cause: 'nothing', family: null };

describe('a fault', () => {
  const ID = 'find-weavers-green';
  const SHOWS = ['residual-half'];
  const CLEAR = ['insulation-outlet', 'state-c'];

  test('found by one test of six earns everything: what was not needed costs nothing, and asks for no reason', () => {
    expect(marked(ID, SHOWS)).toMatchObject({ total: 100, hurdles: [], passed: true });
    expect(marked(ID, [...SHOWS, ...CLEAR])).toMatchObject({ total: 100, hurdles: [], passed: true });
    expect(marked(ID, 'all')).toMatchObject({ total: 100, hurdles: [], passed: true });
  });

  test('that no test done speaks for is guessed, and then every test that was left out is wanting', () => {
    const guessed = marked(ID, CLEAR);
    expect(guessed.parts.diagnosis).toBe(0);
    expect(guessed.sums.diagnosis).toMatchObject({ grades: ['guessed'] });
    expect(guessed.hurdles).toEqual(expect.arrayContaining(['judgement', 'diagnosis', 'prediction']));
    expect(guessed.parts.observation).toBeLessThanOrEqual(5);
  });

  test('another cause earns the diagnosis nothing, and is no pass; its block half', () => {
    const wrong = marked(ID, 'all', { cause: 'neutral-joint', family: 'supply-wiring' });
    expect(wrong).toMatchObject({ parts: { diagnosis: 0 }, hurdles: ['diagnosis'], passed: false });
    expect(marked(ID, 'all', { cause: null }).parts.diagnosis).toBe(20);
  });

  test('taken for what is as designed earns nothing, though that is of the same block', () => {
    const designed = { cause: 'device-at-the-board', family: 'residual-direct' } as const;
    expect(marked(ID, 'all', designed).parts.diagnosis).toBe(0);
    expect(marked(ID, 'all', { ...designed, verdict: 'as-designed' })).toMatchObject({
      gates: { verdict: false },
      hurdles: ['verdict', 'diagnosis'],
      passed: false,
    });
  });

  test('passed over fails the gate', () => {
    expect(marked(ID, 'all', NOTHING)).toMatchObject({ gates: { verdict: false }, passed: false });
  });

  test('a verdict on the whole unit is no answer', () => {
    expect(marked(ID, 'all', { verdict: 'not-fit' }).hurdles).toEqual(['verdict']);
  });

  test('what next and whom to tell is marked, what a repair makes due again is not asked', () => {
    const { reasons } = marked(ID, 'all').sums;
    expect(reasons).toMatchObject({ next: true, tell: true, repeats: null });
    expect(marked(ID, 'all', { tell: 'distributor' }).parts.reasons).toBeLessThan(15);
  });
});

test('a way that does not follow the usual order counts too, as far as it went', () => {
  // A faultless trainee stops at the outlet’s insulation; this one comes to the same by leakage alone.
  const { scenario, file } = scenarioNamed('find-osier-bank');
  const done = (judgesAll: boolean) => {
    let run: Run = startRun(scenario, file, { rung: 2 });
    for (const id of ['residual-half', 'residual-ramp']) {
      const action = actionNamed(id);
      if (action === undefined) throw new Error(id);
      run = doTest(run, action, judgesAll ? {} : { judge: (right) => ({ ...right, lines: [], limits: [] }) });
    }
    return run;
  };
  const concluded = (run: Run) =>
    mark(scenario, note(run, { ...rightConclusion(run), findings: rejected(run) }, 0).attempt);
  expect(concluded(done(true))).toMatchObject({ total: 100, hurdles: [], passed: true });
  // And it has to be judged.
  expect(concluded(done(false)).hurdles).toContain('judgement');
});

describe('what is behind a symptom stays behind it, however the unit is left', () => {
  const { scenario, file } = scenarioNamed('find-weavers-green');
  const repaired = (said: Partial<Conclusion> = {}) =>
    mark(
      scenario,
      attemptWithRepair(scenario, file, 'residual-trips-early', {
        conclude: (right) => ({ ...right, ...said }),
      }),
    );

  test('something wrong is right after it was put right, and handing over is next', () => {
    expect(repaired()).toMatchObject({
      hurdles: [],
      passed: true,
      sums: { reasons: { next: true, tell: true } },
    });
    expect(repaired({ next: 'lock-off-and-label' }).sums.reasons).toMatchObject({ next: false });
  });

  test('nothing wrong is not', () => {
    expect(repaired(NOTHING).hurdles).toContain('verdict');
  });
});

describe('as designed', () => {
  const ID = 'find-heron-close';
  const DESIGNED: Partial<Conclusion> = { cause: 'offer-cut-by-load-sharing', family: 'pilot' };

  test('named as what the papers say earns everything', () => {
    const { scenario, file } = scenarioNamed(ID);
    expect(rightConclusion(startRun(scenario, file))).toMatchObject({ ...DESIGNED, verdict: 'as-designed' });
    expect(marked(ID, 'all')).toMatchObject({ total: 100, hurdles: [], passed: true });
  });

  test('nothing wrong is a right verdict, and half the diagnosis', () => {
    expect(marked(ID, 'all', NOTHING)).toMatchObject({ hurdles: [], parts: { diagnosis: 20 }, passed: true });
  });

  test.each([
    ['another entry of the papers', { cause: 'set-by-installer' }],
    ['a fault that shows alike', { cause: 'offer-too-low' }],
    [
      'the right one with another beside it',
      { others: [{ cause: 'offer-too-low', family: 'pilot' as const }] },
    ],
  ])('%s earns the diagnosis nothing, and is no pass', (_, said) => {
    expect(marked(ID, 'all', said)).toMatchObject({
      parts: { diagnosis: 0 },
      hurdles: ['diagnosis'],
      passed: false,
    });
  });

  test('called wrong is not the right verdict', () => {
    expect(marked(ID, 'all', { verdict: 'something-wrong' }).hurdles).toContain('verdict');
  });

  test('rests on the tests that were done: each left out costs its share', () => {
    const { parts, sums } = marked(ID, ['state-a', 'state-b', 'limit']);
    expect(sums.diagnosis).toMatchObject({ done: { right: 3, of: 5 } });
    // A reason for it is not asked, and so is none that is wanting.
    expect(sums.record).toMatchObject({ leftOut: { of: 0 } });
    expect(parts).toMatchObject({ diagnosis: 24, reasons: 9 });
    expect(parts.observation).toBeLessThan(10);
    expect(marked(ID, ['state-b']).hurdles).toContain('diagnosis');
  });
});

describe('nothing wrong', () => {
  const ID = 'find-larch-avenue';

  test('found by every test earns everything; by two of six a third of what it is worth', () => {
    expect(marked(ID, 'all')).toMatchObject({ total: 100, hurdles: [], passed: true });
    expect(marked(ID, ['insulation-outlet', 'state-c'])).toMatchObject({
      parts: { diagnosis: 13.3 },
      hurdles: expect.arrayContaining(['diagnosis']),
      passed: false,
    });
  });

  test('taken for what is as designed elsewhere earns nothing', () => {
    const designed = { verdict: 'as-designed', cause: 'slow-to-start', family: 'pilot' } as const;
    expect(marked(ID, 'all', designed)).toMatchObject({ parts: { diagnosis: 0 }, hurdles: ['diagnosis'] });
  });
});

test('on the first rung no pass is stated, as of any other job', () => {
  const { scenario, file } = scenarioNamed('find-larch-avenue');
  expect(mark(scenario, attemptOf(scenario, file, { rung: 1, conclude: rightConclusion })).passed).toBeNull();
});
