/** A line is judged by what the unit did; that it is right or wrong follows from the line, and is never asked. */
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { mattered } from '../../src/attempt/marks/mattered.ts';
import { summaryOf } from '../../src/attempt/marks/summary.ts';
import { isJudgedAsSaid, judgedRight } from '../../src/attempt/record/truth.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy } from '../helpers/trainee.ts';

test.each([
  ['should', 'met', 'did'],
  ['should', 'broken', 'did-not'],
  ['should-not', 'met', 'did-not'],
  ['should-not', 'broken', 'did'],
  ['should', 'not shown', 'not-shown'],
  ['should-not', 'not shown', 'not-shown'],
] as const)('a line of “%s” that is %s: %s', (right, finding, judged) => {
  expect(judgedRight({ right, finding })).toBe(judged);
});

test.each([
  ['should', 'did', true],
  ['should', 'did-not', false],
  ['should-not', 'did-not', true],
  ['should-not', 'did', false],
  ['should', 'not-shown', false],
  ['cant-tell', 'did', false],
  [undefined, 'did', false],
] as const)('said %s, judged %s: as said, %s', (said, judged, is) => {
  expect(isJudgedAsSaid(said, judged)).toBe(is);
});

const { scenario, file } = scenarioNamed('mill-race');

test('“it did” to every line is not “all is well”: it is wrong wherever a sound unit does not', () => {
  const yes = attemptBy(scenario, file, { judge: () => 'did' });
  const well = attemptBy(scenario, file, { judge: (_, sound) => sound });
  expect(mark(scenario, yes).parts.judgement).not.toBe(mark(scenario, well).parts.judgement);
  const lines = debriefOf(scenario, yes).tests.flatMap((one) => one.lines);
  const sound = lines.filter(
    ({ right, isBroken, judgement }) => right === 'should-not' && !isBroken && judgement === 'did-not',
  );
  expect(sound.length).toBeGreaterThan(5);
});

describe('how sure, line by line', () => {
  /** Everything wrong, signed for but for the first line of each test. */
  const attempt = attemptBy(scenario, file, {
    predict: (right) => ({
      ...right,
      sure: 'would-sign',
      lines: right.lines.map(({ id, answer }, i) => ({
        id,
        answer: answer === 'should' ? 'should-not' : 'should',
        ...(i === 0 ? { sure: 'guessing' as const } : {}),
      })),
    }),
  });
  const told = debriefOf(scenario, attempt);
  const tests = told.tests.filter(({ lines }) => lines.some(({ predicted }) => predicted !== null)).length;
  const lines = told.tests.flatMap((one) => one.lines).filter(({ predicted }) => predicted !== null).length;
  const countOf = (groups: typeof told.sureAndWrong) =>
    groups.reduce((sum, group) => sum + group.lines.length, 0);

  test('wrong and sure, and wrong and not sure, are both told', () => {
    expect(tests).toBeGreaterThan(3);
    expect(countOf(told.unsureAndWrong)).toBe(tests);
    expect(countOf(told.sureAndWrong)).toBe(lines - tests);
  });

  test('each line counts for its own sureness', () => {
    const { calibration } = summaryOf(told);
    expect(calibration.map(({ sure, right, of }) => [sure, right, of])).toEqual([
      ['guessing', 0, tests],
      ['fairly-sure', 0, 0],
      ['would-sign', 0, lines - tests],
    ]);
  });

  test('it changes no mark', () => {
    const bold = {
      ...attempt,
      entries: attempt.entries.map((entry) =>
        entry.kind === 'prediction' ? { ...entry, sure: 'guessing' as const } : entry,
      ),
    };
    const { differs: _, ...marks } = mark(scenario, attempt);
    const { differs: __, ...others } = mark(scenario, bold);
    expect(others).toEqual(marks);
  });

  test('a wrong line is the goal, by its test and its words; one that was sure before the others', () => {
    const [first] = mattered(told);
    expect(first).toMatchObject({ what: 'wrong line', line: { sure: 'would-sign' } });
    const modest = attemptBy(scenario, file, {
      predict: (right) => ({
        ...right,
        sure: 'fairly-sure',
        lines: right.lines.map((line) => ({
          ...line,
          answer: line.id === 'near-sum' ? ('should-not' as const) : line.answer,
        })),
      }),
    });
    const modestly = debriefOf(scenario, modest);
    expect(modestly.sureAndWrong).toEqual([]);
    expect(mattered(modestly)[0]).toMatchObject({
      what: 'wrong line',
      line: { id: 'near-sum', predicted: 'should-not', right: 'should' },
    });
  });
});
