/**
 * The current a unit may offer: the least of its rating, its setting, its load limit and the cable's coding
 * (IEC 61851-1:2017 6.3.1.6). A tethered unit does not read a coding: its cable is chosen to the rating.
 */
import type { CableCoding } from '../laws/proximity.ts';
import type { Amps } from '../laws/quantities.ts';
import type { UnitSheet } from './design.ts';

/** The least current a pilot can offer, A (IEC 61851-1:2017 Table A.7). */
const LEAST_OFFER: Amps = 6;

/** A; 0 where nothing may be offered (no valid coding at a socket-outlet, or under 6 A left). */
export function offeredCurrent(
  sheet: Pick<UnitSheet, 'outlet' | 'ratedCurrent' | 'setCurrent'>,
  proximity: CableCoding | 'none' | 'invalid',
  limit: Amps | null,
): Amps {
  const cable = sheet.outlet === 'tethered' ? Infinity : typeof proximity === 'number' ? proximity : 0;
  const offer = Math.min(sheet.ratedCurrent, sheet.setCurrent, limit ?? Infinity, cable);
  return offer < LEAST_OFFER ? 0 : offer;
}
