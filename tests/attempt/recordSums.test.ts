/** What attempts add up to: against sums counted from the debriefs themselves, and tables of small made-up ones. */
import { describe, expect, test } from 'vitest';
import type { TopicId } from '../../src/attempt/marks/debrief.ts';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { aimSums, calibrationOver, weakTopics } from '../../src/attempt/marks/recordSums.ts';
import type { Summary } from '../../src/attempt/marks/summary.ts';
import { holdsFor, summaryOf } from '../../src/attempt/marks/summary.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy } from '../helpers/trainee.ts';

const { scenario, file } = scenarioNamed('mill-race');

describe('one attempt', () => {
  const attempt = attemptBy(scenario, file, {
    answer: (right) => (right === 'should' ? 'cant-tell' : (right as 'should-not')),
    judge: (_, sound) => sound,
  });
  const told = debriefOf(scenario, attempt);
  const summary = summaryOf(told);
  const lines = told.tests.flatMap((one) => one.lines);

  test('its summary counts what its debrief shows', () => {
    const wrong = lines.filter(({ predicted, right }) => predicted !== null && predicted !== right);
    const misjudged = lines.filter(
      ({ judged, judgement }) => judged !== null && judgement !== null && judged !== judgement,
    );
    expect(wrong.length).toBeGreaterThan(5);
    expect(misjudged.length).toBeGreaterThan(0);
    const sum = (count: (topic: Summary['topics'][number]) => number) =>
      summary.topics.reduce((total, topic) => total + count(topic), 0);
    expect(sum((topic) => topic.predictedWrong)).toBe(wrong.length);
    expect(sum((topic) => topic.judgedWrong)).toBe(misjudged.length);
    expect(sum((topic) => topic.predicted)).toBe(lines.length);
    expect(summary).toMatchObject({ total: told.marks.total, of: 100, passed: told.marks.passed });
    expect(summary.calibration).toEqual(told.calibration);
  });

  test('it holds for its own log and engine, and for no other', () => {
    const head = attempt.entries.at(-1)?.hash ?? '';
    expect(holdsFor(summary, head)).toBe(true);
    expect(holdsFor(summary, attempt.entries[0]?.hash ?? '')).toBe(false);
    expect(holdsFor({ ...summary, engine: '0.9.0' }, head)).toBe(false);
    expect(holdsFor(null, head)).toBe(false);
    // An earlier version kept a topic in words: two of one would stand side by side.
    const [first] = summary.topics;
    const inWords = { ...first, topic: 'protective conductor' } as unknown as Summary['topics'][number];
    expect(holdsFor({ ...summary, topics: [inWords] }, head)).toBe(false);
  });

  test('marks that a file claims are not believed', () => {
    const claimed = { ...attempt, marks: { total: 100, passed: true } };
    expect(summaryOf(debriefOf(scenario, claimed))).toMatchObject({ total: told.marks.total, differs: 2 });
  });

  test.each([
    ['an accepted unit that is not sound', 'fit', false],
    ['the same unit rejected', 'not-fit', true],
  ] as const)('gates: %s', (_, verdict, gatesMet) => {
    const other = attemptBy(scenario, file, { conclude: (right) => ({ ...right, verdict }) });
    expect(summaryOf(debriefOf(scenario, other))).toMatchObject({ gatesMet, verdictRight: gatesMet });
  });
});

const topic = (name: TopicId, predictedWrong: number, judgedWrong: number) => ({
  topic: name,
  predicted: 10,
  predictedWrong,
  judged: 8,
  judgedWrong,
});
const made = (part: Partial<Summary>): Summary => ({
  engine: '',
  head: null,
  said: null,
  verdictRight: true,
  criticalActs: 0,
  verdictGate: true,
  gatesMet: true,
  passed: true,
  total: 0,
  of: 100,
  differs: 0,
  topics: [],
  calibration: [],
  ...part,
});

test('weak topics: the most wrong first, of equally many by name; those without a wrong line are none', () => {
  const topics = weakTopics([
    made({ topics: [topic('pilot', 1, 0), topic('switching', 2, 1), topic('insulation', 0, 0)] }),
    made({ topics: [topic('pilot', 0, 2), topic('supply-wiring', 0, 0)] }),
  ]);
  expect(topics).toEqual([
    { topic: 'pilot', predicted: 20, predictedWrong: 1, judged: 16, judgedWrong: 2, attempts: 2 },
    { topic: 'switching', predicted: 10, predictedWrong: 2, judged: 8, judgedWrong: 1, attempts: 1 },
  ]);
});

test.each([
  [0, 0, 'not-used'],
  [9, 9, 'few-lines'],
  [10, 10, 'as-often'],
  [18, 20, 'as-often'],
  [17, 20, 'less-often'],
] as const)('would sign: right %i of %i is: %s', (right, of, compared) => {
  const [, , signed] = calibrationOver([made({ calibration: [{ sure: 'would-sign', right, of }] })]);
  expect(signed).toMatchObject({ right, of, compared, share: of === 0 ? null : right / of });
});

test('each sureness is summed over all attempts', () => {
  const summaries = [
    made({ calibration: [{ sure: 'guessing', right: 9, of: 10 }] }),
    made({ calibration: [{ sure: 'guessing', right: 8, of: 10 }] }),
  ];
  expect(calibrationOver(summaries)[0]).toMatchObject({
    right: 17,
    of: 20,
    compared: 'more-often',
  });
});

test('by aim: each test as it went when it was last done, and none that was left out', () => {
  const went = (tests: Readonly<Record<string, 'right' | 'wrong' | 'left out'>>): Summary =>
    made({
      tests: Object.entries(tests).map(([test, how]) => ({
        test,
        done: how !== 'left out',
        right: how === 'right',
        sureAndWrong: false,
      })),
    });
  const sums = aimSums([
    went({ isolate: 'right', 'prove-dead': 'wrong', loop: 'left out' }),
    went({ isolate: 'wrong', 'prove-dead': 'right', papers: 'right' }),
    went({ isolate: 'left out' }),
  ]);
  expect(sums).toEqual([
    { aim: 'design', right: 1, of: 1 },
    { aim: 'dead', right: 1, of: 2 },
  ]);
});
