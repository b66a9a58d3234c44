/** What several tables say of the pilot. */
import type { Volts } from '../laws/quantities.ts';
import type { Values } from '../verification/testAction.ts';
import { num, range } from './values.ts';

/** A voltage to a tenth, with a true minus sign. */
const volts = (value: Volts): string => value.toFixed(1).replace('-', '−');

/** The negative peak with the vehicle’s diode shorted, and its range. */
export const loweredHalf = (v: Values): string =>
  `about ${volts(num(v, 'low'))} V (${volts(num(v, 'least'))} to ${volts(num(v, 'greatest'))} V)`;

/** The pilot with nothing plugged in, and its range. */
export const pilotAtRest = (v: Values): string => `about +12 V (${range(v, 'high', 'V')})`;
