/** How a job begins that a tutor gave out. */
import type { Job, ReadGiving } from '../../desk/giving.ts';
import { labelsOf } from '../../desk/giving.ts';
import { variantFrom } from '../../desk/variantOf.ts';
import { scenarioIn } from '../../scenario/scenario.ts';
import type { Bench } from './bench.ts';
import { makingBench } from './bench.ts';

/** A new attempt at a job that a tutor gave out, by whoever has this label. */
export function* beginningGiven(
  { giving, jobs }: ReadGiving,
  at: number,
  label: string,
): Generator<null, Bench> {
  const { file } = jobs[at] as Job;
  const own = variantFrom(file, giving, label);
  return yield* makingBench(scenarioIn(own), own, { ...labelsOf(giving), trainee: label });
}
