/** Words of the test action `poles-open`. */
import type { ActionWords } from '../actionWords.ts';
import { is, num } from '../values.ts';

export const polesOpen: ActionWords = {
  title: 'Every pole open',
  purpose: 'Show that the contactor parts every live conductor, the neutral among them.',
  stops: {
    welded: 'a pole of the contactor does not open: do not energise',
  },
  lines: {
    'over-range': {
      text: (v) =>
        is(v, 'bleeds')
          ? `reads no less than the ${num(v, 'ohms') / 1000} kΩ that its sheet gives, across every pole`
          : 'reads over-range across every pole',
      why: 'With no power the contactor is open, and nothing else joins its two sides.',
    },
    welded: {
      text: (v) => `reads under ${num(v, 'ohms')} Ω across any pole`,
      why: 'All live conductors are to be opened. A pole that stays closed leaves its conductor at the outlet.',
    },
    closes: { text: 'closes every pole when it should', why: 'Nothing drives the contactor now.' },
    'when-live': {
      text: 'opens every pole in time',
      why: 'They are open; how fast they part is timed with the outlet supplied.',
    },
  },
};
