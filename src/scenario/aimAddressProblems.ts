/** What is wrong with an address that asks for a job of one aim, and what would be right; empty where nothing is. */
import type { AimAddress } from './aimAddress.ts';
import { partsOf } from './aimAddress.ts';
import { AIMS, GREATEST_SEED, SITES } from './aims.ts';
import { nearest } from './nearest.ts';
import type { Problem } from './problem.ts';
import { quoted } from './quoted.ts';

export function aimAddressProblems(address: AimAddress): readonly Problem<string>[] {
  const parts = partsOf(address);
  const { aim, site = '', seed = '', rung = '' } = address;
  const aims = AIMS.map(({ id }) => id);
  const problems = {
    aim: `unknown aim ${quoted(aim)}; ${nearest(aim, aims)}`,
    site: `unknown site ${quoted(site)}; ${nearest(site, SITES)}`,
    seed: `${quoted(seed)} does not fit: a whole number from 0 to ${GREATEST_SEED} is expected`,
    rung: `${quoted(rung)} does not fit: 1, 2, 3 or 4 is expected`,
  } as const;
  return Object.entries(problems).flatMap(([path, message]) =>
    parts[path as keyof typeof problems] === null ? [{ path, message }] : [],
  );
}
