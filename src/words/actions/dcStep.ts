/** Words of the test action `dc-step`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

const current = (v: Values): string => `${milliamps(num(v, 'amps'))} mA`;
const time = (v: Values): string => `${num(v, 'greatest')} s`;

export const dcStep: ActionWords = {
  purpose: 'Time how long the protection lets sudden smooth d.c. flow; at 6 mA, some seconds are normal.',
  stops: {
    'in-time': 'smooth d.c. is not switched off in time, and can blind other devices: lock off',
  },
  lines: {
    'in-time': {
      text: (v) => `trips within ${time(v)} when ${current(v)} of smooth d.c. comes all at once`,
      why: 'As long as smooth d.c. flows, it can blind residual devices on the same supply. A person’s shock might then not be cleared.',
      otherwise: (v) => `no trip at all, or a trip time longer than ${time(v)}`,
    },
    'closes-again': {
      text: 'closes again by itself after a d.c. trip',
      why: 'The d.c. fault may still be there, and the outlet would be live on it again. The unit must stay off until somebody clears it as its sheet says.',
      otherwise: 'the contactor closing some seconds after the trip, and 230 V back, with nothing reset',
    },
    breaker: {
      text: 'trips its circuit breaker on this test current',
      why: 'A breaker opens on tens of amperes, from overload or short circuit. A few milliamperes do not move it.',
      otherwise: 'the breaker at the origin off and the unit dark, as after a short circuit',
    },
    'asked-for': {
      text: 'has to pass this d.c. test for a certificate to BS 7671',
      why: 'The trip time shows how the unit acts, not who asks for the test. BS 7671 asks for the a.c. test alone; the papers say whether the maker or the client asks for this one.',
    },
  },
  figures: {
    step: {
      text: 'has to trip on a sudden smooth d.c. of',
      why: 'A d.c. detector is tested at its rated 6 mA, a type B device at twice its rating.',
    },
  },
  limits: {
    'trip-time': {
      text: (v) => `greatest trip time at ${current(v)} of smooth d.c.`,
      sum: (v) => `at most ${time(v)} for ${current(v)} all at once`,
    },
  },
};
