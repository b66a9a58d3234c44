/**
 * What the unit's control can know: banded values, never volts. One `Sensed` carries every band, so that all
 * regions of the chart see one instant. How volts become bands is sense.ts's business.
 */
import type { Line } from '../laws/conductors.ts';
import type { CableCoding } from '../laws/proximity.ts';
import type { Amps } from '../laws/quantities.ts';

/** Positive peak at the unit's own pilot terminal, in the bands of IEC 61851-1:2017 Table A.4. */
export const PILOT_BANDS = ['A', 'B', 'C', 'D', 'E', 'invalid', 'F'] as const;
export type PilotBand = (typeof PILOT_BANDS)[number];

export interface Sensed {
  readonly supply: 'low' | 'within' | 'high';
  readonly missing: readonly Line[];
  readonly pilot: PilotBand;
  /** The negative peak as last seen while oscillating: −13 to −11 V is sound (a diode is there); none before that. */
  readonly lowHalf: 'sound' | 'wrong' | 'none';
  readonly proximity: CableCoding | 'none' | 'invalid';
  /** A line draws more than the cable is coded for and the sheet's margin; never on a tethered unit. */
  readonly overCode: boolean;
  readonly linkedContact: 'open' | 'closed';
  readonly plug: 'out' | 'in' | 'held';
  /** What the open-PEN measure watches: inside its limits, or outside. */
  readonly pen: 'within' | 'outside';
  /** The default charging hours forbid it now. */
  readonly peak: boolean;
  /** What the site's load management leaves for this unit, A per line; null: no limit. */
  readonly limit: Amps | null;
}

export const UNPLUGGED: Sensed = {
  supply: 'within',
  missing: [],
  pilot: 'A',
  lowHalf: 'none',
  proximity: 'none',
  overCode: false,
  linkedContact: 'open',
  plug: 'out',
  pen: 'within',
  peak: false,
  limit: null,
};

export const sameSensed = (x: Sensed, y: Sensed): boolean =>
  x.supply === y.supply &&
  x.pilot === y.pilot &&
  x.lowHalf === y.lowHalf &&
  x.proximity === y.proximity &&
  x.overCode === y.overCode &&
  x.linkedContact === y.linkedContact &&
  x.plug === y.plug &&
  x.pen === y.pen &&
  x.peak === y.peak &&
  x.limit === y.limit &&
  x.missing.join() === y.missing.join();

export const BUTTONS = ['authorise', 'override-delay', 'stop', 'emergency', 'reset'] as const;
export type Button = (typeof BUTTONS)[number];

export type UnitEvent =
  | { readonly type: 'power'; readonly on: boolean }
  | { readonly type: 'sensed'; readonly sensed: Sensed }
  | { readonly type: 'residual trip' }
  | { readonly type: 'direct trip' }
  | { readonly type: 'button'; readonly button: Button };
