/**
 * How fast charge point and vehicle answer each other over the control pilot, in seconds. A name
 * that begins with GREATEST is an upper limit, LEAST a lower one. Leaves a unit's own debounce and
 * contactor times to its design.
 */

import type { Seconds } from './quantities.ts';

/** Unplugging, B to A: socket lock released. IEC 61851-1:2017, Table A.6, sequence 2.1. */
export const GREATEST_UNLOCK_AFTER_UNPLUGGING: Seconds = 5;

/** Unplugged or pilot broken while in C2 or D2: supply off. Table A.6, sequence 2.2. */
export const GREATEST_OFF_AFTER_UNPLUGGING: Seconds = 0.1;

/** The same: vehicle opens its switch. Table A.6, sequence 2.2. */
export const GREATEST_VEHICLE_OPEN_AFTER_UNPLUGGING: Seconds = 3;

/** Vehicle ready, B2 to C2 or C1 to C2: supply on. Table A.6, sequences 3.2 and 4. */
export const GREATEST_ON_AFTER_READY: Seconds = 3;

/** C2 to D2: ventilation ordered, or supply off where there is none. Table A.6, sequence 4. */
export const GREATEST_VENTILATION: Seconds = 3;

/** A limit from outside changes: duty follows. Table A.6, sequence 6. */
export const GREATEST_DUTY_CHANGE: Seconds = 10;

/** Duty changes: vehicle is at or below the new limit. Table A.6, sequence 6. */
export const GREATEST_VEHICLE_FOLLOW: Seconds = 5;

/** Vehicle opens its switch, C or D to B: supply off. Table A.6, sequences 8.1 and 8.2. */
export const GREATEST_OFF_AFTER_NOT_READY: Seconds = 0.1;

/** Unit goes steady while charging: vehicle stops drawing. Table A.6, sequence 9.1. */
export const GREATEST_VEHICLE_STOP: Seconds = 3;

/** Pilot gone steady: wait before it oscillates again. Table A.6, sequence 9.2. */
export const LEAST_OSCILLATION_PAUSE: Seconds = 3;

/** Unit gone steady and vehicle ignores it: unit may open under load from then on. 10.2. */
export const LEAST_OPEN_UNDER_LOAD: Seconds = 6;

/** Any state to E or F: supply off. Table A.6, sequence 12. */
export const GREATEST_OFF_AFTER_FAULT: Seconds = 3;

/** Any state to E or F: socket unlocked. Table A.6, sequence 12. */
export const GREATEST_UNLOCK_AFTER_FAULT: Seconds = 30;

/** Protective conductor to the vehicle lost: supply off. IEC 61851-1:2017, 6.3.1.2 and A.4.8. */
export const GREATEST_OFF_AFTER_EARTH_LOSS: Seconds = 0.1;

/** Its continuity can no longer be proved, as with pilot shorted to it. 6.3.1.2 and A.4.9. */
export const GREATEST_OFF_AFTER_PILOT_SHORT: Seconds = 3;

/** State F held before returning to a steady state, for units with tethered cable. After Table A.5. */
export const LEAST_STATE_F: Seconds = 0.3;

/**
 * Proximity lost: supply off. IEC 61851-1:2017, Annex B, gives no power outside the codings and tables no
 * time: chosen here to equal the loss of the pilot.
 */
export const GREATEST_OFF_AFTER_PROXIMITY_LOSS: Seconds = 0.1;
