/** Words of the test action `insulation-unit`. */
import type { ActionWords } from '../actionWords.ts';
import { megohms, num } from '../values.ts';

export const insulationUnit: ActionWords = {
  title: 'Insulation with the unit connected',
  purpose: 'Measure circuit and unit together, at a voltage that the unit’s sheet allows.',
  stops: {
    'unit-to-earth': 'insulation of the unit failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
  lines: {
    'unit-to-earth': {
      text: (v) => `reads under ${megohms(num(v, 'minimum'))} MΩ from all its live conductors joined to PE`,
      why: 'Filter and electronics bleed a little, so that it reads lower than the cable alone; not as low as that.',
    },
    'between-lives': {
      text: 'has sound insulation between its live conductors',
      why: 'They are joined: between them lie electronics, which the test could harm and which read low.',
    },
    'outlet-side': { text: 'has sound insulation at its outlet', why: 'The contactor is open.' },
  },
  limits: {
    insulation: {
      text: 'least insulation resistance with equipment connected',
      sum: (v) =>
        `equipment connected: ${num(v, 'testVoltage')} V d.c., at least ${megohms(num(v, 'minimum'))} MΩ; a lower voltage is for comparison`,
    },
  },
};
