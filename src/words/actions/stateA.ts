/** Words of the test action `state-a`. */
import type { ActionWords } from '../actionWords.ts';

export const stateA: ActionWords = {
  title: 'No vehicle (A)',
  purpose: 'Show that nothing but the pilot is at the outlet while nothing is connected.',
  stops: {
    voltage: 'the outlet is live with nothing connected: isolate and keep people away',
  },
  lines: {
    voltage: {
      text: 'puts voltage on the outlet',
      why: 'Supply is allowed only while a vehicle asks for it.',
    },
    high: { text: 'holds the pilot at 11.4 to 12.6 V', why: 'Nothing loads its 1 kΩ.' },
    ready: { text: 'says that it is ready', why: 'Its start-up is over and no fault is latched.' },
    'neutral-open': {
      text: 'has its neutral pole open',
      why: 'A closed neutral pole shows no voltage: only a dead test across the pole tells.',
    },
  },
};
