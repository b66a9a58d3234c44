/** Trade words: found where they stand, in every test's lines, and explained without a verdict. */

import { expect, test } from 'vitest';
import { papersOf } from '../../src/scenario/scenario.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import { limitText, lineText, testPurpose } from '../../src/words/actions.ts';
import { GLOSSARY, wordsIn } from '../../src/words/glossary.ts';
import { sheetLines, siteLines } from '../../src/words/papers.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

/** What a trainee reads: lines, titles, purposes, the papers and the unit's sheet, an arrester among its devices. */
const TEXTS = ['harbour-mews', 'foundry-yard', 'weir-cottage'].flatMap((id) => {
  const papers = papersOf(scenarioNamed(id).scenario);
  const withArrester = { ...papers, sheet: { ...papers.sheet, surgeArrester: true } };
  return [
    ...[...siteLines(papers), ...sheetLines(withArrester)].flatMap(({ term, text }) => [term, text]),
    ...ACTIONS.filter((action) => action.applies(papers)).flatMap((action) => [
      testTitle(action.id),
      testPurpose(action.id),
      ...[...action.expectations(papers), ...action.untold(papers)].map((line) => lineText(action.id, line)),
      ...action.limits(papers).map((limit) => limitText(action.id, limit)),
    ]),
  ];
});

test('every word is one that a trainee meets, and stands once', () => {
  for (const { word, pattern } of GLOSSARY)
    expect(
      TEXTS.some((text) => pattern.test(text)),
      word,
    ).toBe(true);
  const words = GLOSSARY.map(({ word }) => word.toLowerCase());
  expect(new Set(words).size).toBe(words.length);
});

test.each([
  ['refuses a vehicle whose diode is shorted', ['diode']],
  ['trips between 3 and 6 mA of rising positive smooth d.c.', ['smooth d.c.']],
  ['has IP44 or better', ['IP44']],
])('%s', (text, words) => {
  expect(wordsIn([text]).map(({ word }) => word)).toEqual(expect.arrayContaining(words));
});

test('no text, no words', () => expect(wordsIn(['is labelled'])).toEqual([]));
