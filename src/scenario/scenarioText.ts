/** A scenario from the text of its file. */
import { parseJson } from './json.ts';
import type { ReadScenario } from './readScenario.ts';
import { readScenario } from './readScenario.ts';

/** Every problem at once. */
export function parseScenario(text: string): ReadScenario {
  const json = parseJson(text);
  return json.ok ? readScenario(json.value) : json;
}
