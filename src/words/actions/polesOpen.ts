/** Words of the test action `poles-open`. */
import type { ActionWords } from '../actionWords.ts';
import { is, num } from '../values.ts';

export const polesOpen: ActionWords = {
  purpose: 'Show that the contactor opens every live conductor, including the neutral.',
  stops: {
    welded:
      'a pole of the contactor stays closed, so its conductor always reaches the outlet: do not energise',
  },
  lines: {
    'over-range': {
      text: (v) => `reads open (${num(v, 'least')} Ω or more) across every pole of its contactor`,
      why: (v) =>
        `With no power, springs hold every pole open, and its two sides do not touch. ${
          is(v, 'bleeds')
            ? `The sensing resistors across it, ${Math.round(num(v, 'ohms') / 1000)} kΩ by the sheet, are too large for this tester to show.`
            : 'Nobody can meet the supply at the outlet.'
        }`,
      otherwise: 'a reading in ohms across a pole, often close to 0 Ω',
    },
    welded: {
      text: (v) => `reads under ${num(v, 'ohms')} Ω across any pole of its contactor`,
      why: 'So little means metal on metal: the pole has welded, or sticks. A line then reaches an outlet that nobody uses, and a welded neutral shows in no voltage test.',
      otherwise: 'close to 0 Ω across one pole, and over-range across the sound ones',
    },
    closes: {
      text: 'closes every pole when a vehicle asks',
      why: 'With the supply locked off, nothing drives the contactor’s coil. A pole that can never close reads open as well.',
    },
    'when-live': {
      text: 'opens every pole fast enough when a vehicle stops asking',
      why: 'The poles were open before this test began. Their time runs from closed to open, so it is measured with the outlet supplied.',
    },
  },
};
