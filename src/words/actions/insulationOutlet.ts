/** Words of the test action `insulation-outlet`. */
import type { ActionWords } from '../actionWords.ts';
import { is, megohms, num } from '../values.ts';

export const insulationOutlet: ActionWords = {
  title: 'Insulation at the outlet, contactor open',
  purpose: 'Measure the outlet and its cable at the voltage that the unit’s sheet allows.',
  stops: {
    'outlet-to-earth': 'insulation of the outlet failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'outlet-lives': 'insulation of the outlet failed: do not energise (BS 7671 643.1)',
  },
  lines: {
    'outlet-to-earth': {
      text: 'reads under 1.0 MΩ from the outlet’s live conductors to PE',
      why: 'Between outlet and open contactor there is nothing but insulation.',
    },
    'outlet-lives': {
      text: (v) => `reads ${megohms(num(v, 'least'))} MΩ or more between line and neutral of the outlet`,
      why: (v) =>
        is(v, 'bleeds')
          ? 'The contactor’s poles are open; what the sheet says bleeds across them is read, twice in series.'
          : 'The contactor’s open poles keep the unit’s electronics out of this measurement.',
    },
    'circuit-insulated': {
      text: 'has sound insulation between its own conductors',
      why: 'The open contactor cuts the circuit off from these leads.',
    },
  },
  limits: {
    insulation: {
      text: 'least insulation resistance',
      sum: (v) =>
        `equipment connected: ${num(v, 'testVoltage')} V d.c. or as the sheet allows, at least ${megohms(num(v, 'minimum'))} MΩ`,
    },
  },
};
