/** How long the outlet stays live after a change at the stand-in. */
import * as v from 'valibot';
import type { Seconds } from '../../laws/quantities.ts';
import { MILLISECONDS } from './display.ts';
import { measuring } from './fields.ts';
import { quantityOf } from './quantity.ts';
import { onOneScale } from './scale.ts';

export const OPENINGS = [
  'C-to-B',
  'C-to-A',
  'unplug',
  'pilot-short',
  'pilot-open',
  'earth-open',
  'proximity-lost',
] as const;
export type Opening = (typeof OPENINGS)[number];

/** Half-width of a measured time, s. */
export const TIME_UNCERTAINTY: Seconds = 0.002;
/** The clock stops here if the outlet is still live. */
export const LONGEST: Seconds = 5;

export const openingTime = quantityOf({
  quantity: 'opening-time',
  unit: 's',
  measurement: measuring('opening-time', { of: v.optional(v.picklist(OPENINGS), 'C-to-B') }),
  fields: { of: v.picklist(OPENINGS) },
  ...onOneScale('opening-time', {
    gain: 0,
    digits: TIME_UNCERTAINTY,
    spans: [{ to: LONGEST, step: 0.001 }],
  }),
  display: () => MILLISECONDS,
  typedIn: ['ms', 's'],
});
