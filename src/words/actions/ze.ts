/** Words of the test action `ze`. */
import type { ActionWords } from '../actionWords.ts';
import { num, str } from '../values.ts';

export const ze: ActionWords = {
  title: 'External loop impedance, Ze',
  purpose: 'Measure the distributor’s earth by itself, before anything is trusted to it.',
  stops: {
    'no-earth': 'the distributor’s earth is not there: do not energise, tell the distributor',
  },
  lines: {
    'as-design': {
      text: (v) => `reads within 0.05 Ω of the ${num(v, 'design')} Ω in its papers`,
      why: 'Every loop and every device of the design rests on that figure.',
    },
    'no-earth': {
      text: 'leaves the test current without a way back',
      why: 'Then the distributor’s earth is not there at all.',
    },
    'conductor-on': {
      text: 'has its earthing conductor joined to the main earthing terminal',
      why: 'It was off for this; the loop with everything connected tells.',
    },
    'pen-sound': { text: 'keeps its PEN conductor whole from now on', why: 'It is whole today.' },
  },
  figures: {
    ze: { text: 'reads about', why: 'The figure in the papers.' },
  },
  limits: {
    usual: {
      text: 'usual upper figure that distributors declare',
      sum: (v) => `${str(v, 'earthing')}: ${num(v, 'usual').toFixed(2)} Ω`,
    },
  },
};
