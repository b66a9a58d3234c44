/** How an attempt begins anew. It is done in pieces: a handover is carried out. What is opened is in opening.ts. */
import type { Rung } from '../../attempt/record/rung.ts';
import { supportOf } from '../../attempt/record/rung.ts';
import type { AimAddress } from '../../scenario/aimAddress.ts';
import { readAimAddress } from '../../scenario/aimAddress.ts';
import { aimJob } from '../../scenario/aimJobs.ts';
import type { Problem } from '../../scenario/problems.ts';
import { scenarioIn } from '../../scenario/scenario.ts';
import { aimJobWords } from '../../words/aimJobs.ts';
import { inWords } from '../../words/problems.ts';
import type { Bench } from './bench.ts';
import { makingBench } from './bench.ts';

/** In words already: those of what is met at the bench too come with the bench, not with the first screen. */
export type Refused = { readonly kind: 'refused'; readonly problems: readonly Problem<string>[] };
export type Taken = { readonly kind: 'attempt'; readonly bench: Bench };

/** A new attempt at a job of one aim, as its address asks for it. */
export function* beginningAim(address: AimAddress): Generator<null, Taken | Refused> {
  const read = readAimAddress(address);
  if (!read.ok) return { kind: 'refused', problems: inWords(read.problems) };
  const { rung, ...job } = read.value;
  return yield* beginningOn(aimJob(job, aimJobWords(job)), rung, '');
}

/** A new attempt at what the page has or has opened, so nothing is wrong with it, on the rung that the trainee asks for. */
export function* beginningOn(file: object, rung: Rung, trainee: string): Generator<null, Taken> {
  const supported = { ...file, support: supportOf(rung) };
  const label = trainee.trim();
  const labels = { rung, ...(label === '' ? {} : { trainee: label }) };
  return { kind: 'attempt', bench: yield* makingBench(scenarioIn(supported), supported, labels) };
}
