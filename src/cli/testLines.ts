/** What there is to read and to measure in each test, where taps were counted or on the first site that has it. */
import { readdirSync, readFileSync } from 'node:fs';
import { readingsIn } from '../fairness/minutes.ts';
import { papersOf, scenarioIn } from '../scenario/scenario.ts';
import { ACTIONS } from '../verification/actions.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import { lineText } from '../words/actions.ts';
import '../verification/allLines.ts';
import '../words/allTests.ts';

/** Taps were counted there. */
const FIRST = 'harbour-mews';

/** The papers of every scenario of the project, the one on which taps were counted first. */
export function papersForTestLines(): readonly Papers[] {
  const folder = new URL('../../scenarios/', import.meta.url);
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  const names = [`${FIRST}.json`, ...files.filter((name) => name !== `${FIRST}.json`).sort()];
  return names.map((name) => papersOf(scenarioIn(JSON.parse(readFileSync(new URL(name, folder), 'utf8')))));
}

/** By test; `sites`: papers, those first on which taps were counted. */
export const testLinesOf = (sites: readonly Papers[]) =>
  Object.fromEntries(
    ACTIONS.flatMap((action) => {
      const papers = sites.find((site) => action.applies(site));
      return papers === undefined ? [] : [[action.id, countedIn(action, papers)]];
    }),
  );

function countedIn(action: TestAction, papers: Papers) {
  const lines = [...action.expectations(papers), ...action.untold(papers)];
  const words = lines.reduce((sum, line) => sum + lineText(action.id, line).split(/\s+/).length, 0);
  return { readings: readingsIn(action, papers), lines: lines.length, words };
}
