/** The scenario files of this project, read for tests. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { problemText } from '../../src/words/problems.ts';

const folder = new URL('../../scenarios/', import.meta.url);

export const scenarioIds: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -'.json'.length));

interface ScenarioFile {
  readonly scenario: Scenario;
  readonly file: unknown;
  readonly text: string;
}

const read = new Map<string, ScenarioFile>();

/** The same object each time, so that what is worked out of a scenario can be kept with it. */
export function scenarioNamed(id: string): ScenarioFile {
  const known = read.get(id) ?? readScenarioFile(id);
  read.set(id, known);
  return known;
}

function readScenarioFile(id: string): ScenarioFile {
  const text = readFileSync(new URL(`${id}.json`, folder), 'utf8');
  const read = parseScenario(text);
  if (!read.ok) throw new Error(read.problems.map((one) => `${one.path}: ${problemText(one)}`).join('\n'));
  return { scenario: read.scenario, file: read.file, text };
}
