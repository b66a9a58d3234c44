/**
 * What the unit's control can know: banded values, never volts. One `Sensed` carries every band, so that all
 * regions of the chart see one instant. How volts become bands is sense.ts's business.
 */
import type { Line } from '../laws/conductors.ts';
import type { CableCoding } from '../laws/proximity.ts';

/** Positive peak at the unit's own pilot terminal, in the bands of IEC 61851-1:2017 Table A.4. */
export const PILOT_BANDS = ['A', 'B', 'C', 'D', 'E', 'invalid', 'F'] as const;
export type PilotBand = (typeof PILOT_BANDS)[number];

export interface Sensed {
  readonly supply: 'low' | 'within' | 'high';
  readonly missing: readonly Line[];
  readonly pilot: PilotBand;
  /** The negative peak while oscillating: −13 to −11 V is sound (a diode is there); none while steady. */
  readonly lowHalf: 'sound' | 'wrong' | 'none';
  readonly proximity: CableCoding | 'none' | 'invalid';
  readonly linkedContact: 'open' | 'closed';
  readonly plug: 'out' | 'in' | 'held';
}

export const UNPLUGGED: Sensed = {
  supply: 'within',
  missing: [],
  pilot: 'A',
  lowHalf: 'none',
  proximity: 'none',
  linkedContact: 'open',
  plug: 'out',
};

export const sameSensed = (x: Sensed, y: Sensed): boolean =>
  x.supply === y.supply &&
  x.pilot === y.pilot &&
  x.lowHalf === y.lowHalf &&
  x.proximity === y.proximity &&
  x.linkedContact === y.linkedContact &&
  x.plug === y.plug &&
  x.missing.join() === y.missing.join();

export const BUTTONS = ['authorise', 'override-delay', 'reset'] as const;
export type Button = (typeof BUTTONS)[number];

export type UnitEvent =
  | { readonly type: 'power'; readonly on: boolean }
  | { readonly type: 'sensed'; readonly sensed: Sensed }
  | { readonly type: 'residual trip' }
  | { readonly type: 'direct trip' }
  | { readonly type: 'button'; readonly button: Button };
