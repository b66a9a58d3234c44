/**
 * The job of one aim that an address asks for: aim, kind of site and seed, as they stand in it. What is left out is
 * drawn or usual; what is wrong is said.
 */
import type { AimJob } from './aims.ts';
import { AIMS, aimNamed, GREATEST_SEED, isSite, SITES } from './aims.ts';
import { nearest } from './nearest.ts';
import type { Parsed, Problem } from './problems.ts';
import { quoted } from './quoted.ts';

/** As text; undefined where the address does not say it. */
export interface AimAddress {
  readonly aim: string;
  readonly site?: string | undefined;
  readonly seed?: string | undefined;
}

/** Without a seed the first one, without a site the one that the seed falls on. */
export function readAimAddress({ aim: name, site, seed = '1' }: AimAddress): Parsed<AimJob> {
  const aim = aimNamed(name);
  const number = /^\d{1,10}$/.test(seed) ? Number(seed) : Number.NaN;
  const isSeed = number <= GREATEST_SEED;
  const chosen = site ?? (isSeed ? SITES[number % SITES.length] : SITES[0]) ?? '';
  const problems: Problem[] = [];
  if (aim === null) {
    const names = AIMS.map(({ id }) => id);
    problems.push({ path: 'aim', message: `unknown aim ${quoted(name)}; ${nearest(name, names)}` });
  }
  if (!isSite(chosen))
    problems.push({ path: 'site', message: `unknown site ${quoted(chosen)}; ${nearest(chosen, SITES)}` });
  if (!isSeed)
    problems.push({
      path: 'seed',
      message: `${quoted(seed)} does not fit: a whole number from 0 to ${GREATEST_SEED} is expected`,
    });
  return aim !== null && isSite(chosen) && isSeed
    ? { ok: true, value: { aim: aim.id, site: chosen, seed: number } }
    : { ok: false, problems };
}
