/** Words of the test action `insulation-unit`. */
import type { ActionWords } from '../actionWords.ts';
import { megohms, num } from '../values.ts';

export const insulationUnit: ActionWords = {
  purpose: 'Measure circuit and unit together, at a voltage that the unit’s sheet allows.',
  stops: {
    'unit-to-earth':
      'insulation of circuit and unit to earth is too low, a risk of shock: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
  lines: {
    'unit-to-earth': {
      text: (v) => `reads under ${megohms(num(v, 'minimum'))} MΩ from all its live conductors, joined, to PE`,
      why: 'Filters and electronics let a little current through to PE, so the reading is lower than for the cable alone. Damp or damage opens a further path, and the reading drops below the limit.',
      otherwise: (v) => `less than ${megohms(num(v, 'minimum'))} MΩ, such as 0.30 MΩ`,
    },
    'between-lives': {
      text: 'has good insulation between its live conductors',
      why: 'With the unit connected, the live conductors are joined, so no test voltage stands between them. The electronics that lie there would read low, and could be harmed.',
    },
    'outlet-side': {
      text: 'has good insulation at its outlet',
      why: 'The open contactor cuts the outlet off from the supply terminals. Water in the connector changes nothing in a reading made there.',
    },
  },
  limits: {
    insulation: {
      text: 'least insulation resistance with equipment connected',
      sum: (v) =>
        `at least ${megohms(num(v, 'minimum'))} MΩ at ${num(v, 'testVoltage')} V d.c.; at a lower voltage the reading only compares`,
    },
  },
};
