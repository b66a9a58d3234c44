/** How an attempt begins anew. It is done in pieces: a handover is carried out. What is opened is in opening.ts. */
import type { Rung } from '../../attempt/record/rung.ts';
import { supportOf } from '../../attempt/record/rung.ts';
import type { AimAddress } from '../../scenario/aimAddress.ts';
import { readAimAddress } from '../../scenario/aimAddress.ts';
import { aimJob } from '../../scenario/aimJobs.ts';
import type { Problem } from '../../scenario/problem.ts';
import { scenarioIn } from '../../scenario/scenario.ts';
import { aimJobWords } from '../../words/aimJobs.ts';
import type { Bench } from './bench.ts';
import { makingBench } from './bench.ts';
import { loaded } from './loading.ts';

/** In words already: those of what is met at the bench too come with the bench, not with the first screen. */
export type Refused = { readonly kind: 'refused'; readonly problems: readonly Problem<string>[] };
export type Taken = { readonly kind: 'attempt'; readonly bench: Bench };

/** A new attempt at a job of one aim, as its address asks for it; null where it asks for none that there is. */
export function beginningAim(address: AimAddress): Generator<null, Taken> | null {
  const asked = readAimAddress(address);
  if (asked === null) return null;
  const { rung, ...job } = asked;
  return beginningOn(aimJob(job, aimJobWords(job)), rung, '');
}

/** Why an address asks for no job. It comes when one is wrong. Rejects with `NotLoaded`. */
export async function refusedAddress(address: AimAddress): Promise<Refused> {
  const { aimAddressProblems } = await loaded(() => import('../../scenario/aimAddressProblems.ts'));
  return { kind: 'refused', problems: aimAddressProblems(address) };
}

/** A new attempt at what the page has or has opened, so nothing is wrong with it, on the rung that the trainee asks for. */
export function* beginningOn(file: object, rung: Rung, trainee: string): Generator<null, Taken> {
  const supported = { ...file, support: supportOf(rung) };
  const label = trainee.trim();
  const labels = { rung, ...(label === '' ? {} : { trainee: label }) };
  return { kind: 'attempt', bench: yield* makingBench(scenarioIn(supported), supported, labels) };
}
