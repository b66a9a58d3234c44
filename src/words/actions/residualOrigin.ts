/** Words of the test action `residual-origin`. */
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, milliseconds, num } from '../values.ts';
import { notBefore } from './residualFixed.ts';

export const residualOrigin: ActionWords = {
  title: 'Residual device at the origin, a.c.',
  purpose: 'Time the device at the origin by itself: at the outlet the unit’s own acts first, and hides it.',
  stops: {
    'in-time': 'the residual device at the origin does not act in time: leave off, lock off',
  },
  lines: {
    'half-trips': {
      text: (v) => `trips at ${milliamps(num(v, 'amps'))} mA at its origin`,
      why: 'Half the rating is what every residual device has to put up with.',
    },
    'in-time': {
      text: (v) =>
        `trips at its origin within ${milliseconds(num(v, 'greatest'))} ms at ${milliamps(num(v, 'amps'))} mA${notBefore(v)}`,
      why: (v) =>
        is(v, 'delayed')
          ? 'It is delayed, so that the unit’s own device goes first.'
          : 'Longer than that a fault of the cable to the unit could do harm.',
    },
    which: {
      text: 'is opened by the device at its origin alone',
      why: 'The current flows before the unit: nothing in the unit feels it.',
    },
    'own-device': {
      text: 'has a residual device in the unit that acts',
      why: 'This current did not pass it.',
    },
  },
  limits: {
    'trip-time': {
      text: (v) => `greatest trip time at ${milliamps(num(v, 'amps'))} mA at the origin`,
      sum: 'alternating, 1 × the rating: the time for its kind',
    },
  },
};
