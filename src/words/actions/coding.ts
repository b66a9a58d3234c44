/** Words of the test action `coding`. */
import { CODING_TOLERANCE } from '../../laws/proximity.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const coding: ActionWords = {
  purpose: 'Show that the connector tells the vehicle what its cable can carry.',
  lines: {
    'as-marked': {
      text: (v) => {
        const nominal = num(v, 'resistance');
        const end = (sign: 1 | -1) => (nominal * (1 + sign * CODING_TOLERANCE)).toFixed(0);
        return `reads about ${nominal} Ω from its proximity contact (PP) to PE (${end(-1)} to ${end(1)} Ω)`;
      },
      why: (v) =>
        `The vehicle reads this resistor to learn what the cable carries: here ${num(v, 'coding')} A. With a wrong one it draws too little, too much or nothing.`,
      otherwise:
        'the resistor of another cable (1500 Ω is 13 A, 680 Ω 20 A, 220 Ω 32 A, 100 Ω 63 A), or a value between them',
    },
    'less-than-offered': {
      text: 'codes its cable for less current than the unit may offer',
      why: 'The vehicle goes by the lower of coding and offer. A 32 A unit with a 20 A coding charges slowly for good.',
      otherwise:
        'too high a resistance, such as 680 Ω (20 A) on a unit set to 32 A, or one that codes nothing',
    },
    setting: {
      text: 'offers the current that its connector’s resistor stands for',
      why: 'Only the vehicle reads the resistor in a tether’s connector. What the unit offers is set inside the unit, and shows in the duty of the pilot.',
    },
  },
  figures: {
    coding: {
      text: 'reads, from proximity contact (PP) to PE, about',
      why: (v) => `A ${num(v, 'coding')} A cable carries this resistor in its connector.`,
    },
  },
};
