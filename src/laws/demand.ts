/** What a service has to carry. Leaves what each load takes, and for how long, to the design. */

import type { Amps } from './quantities.ts';

/**
 * Greatest demand on each line of a service, A. A connecting point counts with all that it may take, for hours: no
 * diversity (BS 7671:2018+A2:2022, 722.311). Load control that keeps the whole to a limit may be counted
 * (722.311.201): then it is at most that limit, and at least what the house asks without the point.
 *   I = house + point      or, curtailed, the lesser of that and the limit
 * Range: all >= 0, RangeError otherwise.
 */
export function greatestDemand(service: {
  /** All that is not curtailed: the house, and another point that does not give way. */
  readonly house: Amps;
  readonly point: Amps;
  readonly curtailedTo: Amps | null;
}): Amps {
  const { house, point, curtailedTo } = service;
  for (const amps of [house, point]) if (!(amps >= 0)) throw new RangeError(`No load can take ${amps} A.`);
  const whole = house + point;
  return curtailedTo === null ? whole : Math.max(house, Math.min(whole, curtailedTo));
}
