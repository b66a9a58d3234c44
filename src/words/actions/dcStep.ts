/** Words of the test action `dc-step`. */
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

export const dcStep: ActionWords = {
  title: 'Smooth d.c. at once',
  purpose: 'Time how long smooth d.c. lasts that comes all at once; seconds are normal at 6 mA.',
  stops: {
    'in-time': 'smooth d.c. is not switched off in time: leave off, lock off',
  },
  lines: {
    'in-time': {
      text: (v) => `trips within ${num(v, 'greatest')} s at ${milliamps(num(v, 'amps'))} mA of smooth d.c.`,
      why: 'Until then the d.c. may blind other residual devices.',
    },
    'closes-again': {
      text: 'closes again by itself',
      why: 'Nothing may close by itself after a d.c. trip either.',
    },
    breaker: { text: 'takes the circuit breaker off', why: 'A few milliamperes are nothing to it.' },
    'asked-for': {
      text: 'is asked to pass a d.c. test on site by the wiring rules',
      why: 'It is the maker’s or the client’s test, and is recorded as such.',
    },
  },
  figures: {
    step: {
      text: 'has to trip at once with',
      why: 'The rated d.c. current of its detector, or twice the rating of a type B device.',
    },
  },
  limits: {
    'trip-time': {
      text: (v) => `greatest trip time at ${milliamps(num(v, 'amps'))} mA of smooth d.c.`,
      sum: (v) => `${milliamps(num(v, 'amps'))} mA at once: ${num(v, 'greatest')} s`,
    },
  },
};
