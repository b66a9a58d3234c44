/** The scenario files of this project, read for tests. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenario.ts';

const folder = new URL('../../scenarios/', import.meta.url);

export const scenarioIds: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -'.json'.length));

export function scenarioNamed(id: string): {
  readonly scenario: Scenario;
  readonly file: unknown;
  readonly text: string;
} {
  const text = readFileSync(new URL(`${id}.json`, folder), 'utf8');
  const read = parseScenario(text);
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return { scenario: read.scenario, file: read.file, text };
}
