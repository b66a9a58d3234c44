/** Words of the test action `insulation-circuit`. */
import type { ActionWords } from '../actionWords.ts';
import { megohms, num } from '../values.ts';

export const insulationCircuit: ActionWords = {
  title: 'Insulation of the circuit, unit taken off',
  purpose: 'Measure the cable alone, every pair, at 500 V d.c.',
  stops: {
    'lives-to-earth': 'insulation to earth failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'between-lives': 'insulation between live conductors failed: do not energise (BS 7671 643.1)',
  },
  lines: {
    'lives-to-earth': {
      text: 'reads under 1.0 MΩ from any live conductor to PE',
      why: 'Current leaks there in service, and the reading falls with damp; next to nothing is a link or a crossed core.',
    },
    'between-lives': {
      text: 'reads 1.0 MΩ or more between live conductors',
      why: 'With the unit taken off there is nothing between them but insulation.',
    },
    'inside-unit': {
      text: 'has sound insulation inside the unit',
      why: 'The unit was taken off for this test.',
    },
  },
  limits: {
    insulation: {
      text: 'least insulation resistance',
      sum: (v) =>
        `circuit up to 500 V: ${num(v, 'testVoltage')} V d.c., at least ${megohms(num(v, 'minimum'))} MΩ`,
    },
  },
};
