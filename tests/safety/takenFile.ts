/*
 * What the program does with a file that may be good or not: read it, and if it is taken, play it and mark it. Nothing
 * of that may throw. Whole verifications take long, so every other scenario is verified with
 * three of its tests alone, and seven of eight attempts on a changed scenario are replayed, not marked.
 */

import { mark } from '../../src/attempt/marks/mark.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { replay } from '../../src/attempt/record/run.ts';
import { playOutput } from '../../src/cli/playOutput.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions, benchOf } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { parseScript, playScript } from '../../src/scenario/script.ts';
import { verify } from '../../src/scenario/verify.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import type { Kind } from './spoiltFiles.ts';
import { spoiltFile } from './spoiltFiles.ts';

export interface TakenFile {
  readonly kind: Kind;
  readonly taken: boolean;
  /** What was thrown; null if nothing was. */
  readonly wrong: string | null;
}

/** The file of this number, read and, where it is taken, played and marked. */
export function takeFile(seed: number, index: number): TakenFile {
  const { kind, text } = spoiltFile(seed, index);
  try {
    return { kind, taken: TAKE[kind](text, index), wrong: null };
  } catch (error) {
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return {
      kind,
      taken: true,
      wrong: `file ${index}, seed ${seed}, ${kind}: ${what}\n${text.slice(0, 4000)}`,
    };
  }
}

const TAKE: Readonly<Record<Kind, (text: string, index: number) => boolean>> = {
  scenario: (text, index) => {
    const read = parseScenario(text);
    if (!read.ok) return false;
    if (index % 2 === 0) verify(read.scenario, { everything: true });
    else verify(withThree(read.scenario, index));
    return true;
  },
  script: (text) => {
    const { scenario } = scenarioNamed('harbour-mews');
    const read = parseScript(text, scenario);
    if (!read.ok) return false;
    const { steps, stopped } = playScript(benchOf(scenario), read.value, scenario);
    JSON.stringify(playOutput(steps, stopped));
    return true;
  },
  attempt: (text, index) => {
    const read = parseAttempt(text);
    if (!read.ok) return false;
    const { attempt, scenario } = read.value;
    const isMarked = index % 8 === 0;
    const key = JSON.stringify(scenario);
    const known = KNOWN.get(key) ?? scenario;
    if (isMarked && KNOWN.size < MOST_KNOWN) KNOWN.set(key, known);
    if (isMarked || KNOWN.has(key)) mark(known, attempt);
    else replay(known, attempt);
    return true;
  },
};

/** Scenarios of attempts that were marked: what a faultless trainee finds on them is kept with each. */
const KNOWN = new Map<string, Scenario>();
const MOST_KNOWN = 50;

function withThree(scenario: Scenario, index: number): Scenario {
  const ids = allowedActions(scenario).map(({ id }) => id);
  const first = index % Math.max(1, ids.length - 2);
  return { ...scenario, allowed: ids.slice(first, first + 3) };
}
