/**
 * A script of operations from the text of its file, checked against the site that it is for, and played on the
 * bench: what the command line's `play` does.
 */
import * as v from 'valibot';
import { operationSchema } from '../bench/operationSchema.ts';
import type { Outcome } from '../bench/perform.ts';
import { perform } from '../bench/perform.ts';
import type { World } from '../bench/world.ts';
import { ACTIONS, actionNamed } from '../verification/actions.ts';
import { carryOut } from '../verification/procedure.ts';
import { parseJson } from './json.ts';
import { operationProblems } from './operationProblems.ts';
import { listed } from './problem.ts';
import type { Parsed, Problem } from './problems.ts';
import { check, longLists } from './problems.ts';
import { quoted } from './quoted.ts';
import type { Scenario } from './scenario.ts';
import { papersOf } from './scenario.ts';
import { LONGEST_LIST } from './schema.ts';
import { meant, WHERE_TESTS } from './tradeNames.ts';

/** Longest script that is played, operations. */
const LONGEST = 5000;

const actionSchema = v.strictObject({ op: v.literal('action'), id: v.string() });
export const stepSchema = v.variant('op', [actionSchema, operationSchema]);
export const scriptSchema = v.pipe(v.array(stepSchema), v.maxLength(LONGEST));
export type Step = v.InferOutput<typeof stepSchema>;

export function parseScript(text: string, scenario: Scenario): Parsed<readonly Step[]> {
  const json = parseJson(text);
  if (!json.ok) return json;
  if (!Array.isArray(json.value))
    return { ok: false, problems: [{ path: '', message: 'an array of operations is expected' }] };
  const long =
    json.value.length > LONGEST
      ? longLists(json.value, LONGEST)
      : json.value.flatMap((step, i) => longLists(step, LONGEST_LIST, `[${i}]`));
  if (long.length > 0) return { ok: false, problems: listed(long) };
  const script = check(scriptSchema, json.value);
  if (!script.ok) return script;
  const problems = script.value.flatMap((step, i) => stepProblems(step, `[${i}]`, scenario));
  return problems.length > 0 ? { ok: false, problems: listed(problems) } : { ok: true, value: script.value };
}

function stepProblems(step: Step, path: string, scenario: Scenario): readonly Problem[] {
  if (step.op === 'action') {
    if (actionNamed(step.id) !== undefined) return [];
    const ids = ACTIONS.map(({ id }) => id);
    return [
      {
        path: `${path}.id`,
        message: `unknown test action ${quoted(step.id)}; ${meant(step.id, ids, WHERE_TESTS)}`,
      },
    ];
  }
  return operationProblems(step, path, scenario.site);
}

export interface PlayedStep {
  readonly op: number;
  readonly action: string | null;
  readonly outcome: Outcome;
}

/** Every step's outcomes in order; a whole test action has one for each of its operations. */
export function playScript(
  world: World,
  script: readonly Step[],
  scenario: Scenario,
): { readonly steps: readonly PlayedStep[]; readonly stopped: string | null } {
  const steps: PlayedStep[] = [];
  for (const [op, step] of script.entries()) {
    const outcomes = step.op === 'action' ? wholeAction(world, step.id, scenario) : [perform(world, step)];
    const action = step.op === 'action' ? step.id : null;
    for (const outcome of outcomes) steps.push({ op, action, outcome });
    if (step.op === 'stop') return { steps, stopped: step.why };
  }
  return { steps, stopped: null };
}

/** As a faultless trainee does it, with the second try where there is no supply. */
function wholeAction(world: World, id: string, scenario: Scenario): readonly Outcome[] {
  const action = actionNamed(id);
  return action === undefined ? [] : carryOut(world, action, papersOf(scenario)).outcomes;
}
