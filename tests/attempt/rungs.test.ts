/** The rungs of support: what counts on each, and which one the kept attempts suggest. */
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Went } from '../../src/attempt/marks/suggestedRung.ts';
import { suggestedRung } from '../../src/attempt/marks/suggestedRung.ts';
import { summaryOf } from '../../src/attempt/marks/summary.ts';
import type { Answer, NotedOf } from '../../src/attempt/record/attempt.ts';
import { brokenLinks } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { linesToChooseFrom, testLines } from '../../src/attempt/record/lines.ts';
import { givenPrediction } from '../../src/attempt/record/prediction.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import { rungOf } from '../../src/attempt/record/rung.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { ACTIONS, actionNamed } from '../../src/verification/actions.ts';
import { doubtText } from '../../src/words/doubts.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import type { Habits } from '../helpers/trainee.ts';
import { attemptBy } from '../helpers/trainee.ts';

const { scenario, file } = scenarioNamed('bakery-lane');
const GIVEN: Habits = { rung: 1, predict: (_, run, action) => givenPrediction(run, action) };

describe('lines filled in', () => {
  const attempt = attemptBy(scenario, file, GIVEN);
  const told = debriefOf(scenario, attempt);

  test('what was given is not marked, and its weight goes to the other parts', () => {
    const { total, parts, weights } = told.marks;
    expect(total).toBe(100);
    expect(parts).toEqual(weights);
    expect(weights.prediction).toBe(0);
    // 15 spread in proportion over the other 85.
    for (const [part, share] of [
      ['observation', 10],
      ['judgement', 30],
      ['record', 10],
      ['diagnosis', 20],
      ['reasons', 15],
    ] as const)
      expect(Math.abs(weights[part] - (share * 100) / 85)).toBeLessThan(0.1);
  });

  test('nobody is held to have said what was given, or to have been sure of it', () => {
    expect(told.given).toBe(true);
    expect(told.tests.every(({ given, sure }) => given && sure === null)).toBe(true);
    const summary = summaryOf(told);
    expect(summary.calibration.every(({ of }) => of === 0)).toBe(true);
    expect(summary.topics.every(({ predicted }) => predicted === 0)).toBe(true);
    expect(summary.topics.some(({ judged }) => judged > 0)).toBe(true);
  });

  test('a judgement that is wrong costs as much more as it weighs', () => {
    const careless = attemptBy(scenario, file, { ...GIVEN, judge: () => 'not-shown' });
    const asked = attemptBy(scenario, file, { judge: () => 'not-shown' });
    const [here, there] = [mark(scenario, careless), mark(scenario, asked)];
    expect(here.parts.judgement).toBeGreaterThan(0);
    expect(Math.abs(here.parts.judgement - (100 / 85) * there.parts.judgement)).toBeLessThan(0.2);
  });

  test('a weighing that has nothing but predictions leaves nothing to mark', () => {
    const weights = { prediction: 1, observation: 0, judgement: 0, record: 0, diagnosis: 0, reasons: 0 };
    const alone = { ...scenario, marking: { ...scenario.marking, weights } };
    expect(mark(alone, attempt).total).toBe(0);
  });
});

test.each([2, 3, 4] as const)('lines that claim to be given earn nothing on rung %d', (rung) => {
  const { parts, weights } = mark(scenario, { ...attemptBy(scenario, file, GIVEN), rung });
  expect(weights.prediction).toBe(15);
  expect(parts.prediction).toBe(0);
});

test('the rung is bound into the chain, and a file keeps it', () => {
  const attempt = attemptBy(scenario, file, GIVEN);
  expect(mark(scenario, attempt).differs).toEqual([]);
  expect(mark(scenario, { ...attempt, rung: 2 }).differs.map(doubtText)).toContain(
    'entries[0].hash: does not follow from the entries before it',
  );
  const read = parseAttempt(makeAttemptText(attempt));
  expect(read.ok && read.value.attempt.rung).toBe(1);
  const { rung: _, ...without } = attempt;
  expect(brokenLinks(attempt)).toEqual([]);
  expect(brokenLinks(without)).toEqual([0]);
});

test.each([
  ['guided', undefined, 1],
  ['practice', undefined, 2],
  ['assessment', undefined, 4],
  ['practice', 3, 3],
  ['assessment', 2, 4],
] as const)('%s, rung %s: %d', (support, rung, expected) => {
  const read = readScenario({ ...(file as object), support });
  expect(read.ok).toBe(true);
  expect(rungOf(support, { rung })).toBe(expected);
});

const went = (rung: Rung, total: number, criticalActs = 0, of = 100): Went => ({
  rung,
  summary: { total, criticalActs, of, passed: criticalActs === 0 && total >= 70 },
});

const passing = ({ rung, summary }: Went): Went => ({ rung, summary: { ...summary, passed: true } });
const failing = ({ rung, summary }: Went): Went => ({ rung, summary: { ...summary, passed: false } });

