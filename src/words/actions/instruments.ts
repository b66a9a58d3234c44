/** Words of the test action `instruments`. */
import type { ActionWords } from '../actionWords.ts';

export const instruments: ActionWords = {
  title: 'Instruments and leads',
  purpose: 'Prove the detector on every step, null the leads, and see that they read nothing when joined.',
  lines: {
    nulled: {
      text: 'reads 0.00 Ω, within the instrument’s last digits, with both leads on one terminal',
      why: 'Nulled leads add nothing; what they still read would be added to every conductor.',
    },
    'insulation-joined': {
      text: 'reads 0.00 MΩ, within the instrument’s last digits, with both leads of the insulation tester on one terminal',
      why: 'Leads that are broken read over-range on everything, and pass everything.',
    },
    fuse: {
      text: 'opens the tester’s fuse while the instruments are looked over',
      why: 'The leads are on nothing live: a fuse that goes has met something that should not be there.',
    },
    dead: {
      text: 'is dead where the work will be',
      why: 'A detector that lights on its proving unit is fit to show that, once it is put there.',
    },
  },
};
