/** Addresses of jobs of one aim: written for the links of the page, and read as they stand in the address line. */
import type { Rung } from '../../attempt/record/rung.ts';
import type { AimAddress } from '../../scenario/aimAddress.ts';
import type { AimId } from '../../scenario/aims.ts';

/** Seeds that links are given; an address may name any other. */
const SEEDS = 9999;

/** Of a job that nobody has had yet, as far as chance goes. */
export const anySeed = (): number => 1 + Math.floor(SEEDS * Math.random());

/** The first jobs are at a plain home; later ones on whatever site the seed falls on. */
export const aimLink = (aim: AimId, rung: Rung, seed: number): string =>
  `/aim/${aim}${rung === 1 ? '/single-pme' : ''}?seed=${seed}&rung=${rung}`;

/** What stands before the question mark, and what behind it. */
export function partsOf(place: string): { readonly path: string; readonly query: URLSearchParams } {
  const at = place.indexOf('?');
  return at < 0
    ? { path: place, query: new URLSearchParams() }
    : { path: place.slice(0, at), query: new URLSearchParams(place.slice(at + 1)) };
}

export const addressIn = (aim: string, site: string | undefined, query: URLSearchParams): AimAddress => ({
  aim,
  site,
  seed: query.get('seed') ?? undefined,
  rung: query.get('rung') ?? undefined,
});
