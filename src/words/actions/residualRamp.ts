/** Words of the test action `residual-ramp`. */
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num } from '../values.ts';

export const residualRamp: ActionWords = {
  title: 'Residual current rising, a.c.',
  purpose: 'Find the current at which the residual device acts, and show that it then stays off.',
  stops: {
    trips: 'the residual device does not act: leave off, lock off',
  },
  lines: {
    trips: {
      text: (v) =>
        is(v, 'delayed')
          ? `trips before the ramp ends, ${milliamps(num(v, 'amps'))} mA`
          : `trips by ${milliamps(num(v, 'amps'))} mA`,
      why: (v) =>
        is(v, 'delayed')
          ? 'A delayed device may take 500 ms at its rating and a step of the ramp lasts 300 ms: the step after counts too.'
          : 'That is the rated residual current for additional protection.',
    },
    early: {
      text: (v) => `trips at ${milliamps(num(v, 'amps'))} mA or less`,
      why: 'Half the rating is standing leakage that it has to put up with.',
    },
    'stays-off': {
      text: 'stays off until it is reset',
      why: 'Nothing may close by itself after a residual trip.',
    },
    direct: { text: 'acts on smooth d.c.', why: 'Only a.c. was applied.' },
  },
  limits: {
    'trip-current': {
      text: 'greatest tripping current',
      sum: (v) => `the rating: ${1000 * num(v, 'rated')} mA`,
    },
  },
};
