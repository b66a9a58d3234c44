/** Words of the test action `coding`. */
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const coding: ActionWords = {
  title: 'Coding of the tether',
  purpose: 'Show that the connector tells the vehicle what its cable carries.',
  lines: {
    'as-marked': {
      text: (v) => `reads ${num(v, 'resistance')} Ω ± 3 % from its proximity contact to PE`,
      why: (v) => `That codes the ${num(v, 'coding')} A that its sheet gives for the cable.`,
    },
    'less-than-offered': {
      text: 'codes less than it may offer',
      why: 'The vehicle goes by the lesser of coding and offer; a cable for less would not be the unit’s own.',
    },
    setting: {
      text: 'is set to the current that the coding gives',
      why: 'Nothing in a tethered unit reads this resistor: its own limit is fixed inside.',
    },
  },
  figures: {
    coding: { text: 'reads about', why: (v) => `The resistor for ${num(v, 'coding')} A.` },
  },
};
