/** Words of the test action `residual-origin`. */
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num } from '../values.ts';
import { inTheTime, noTripInTime, timeLimit } from './residualFixed.ts';

export const residualOrigin: ActionWords = {
  purpose:
    'Time the device at the origin by itself, as at the outlet the unit’s own device opens first and hides it.',
  stops: {
    'in-time':
      'the residual device at the origin does not trip in time, so a leak from the cable would last: leave off, lock off',
  },
  lines: {
    'half-trips': {
      text: (v) => `trips the device at its origin at ${milliamps(num(v, 'amps'))} mA a.c.`,
      why: 'Cable and unit leak a little to earth all the time. A device that trips at half its rating takes the supply away for no reason.',
      otherwise:
        'the device open and the unit dark within 2 s, by a device that acts too soon or leakage that was there',
    },
    'in-time': {
      text: (v) => `trips the device at its origin ${inTheTime(v)} at ${milliamps(num(v, 'amps'))} mA a.c.`,
      why: (v) =>
        is(v, 'delayed')
          ? 'The delay lets the unit’s own device open first. After it, this device has to open, as it alone feels a leak from the cable to the unit.'
          : 'This device alone feels a leak to earth from the cable to the unit. Whoever touches that leak gets a shock until it opens.',
      otherwise: noTripInTime,
    },
    which: {
      text: 'trips the device at its origin alone, and none in the unit',
      why: 'The test current leaves for earth at the origin, before it reaches the unit. No sensor in the unit feels it.',
      otherwise: 'another device open, alone or together with the one at the origin',
    },
    'own-device': {
      text: 'has a residual device in the unit that trips at its rating',
      why: 'The test current leaves for earth at the origin. None of it flows through the device in the unit.',
    },
  },
  limits: {
    'trip-time': {
      ...timeLimit(1),
      text: (v) => `greatest trip time at ${milliamps(num(v, 'amps'))} mA a.c., at the origin`,
    },
  },
};
