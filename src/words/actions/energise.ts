/** Words of the test action `energise`. */
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const energise: ActionWords = {
  title: 'Switching on',
  purpose: 'Show that the unit starts by itself, closes nothing, and says when it is ready.',
  stops: {
    voltage: 'the outlet is live with nothing connected: isolate and keep people away',
  },
  lines: {
    voltage: {
      text: 'puts voltage on the outlet at any moment',
      why: 'Nothing is connected, and nothing has been checked yet.',
    },
    contactor: {
      text: 'lets its contactor be heard',
      why: 'Nothing is to close before a vehicle asks; its sheet names no self-test of the contactor.',
    },
    'offers-early': {
      text: 'oscillates its pilot with nothing connected',
      why: 'Until it is ready the pilot is off, steady low or nought; then it is steady at +12 V.',
    },
    trips: {
      text: 'trips anything as it is switched on',
      why: 'Its filters and supplies draw little; a trip is a fault, or the wrong device.',
    },
    ready: {
      text: (v) => `says that it is ready once its ${num(v, 'startUp')} s are over`,
      why: 'Its sheet gives the time; a dark unit has no supply.',
    },
    'twelve-volts': {
      text: 'holds the pilot steady at 11.4 to 12.6 V once it is ready',
      why: 'Nothing is connected, and it is ready for a vehicle.',
    },
    poles: { text: 'has every pole of its contactor open', why: 'A closed neutral pole shows no voltage.' },
  },
};
