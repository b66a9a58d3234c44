/** How long the outlet stays live after a change at the stand-in. */
import type { Seconds } from '../../laws/quantities.ts';
import { MILLISECONDS } from './display.ts';
import { quantityOf } from './quantity.ts';
import { onOneScale } from './scale.ts';

/** Half-width of a measured time, s. */
export const TIME_UNCERTAINTY: Seconds = 0.002;
/** The clock stops here if the outlet is still live. */
export const LONGEST: Seconds = 5;

export const openingTime = quantityOf({
  quantity: 'opening-time',
  unit: 's',
  ...onOneScale('opening-time', {
    gain: 0,
    digits: TIME_UNCERTAINTY,
    spans: [{ to: LONGEST, step: 0.001 }],
  }),
  display: () => MILLISECONDS,
  typedIn: ['ms', 's'],
});
