/** Every test action has its words, on every site and unit, and no word is there that nobody reads. */
import { describe, expect, test } from 'vitest';
import { linesToChooseFrom } from '../../src/attempt/record/lines.ts';
import { AIMS } from '../../src/scenario/aims.ts';
import { applicableActions, papersOf } from '../../src/scenario/scenario.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import type { Papers, TestAction } from '../../src/verification/testAction.ts';
import {
  adviceText,
  figureInWords,
  limitSum,
  limitText,
  lineInWords,
  stopWhy,
  testPurpose,
} from '../../src/words/actions.ts';
import type { ActionWords } from '../../src/words/actionWords.ts';
import { WORDS_BY_AIM } from '../../src/words/allTests.ts';
import { TEST_TITLES, testTitle } from '../../src/words/testTitles.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { sampleConfigurations } from '../verification/configurations.ts';

const SCENARIOS = scenarioIds.map((id) => scenarioNamed(id).scenario);
const PAPERS: readonly Papers[] = [
  ...SCENARIOS.map((scenario) => papersOf(scenario)),
  ...sampleConfigurations(200, 20_261),
  ...sampleConfigurations(20, 20_261, 'island'),
  ...sampleConfigurations(20, 20_261, 'pair'),
];

interface Told {
  /** Where its words stand in the action's table. */
  readonly at: string;
  readonly texts: readonly string[];
}

/** Everything that a test action may say on these papers. */
const toldBy = (action: TestAction, papers: Papers): readonly Told[] => [
  ...[...action.expectations(papers), ...action.untold(papers)].map((line) => {
    const { id, text, why } = lineInWords(action.id, line);
    return { at: `lines ${id}`, texts: [text, why] };
  }),
  ...action.figures(papers).map((figure) => {
    const { id, text, why } = figureInWords(action.id, figure);
    return { at: `figures ${id}`, texts: [text, why] };
  }),
  ...action.limits(papers).map((limit) => ({
    at: `limits ${limit.id}`,
    texts: [limitText(action.id, limit), limitSum(action.id, limit)],
  })),
  ...(action.advice?.(papers) ?? []).map((one) => ({
    at: `advice ${one.id}`,
    texts: [adviceText(action.id, one)],
  })),
  ...action.stops.map((id) => ({ at: `stops ${id}`, texts: [stopWhy(action.id, id)] })),
];

const ACTION_WORDS: Readonly<Record<string, ActionWords>> = Object.assign({}, ...Object.values(WORDS_BY_AIM));

test('each test action has a table and a title, and there is no other', () => {
  const ids = ACTIONS.map(({ id }) => id);
  expect(Object.keys(ACTION_WORDS).sort()).toEqual(ids.toSorted());
  expect(Object.keys(TEST_TITLES)).toEqual(ids);
});

test.each(AIMS)('the words of the tests of $id come together', ({ id, tests }) => {
  expect(Object.keys(WORDS_BY_AIM[id])).toEqual(tests);
});

describe.each(ACTIONS.map((action) => [action.id, action] as const))('%s', (id, action) => {
  const told = PAPERS.filter((papers) => action.applies(papers)).flatMap((papers) => toldBy(action, papers));

  test('all that it may say is whole', () => {
    expect(told.length).toBeGreaterThan(0);
    const texts = new Set([testTitle(id), testPurpose(id), ...told.flatMap((one) => one.texts)]);
    expect([...texts].filter((text) => /^$|undefined|NaN|Infinity|\[object/.test(text))).toEqual([]);
  });

  test('all of its words are used', () => {
    const { lines, figures = {}, limits = {}, stops = {}, advice = {} } = ACTION_WORDS[id] ?? { lines: {} };
    const words = Object.entries({ lines, figures, limits, stops, advice }).flatMap(([kind, table]) =>
      Object.keys(table).map((one) => `${kind} ${one}`),
    );
    expect([...new Set(told.map(({ at }) => at))].sort()).toEqual(words.sort());
  });
});

test.each(scenarioIds)('at %s no two lines to choose from read alike', (name) => {
  const { scenario } = scenarioNamed(name);
  for (const action of applicableActions(scenario)) {
    const texts = linesToChooseFrom(scenario, action).map((line) => lineInWords(action.id, line).text);
    expect(new Set(texts).size, action.id).toBe(texts.length);
  }
});

test('a line of another test has that test’s words', () => {
  const own = lineInWords('isolate', { id: 'terminals-dead' });
  expect(lineInWords('ze', { id: 'isolate/terminals-dead' })).toMatchObject({ text: own.text, why: own.why });
});

test.each([
  ['a test that there is not', () => testPurpose('nothing')],
  ['a line that there is not', () => lineInWords('ze', { id: 'nothing' })],
  ['a name that every object has', () => lineInWords('ze', { id: 'toString' })],
  ['a figure that there is not', () => figureInWords('isolate', { id: 'ze' })],
  ['a limit that there is not', () => limitText('isolate', { id: 'ze' })],
  ['a stop that there is not', () => stopWhy('ze', 'as-design')],
])('no words for %s: that throws', (_, asked) => {
  expect(asked).toThrow(/^no words for /);
});

test.each([{}, { design: '0.35' }, { design: Number.NaN }])(
  '%s are not the values that its words need',
  (values) => {
    expect(() => lineInWords('ze', { id: 'as-design', values })).toThrow(
      /need a value that did not come: design/,
    );
  },
);

test('a file may name a test that there is not', () => {
  expect(testTitle('nothing')).toBe('nothing');
  expect(testTitle('toString')).toBe('toString');
});
