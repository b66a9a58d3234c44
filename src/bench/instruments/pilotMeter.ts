/**
 * Control pilot against time, CP to PE at the outlet: both levels, frequency, duty and what that offers.
 */
import type { Duty, Hertz, Ohms } from '../../laws/quantities.ts';
import type { Leads } from '../port.ts';
import { seenBy } from '../port.ts';
import type { Truth } from '../reading.ts';

/** Common practice for a measuring input, no source. */
const INPUT: Ohms = 10e6;
/** Halves closer than this are one steady level: no period to be found, V. A design choice. */
const STEADY = 1;

/** `drawn`: the duty and frequency that the unit puts on the conductor. */
export function pilot(leads: Leads, drawn: { duty: Duty; frequency: Hertz }): Truth {
  const seen = seenBy(leads);
  const share = INPUT / (seen.resistance + INPUT);
  const high = seen.open.high * share;
  const low = seen.open.low * share;
  const oscillating = Math.abs(high - low) > STEADY;
  const steadyDuty = high > STEADY ? 1 : high < -STEADY ? 0 : null;
  return {
    quantity: 'pilot',
    value: high,
    details: {
      between: ['outlet.CP', 'outlet.PE'],
      high,
      low,
      frequency: oscillating ? drawn.frequency : null,
      duty: oscillating ? drawn.duty : steadyDuty,
    },
  };
}
