/** Words of the test action `stop`. */
import { LEAST_OPEN_UNDER_LOAD, LEAST_OSCILLATION_PAUSE } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const LOAD = `${LEAST_OPEN_UNDER_LOAD} s`;
const PAUSE = `${LEAST_OSCILLATION_PAUSE} s`;

export const stop: ActionWords = {
  purpose: 'Show that a normal stop lets the vehicle finish first, and that an emergency stop does not wait.',
  stops: {
    emergency: 'the emergency stop leaves the outlet live, so nobody in danger is helped: isolate',
  },
  lines: {
    steady: {
      text: 'makes its pilot steady after a normal stop',
      why: 'A steady pilot takes the offer back, and the vehicle lowers its current. The contactor then opens without an arc.',
      otherwise: 'a pilot that still oscillates, with a frequency (1 kHz) and a duty',
    },
    'under-load': {
      text: `opens its contactor sooner than ${LOAD} after a normal stop while the vehicle still asks`,
      why: 'The vehicle may still draw current, and opening under load burns the contacts. The vehicle is given this time, so an outlet that is live after 4 s is right.',
      otherwise: `the contactor opening before the ${LOAD} are over`,
    },
    emergency: {
      text: (v) => `opens all live conductors at once at an emergency stop (within ${num(v, 'atOnce')} s)`,
      why: 'Somebody is in danger, so the unit waits neither for the vehicle nor for its own contacts. An arc inside the contactor is the lesser harm.',
      otherwise: 'the contactor opening some seconds later or never, or voltage left at the outlet',
    },
    restarts: {
      text: 'closes its contactor again after an emergency stop with nothing reset',
      why: 'Whoever pressed the button may still be in danger at the outlet. Only a reset, by somebody who has looked, may allow supply again.',
      otherwise: 'the contactor closing and 230 V back at the outlet, with nothing reset',
    },
    pause: {
      text: `supplies again sooner than ${PAUSE} after a stop that is reset at once`,
      why: `The pilot has gone steady, and the vehicle has ${PAUSE} to stop drawing. Closing sooner meets a vehicle that is still letting go, and its contacts burn.`,
      otherwise: `the contactor closing again less than ${PAUSE} after the stop`,
    },
    'says-so': {
      text: 'shows stopped on its display after either stop',
      why: 'The unit’s sheet says so. Without it the driver takes the dead outlet for a fault, or tries again.',
      otherwise: 'a display still at charging, or at ready or a fault',
    },
    'other-outlets': {
      text: 'switches off every other outlet of its bay at an emergency stop',
      why: 'Leads and ears were at this outlet alone. Whether the button reaches the others has to be seen at each of them.',
    },
  },
};
