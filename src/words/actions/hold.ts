/** Words of the test action `hold`. */
import type { ActionWords } from '../actionWords.ts';

export const hold: ActionWords = {
  title: 'Pulling at the plug',
  purpose: 'Show that the plug is locked before the outlet is live, and stays locked while it is.',
  stops: {
    'let-out-live': 'the plug comes out live: isolate and keep people away',
  },
  lines: {
    'let-out-live': {
      text: 'lets the plug out while a vehicle is supplied',
      why: 'Live contacts would part under load, in somebody’s hand.',
    },
    'lock-first': {
      text: 'locks the plug before its contactor closes',
      why: 'The lock is heard before the contactor.',
    },
    'held-in-b': {
      text: 'holds the plug as soon as a vehicle is connected',
      why: 'The unit’s sheet says so.',
    },
    worn: {
      text: 'holds the plug after years of use as well',
      why: 'One pull shows today’s lock, not its wear.',
    },
  },
};
