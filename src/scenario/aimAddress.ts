/**
 * The job of one aim that an address asks for: aim, kind of site and seed, as they stand in it. What is left out is
 * drawn or usual. What is wrong with one is said by aimAddressProblems.ts.
 */
import type { AimJob } from './aims.ts';
import { aimNamed, GREATEST_SEED, isSite, SITES } from './aims.ts';

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

/** What each part of an address asks for; null where it asks for nothing that there is. */
export type Parts = { readonly [K in keyof Asked]: Asked[K] | null };

/** Without a seed the first one, without a site the one that the seed falls on, without a rung the first. */
export function partsOf({ aim, site, seed = '1', rung = '1' }: AimAddress): Parts {
  const number = /^\d{1,10}$/.test(seed) ? Number(seed) : Number.NaN;
  const seeds = number <= GREATEST_SEED ? number : null;
  const chosen = site ?? SITES[(seeds ?? 0) % SITES.length] ?? '';
  return {
    aim: aimNamed(aim)?.id ?? null,
    site: isSite(chosen) ? chosen : null,
    seed: seeds,
    rung: RUNGS.find((one) => String(one) === rung) ?? null,
  };
}

/** The job and the rung to begin it on; null where something is wrong with the address. */
export function readAimAddress(address: AimAddress): Asked | null {
  const { aim, site, seed, rung } = partsOf(address);
  return aim !== null && site !== null && seed !== null && rung !== null ? { aim, site, seed, rung } : null;
}
