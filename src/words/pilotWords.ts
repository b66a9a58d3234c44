/** What several tables say of the pilot. */
import { MEASURED_PILOT } from '../laws/pilotLevels.ts';
import type { Volts } from '../laws/quantities.ts';
import type { Values } from '../verification/testAction.ts';
import { num } from './values.ts';

/** A voltage to a tenth, with a true minus sign. */
const volts = (value: Volts): string => value.toFixed(1).replace('-', '−');

/** The negative peak with the vehicle’s diode shorted, and its range. */
export const loweredHalf = (v: Values): string =>
  `about ${volts(num(v, 'low'))} V (${volts(num(v, 'least'))} to ${volts(num(v, 'greatest'))} V)`;

const { least, greatest } = MEASURED_PILOT.A;
/** The pilot with nothing plugged in, and its range. */
export const PILOT_AT_REST = `about +12 V (${least} to ${greatest} V)`;
