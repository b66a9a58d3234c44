/** Words of the test action `electrode`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const sum = (v: Values): string =>
  `${num(v, 'touchVoltage')} V ÷ ${1000 * num(v, 'rated')} mA = ${num(v, 'greatest').toFixed(0)} Ω`;

export const electrode: ActionWords = {
  title: 'Earth electrode',
  purpose: 'Measure what every earth fault current of this installation has to pass.',
  stops: {
    'too-high': 'the electrode failed: do not energise (BS 7671 643.1)',
  },
  lines: {
    'as-papers': {
      text: (v) => `reads half to half as much again of the ${num(v, 'declared')} Ω in its papers`,
      why: 'Soil varies with the season. Much less means that it has met another earth, much more a poor joint or dry ground.',
    },
    'too-high': {
      text: (v) => `reads over ${num(v, 'greatest').toFixed(0)} Ω`,
      why: (v) =>
        `A fault that the residual device is too coarse to see would hold the case above ${num(v, 'touchVoltage')} V for good (${sum(v)}).`,
    },
    'stays-so': {
      text: 'has an electrode that reads the same in a dry summer',
      why: (v) =>
        `Soil dries and the reading rises. Above ${num(v, 'stable')} Ω it may not be stable: write that down and advise another rod.`,
    },
    joined: {
      text: 'has its electrode joined to the main earthing terminal',
      why: 'It was taken off for this; the loop shows whether it is back.',
    },
  },
  figures: {
    electrode: { text: 'reads about', why: 'The figure in the papers; soil varies.' },
  },
  limits: {
    electrode: { text: 'greatest resistance of the electrode', sum },
  },
  advice: {
    unstable: (v) =>
      `The electrode reads over ${num(v, 'stable')} Ω and may not be stable: no limit is broken, but another rod is advised.`,
  },
};
