/** What a judged line says that a faulty unit would show: whole, and in a table for every judged line or for none. */
import { describe, expect, test } from 'vitest';
import { papersOf } from '../../src/scenario/scenario.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import type { Papers } from '../../src/verification/testAction.ts';
import type { ActionWords } from '../../src/words/actionWords.ts';
import { WORDS_BY_AIM } from '../../src/words/allTests.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { sampleConfigurations } from '../verification/configurations.ts';

const ACTION_WORDS: Readonly<Record<string, ActionWords>> = Object.assign({}, ...Object.values(WORDS_BY_AIM));

const PAPERS: readonly Papers[] = [
  ...scenarioIds.map((id) => papersOf(scenarioNamed(id).scenario)),
  ...sampleConfigurations(100, 20_262),
  ...sampleConfigurations(20, 20_262, 'island'),
  ...sampleConfigurations(20, 20_262, 'pair'),
];

describe.each(ACTIONS.map((action) => [action.id, action] as const))('%s', (id, action) => {
  const lines: ActionWords['lines'] = ACTION_WORDS[id]?.lines ?? {};
  const judged = PAPERS.filter((papers) => action.applies(papers)).flatMap((papers) =>
    action.expectations(papers).map(({ id: line, values = {} }) => ({ line, values })),
  );
  const untold = PAPERS.filter((papers) => action.applies(papers)).flatMap((papers) =>
    action.untold(papers).map(({ id: line }) => line),
  );

  test('for every judged line or for none', () => {
    const has = new Set(judged.map(({ line }) => lines[line]?.otherwise !== undefined));
    expect(has.size).toBe(1);
  });

  test('for no line that cannot be told', () => {
    expect(untold.filter((line) => lines[line]?.otherwise !== undefined)).toEqual([]);
  });

  test('whole, and a part of a sentence', () => {
    const texts = judged.flatMap(({ line, values }) => {
      const said = lines[line]?.otherwise;
      return said === undefined ? [] : [typeof said === 'string' ? said : said(values)];
    });
    expect(texts.filter((text) => /^$|undefined|NaN|Infinity|\[object|\w\w\.$/.test(text))).toEqual([]);
  });
});
