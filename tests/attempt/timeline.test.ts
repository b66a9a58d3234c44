/** The course of an attempt: tests in the order in which they were begun, and where each is to be looked at. */
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { tellingStep, timelineOf } from '../../src/attempt/opened/timeline.ts';
import { lockstep } from '../../src/attempt/opened/twin.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy, faultlessAttempt } from '../helpers/trainee.ts';

function welded(answer?: (right: string) => 'cant-tell') {
  const { file } = scenarioNamed('harbour-mews');
  const read = readScenario({ ...(file as object), faults: [{ fault: 'line-pole-welded' }] });
  if (!read.ok) throw new Error('the scenario does not read');
  const tests = ['state-b', 'papers', 'state-a'].map((id) => actionNamed(id)).filter((x) => x !== undefined);
  const attempt = attemptBy(read.scenario, file, {
    tests: () => tests,
    ...(answer === undefined ? {} : { answer }),
  });
  return { both: lockstep(read.scenario, attempt), told: debriefOf(read.scenario, attempt) };
}

describe('the time line', () => {
  const { both, told } = welded(() => 'cant-tell');
  const { tests, end } = timelineOf(both, told.sureAndWrong);

  test('numbers the tests in the order in which they were begun, each with its steps', () => {
    expect(tests.map((mark) => [mark.number, mark.test])).toEqual([
      [1, 'state-b'],
      [2, 'papers'],
      [3, 'state-a'],
    ]);
    for (const { test: id, first, last } of tests)
      for (const [i, step] of both.steps.entries()) expect(step.test === id).toBe(i >= first && i <= last);
    expect(end).toBe(both.steps.at(-1)?.unit.at);
  });

  test('holds every line that one was sure of and wrong, of tests beyond a faultless stop too', () => {
    const lines = told.sureAndWrong.flatMap((group) => group.lines);
    expect(tests.flatMap(({ wrong }) => wrong)).toHaveLength(lines.length);
    expect(tests.every(({ wrong }) => wrong.length > 0)).toBe(true);
    expect(told.tests.find((one) => one.test === 'state-a')?.counts).toBe(false);
  });

  test('nobody who was right has anything on it', () => {
    const right = welded();
    expect(timelineOf(right.both, right.told.sureAndWrong).tests.flatMap(({ wrong }) => wrong)).toEqual([]);
  });

  test('a test is looked at where a reading differs from the twin first', () => {
    const step = tellingStep(both, 'state-a') ?? 0;
    expect(both.steps[step]?.operation).toMatchObject({ op: 'prove-dead', at: 'outlet' });
    expect(tellingStep(both, 'loop')).toBeNull();
  });
});

describe('sure and wrong, by misconception', () => {
  test.each([
    ['cant-tell', 'misses-what-it-tells'],
    ['should', 'expects-a-fault'],
    ['should-not', 'forbids-what-is-sound'],
  ] as const)('always “%s” is, among others, “%s”', (said, misconception) => {
    const { told } = welded((() => said) as never);
    const kinds = new Set(told.sureAndWrong.map((group) => group.misconception));
    expect(kinds).toContain(misconception);
    if (said !== 'cant-tell') expect(kinds).toContain('reads-too-much');
    const sizes = told.sureAndWrong.map(({ lines }) => lines.length);
    expect(sizes).toEqual([...sizes].sort((x, y) => y - x));
  });

  test('a cause named sure and wrong is told, and one that is right is not', () => {
    const { scenario, file } = scenarioNamed('mill-race');
    const named = (cause: string, family: 'pilot' | null) =>
      debriefOf(
        scenario,
        attemptBy(scenario, file, {
          conclude: (right) => ({ ...right, cause, family: family ?? right.family }),
        }),
      ).wrongCause;
    expect(named('diode-not-checked', 'pilot')).toBe('diode-not-checked');
    expect(named('pe-joint', null)).toBeNull();
  });

  test('every figure of a test has its source', () => {
    const { scenario, file } = scenarioNamed('mill-race');
    const { tests } = debriefOf(scenario, faultlessAttempt(scenario, file));
    const figures = tests.flatMap((one) => one.figures);
    expect(figures.length).toBeGreaterThan(0);
    expect(figures.every(({ source }) => source.basis !== undefined)).toBe(true);
  });
});
