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
  readonly rung?: string | undefined;
}

/** How much support, from lines filled in to assessment; what each asks is in src/attempt/record/rung.ts. */
const RUNGS = [1, 2, 3, 4] as const;

interface Asked extends AimJob {
  readonly rung: (typeof RUNGS)[number];
}

/** Without a seed the first one, without a site the one that the seed falls on, without a rung the first. */
export function readAimAddress({
  aim: name,
  site,
  seed = '1',
  rung: level = '1',
}: AimAddress): Parsed<Asked> {
  const aim = aimNamed(name);
  const number = /^\d{1,10}$/.test(seed) ? Number(seed) : Number.NaN;
  const isSeed = number <= GREATEST_SEED;
  const chosen = site ?? (isSeed ? SITES[number % SITES.length] : SITES[0]) ?? '';
  const rung = RUNGS.find((one) => String(one) === level);
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
  if (rung === undefined)
    problems.push({ path: 'rung', message: `${quoted(level)} does not fit: 1, 2, 3 or 4 is expected` });
  return aim !== null && isSite(chosen) && isSeed && rung !== undefined
    ? { ok: true, value: { aim: aim.id, site: chosen, seed: number, rung } }
    : { ok: false, problems };
}
