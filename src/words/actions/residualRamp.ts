/** Words of the test action `residual-ramp`. */
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num } from '../values.ts';

export const residualRamp: ActionWords = {
  purpose: 'Find the current at which the residual device trips, and show that the outlet then stays off.',
  stops: {
    trips: 'the residual device does not trip at its rating, so a shock would last: leave off, lock off',
  },
  lines: {
    trips: {
      text: (v) =>
        is(v, 'delayed')
          ? `trips before the rising a.c. ends at ${milliamps(num(v, 'amps'))} mA`
          : `trips before the rising a.c. passes ${milliamps(num(v, 'amps'))} mA`,
      why: (v) =>
        is(v, 'delayed')
          ? 'A delayed device may wait 500 ms at its rating, and each step of the ramp lasts 300 ms. So a trip one step above the rating counts as well.'
          : 'A leak above the rating may be flowing through a person. The sensor has to feel it and open the contacts before it grows further.',
      otherwise: (v) =>
        `no trip by the end of the ramp${is(v, 'delayed') ? '' : `, or one above ${milliamps(num(v, 'amps'))} mA`}`,
    },
    early: {
      text: (v) => `trips at ${milliamps(num(v, 'amps'))} mA or less of rising a.c.`,
      why: 'Filters in unit and vehicle leak up to half the rating in ordinary use. A device that trips on that ends charges for no reason.',
      otherwise: (v) => `a tripping current of ${milliamps(num(v, 'amps'))} mA or less, in the first steps`,
    },
    'stays-off': {
      text: 'keeps the outlet dead after the trip until somebody resets it',
      why: 'The leak may still be there, perhaps through a person. Closing would start the shock again, so somebody has to look first.',
      otherwise: '230 V at the outlet within some 10 s of the trip, with nothing reset',
    },
    direct: {
      text: 'trips on smooth d.c. as well',
      why: 'Only a.c. flowed in this test. A sensor with a transformer core feels a.c., and steady d.c. not at all.',
    },
  },
  limits: {
    'trip-current': {
      text: 'greatest tripping current, a.c.',
      sum: (v) => `at most ${milliamps(num(v, 'rated'))} mA, the rating`,
    },
  },
};