test.each([
  { what: 'nothing done', all: [], rung: null },
  { what: 'one good one', all: [went(2, 95)], rung: 2 },
  { what: 'two of 80', all: [went(2, 80), went(2, 80)], rung: 3 },
  { what: 'two, one of 79', all: [went(2, 79), went(2, 99)], rung: 2 },
  { what: 'two on two rungs', all: [went(1, 90), went(2, 90)], rung: 2 },
  { what: 'two of 40 out of 50', all: [passing(went(2, 40, 0, 50)), passing(went(2, 40, 0, 50))], rung: 3 },
  { what: 'two that were not passed', all: [failing(went(2, 90)), failing(went(2, 90))], rung: 2 },
  { what: 'good ones at the top', all: [went(4, 90), went(4, 90)], rung: 4 },
  { what: 'a critical act', all: [went(3, 90), went(3, 90, 1)], rung: 2 },
  { what: 'a critical act before', all: [went(3, 90, 1), went(3, 90)], rung: 3 },
  { what: 'under half', all: [went(3, 49.9)], rung: 2 },
  { what: 'half', all: [went(3, 50)], rung: 3 },
  { what: 'under half at the bottom', all: [went(1, 10)], rung: 1 },
])('$what suggests $rung', ({ all, rung }) => {
  expect(suggestedRung(all)?.rung ?? null).toBe(rung);
});

describe('lines chosen', () => {
  const choose = (extra: NotedOf<'prediction'>['lines'], own = true): Habits => ({
    rung: 3,
    predict: (right, run, action) => ({
      ...right,
      lines: [
        ...(own
          ? right.lines.filter(({ id }) =>
              testLines(run.scenario, action).some((l) => l.id === id && l.judged),
            )
          : []),
        ...(action.id === 'residual-rated' ? extra : []),
      ],
      figures: own ? right.figures : [],
    }),
  });
  const rated = actionNamed('residual-rated');
  if (rated === undefined) throw new Error('no such test');
  const decoy = linesToChooseFrom(scenario, rated).find(({ id }) => id.includes('/'))?.id ?? '';
  const own = testLines(scenario, rated).find(({ judged }) => !judged)?.id ?? '';

  test('answering what the test tells and leaving the rest alone earns all of it', () => {
    const marks = mark(scenario, attemptBy(scenario, file, choose([])));
    expect(marks.total).toBe(100);
    expect(marks.parts.prediction).toBe(15);
  });

  test.each([
    ['a line of another test', decoy],
    ['its own line that it cannot tell', own],
  ])('%s: “can’t tell” costs nothing, “should” costs one line', (_, id) => {
    expect(id).not.toBe('');
    const said = (answer: Answer) =>
      mark(scenario, attemptBy(scenario, file, choose([{ id, answer }]))).parts.prediction;
    expect(said('cant-tell')).toBe(15);
    expect(said('should')).toBeLessThan(15);
    expect(said('should')).toBe(said('should-not'));
  });

  test('answering nothing earns nothing', () => {
    expect(mark(scenario, attemptBy(scenario, file, choose([], false))).parts.prediction).toBe(0);
  });

  test('the debrief shows the line that was taken for one of the test’s, and what was rightly left alone', () => {
    const told = debriefOf(scenario, attemptBy(scenario, file, choose([{ id: decoy, answer: 'should' }])));
    const lines = told.tests.find((one) => one.test === 'residual-rated')?.lines ?? [];
    expect(lines.find(({ id }) => id === decoy)).toMatchObject({
      predicted: 'should',
      right: 'cant-tell',
      judgement: null,
      leftAlone: false,
    });
    expect(lines.find(({ id }) => id === own)).toMatchObject({ predicted: null, leftAlone: true });
    expect(told.sureAndWrong.flatMap((group) => group.lines).map(({ id }) => id)).toEqual([decoy]);
  });
});

describe.each(['harbour-mews', 'foundry-yard', 'weir-cottage'])('ten lines to choose from at %s', (name) => {
  const site = scenarioNamed(name).scenario;
  const papers = papersOf(site);
  const applying = ACTIONS.filter((action) => action.applies(papers));

  test.each(applying.map(({ id }) => id))('%s', (id) => {
    const action = applying.find((one) => one.id === id) as (typeof ACTIONS)[number];
    const lines = linesToChooseFrom(site, action);
    const own = testLines(site, action);
    const decoys = lines.filter((line) => line.id.includes('/'));
    expect(lines).toHaveLength(Math.max(10, own.length + 2));
    expect(decoys.every(({ right, toldBy }) => right === 'cant-tell' && !toldBy.includes(id))).toBe(true);
    expect(
      lines
        .filter((line) => !decoys.includes(line))
        .map((line) => line.id)
        .sort(),
    ).toEqual(own.map((line) => line.id).sort());
    // What is wrong with the unit moves none of them.
    expect(linesToChooseFrom({ ...site, faults: [] }, action)).toEqual(lines);
  });
});

test('what tells a line is a test of the list, and never the test that cannot', () => {
  const papers = papersOf(scenario);
  const ids = ACTIONS.map(({ id }) => id);
  for (const action of ACTIONS.filter((one) => one.applies(papers)))
    for (const { id, toldBy } of action.untold(papers)) {
      expect(
        toldBy.every((one) => ids.includes(one)),
        `${action.id} ${id}`,
      ).toBe(true);
      expect(toldBy, `${action.id} ${id}`).not.toContain(action.id);
    }
});
