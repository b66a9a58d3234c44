/** Words of the test action `residual-half`. */
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

export const residualHalf: ActionWords = {
  title: 'Half the residual rating, a.c.',
  purpose: 'Show that standing leakage up to half the rating trips nothing.',
  lines: {
    trips: {
      text: (v) => `trips at ${milliamps(num(v, 'amps'))} mA, in the unit or upstream`,
      why: 'Half the rating is what every residual device has to put up with. Standing leakage adds to it.',
    },
    'stays-live': { text: 'goes on supplying', why: 'Nothing has opened.' },
    'acts-at-rating': { text: 'trips at its rating', why: 'A device that is dead passes this test as well.' },
  },
};
