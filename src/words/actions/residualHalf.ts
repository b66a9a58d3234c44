/** Words of the test action `residual-half`. */
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

export const residualHalf: ActionWords = {
  purpose: 'Show that leakage up to half the rating trips nothing, in the unit or upstream.',
  lines: {
    trips: {
      text: (v) => `trips at ${milliamps(num(v, 'amps'))} mA a.c., in the unit or upstream`,
      why: 'Filters in unit and vehicle leak a little to earth all the time. A device that trips at half its rating ends charges for no reason.',
      otherwise: 'a trip within 2 s: the device acts too soon, or other leakage adds to the test current',
    },
    'stays-live': {
      text: 'keeps its outlet live after the test at half the rating',
      why: 'No device trips on so little, so every contact stays closed and the vehicle keeps charging.',
      otherwise: 'no voltage from a line to neutral at the outlet',
    },
    'acts-at-rating': {
      text: 'trips at its full rated current',
      why: 'A device that never trips passes this test as well. It takes the full rated current to show that the device acts.',
    },
  },
};
