/** Words of the test action `hold`. */
import type { ActionWords } from '../actionWords.ts';

export const hold: ActionWords = {
  purpose: 'Show that the plug is locked before the outlet is live, and stays locked while it is live.',
  stops: {
    'let-out-live': 'the plug comes out live: isolate, and keep people away',
  },
  lines: {
    'let-out-live': {
      text: 'lets the plug out while a vehicle is charging',
      why: 'The lock’s pin has to hold the plug until the contactor is open. Otherwise live contacts part in somebody’s hand, with an arc.',
      otherwise: 'the plug coming out at your pull, while the display still says charging',
    },
    'lock-first': {
      text: 'locks the plug before its contactor closes',
      why: 'A plug that is free when the contactor closes can be pulled out live. You hear the lock’s motor first, then the contactor.',
      otherwise: 'the contactor closing with no sound of the lock before it',
    },
    'held-in-b': {
      text: 'locks the plug as soon as a vehicle is connected (B)',
      why: 'This unit’s sheet says so: its lock goes home at once, so nobody can take the cable while it waits. Other sound makes lock only just before the contactor closes.',
      otherwise: 'the plug coming out at your pull in connected (B)',
    },
    worn: {
      text: 'has a lock pin without wear',
      why: 'A worn pin can hold one pull and slip at the next. Wear shows only on the pin itself, with the lock taken out.',
    },
  },
};
