/** Words of the test action `electrode`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const sum = (v: Values): string => {
  const greatest = num(v, 'greatest');
  const needed = `${num(v, 'touchVoltage')} V ÷ ${1000 * num(v, 'rated')} mA = ${greatest.toFixed(0)} Ω`;
  const stable = num(v, 'stable');
  return greatest > stable ? `${needed}; above ${stable} Ω it may not be stable` : needed;
};

export const electrode: ActionWords = {
  title: 'Earth electrode',
  purpose: 'Measure what every earth fault current of this installation has to pass.',
  stops: {
    unstable: 'the electrode failed: do not energise (BS 7671 643.1)',
  },
  lines: {
    'as-papers': {
      text: (v) => `reads half to half as much again of the ${num(v, 'declared')} Ω in its papers`,
      why: 'Soil varies with the season. Much less means that it has met another earth, much more a poor joint or dry ground.',
    },
    unstable: {
      text: (v) => `reads over ${num(v, 'stable')} Ω`,
      why: 'Such an electrode may not be stable, whatever the arithmetic says.',
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
};
