/** Words of the test action `release`. */
import type { ActionWords } from '../actionWords.ts';

export const release: ActionWords = {
  title: 'Letting go of the plug',
  purpose: 'Show that the plug comes free when the vehicle has gone, and after a fault.',
  stops: {
    'released-live': 'the plug is let go live: isolate and keep people away',
  },
  lines: {
    'after-going': {
      text: 'lets go of the plug within 5 s of the vehicle’s going',
      why: 'Unless its user has locked it, the cable is free to be taken.',
    },
    'after-fault': {
      text: 'lets go of the plug within 30 s of a fault',
      why: 'Nobody’s cable is kept by a unit that does not work.',
    },
    'released-live': {
      text: 'lets go of the plug before its contactor is open',
      why: 'The order can be heard: first the contactor, then the lock.',
    },
    'no-power': {
      text: 'can be made to let go of the plug with no power',
      why: 'The supply stayed on; the sheet tells the emergency means.',
    },
  },
};
