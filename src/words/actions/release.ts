/** Words of the test action `release`. */
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const release: ActionWords = {
  purpose: 'Show that the plug comes free after the vehicle has gone and after a fault, and never live.',
  stops: {
    'released-live': 'the plug comes free while it is live: isolate and keep people away',
  },
  lines: {
    'after-going': {
      text: (v) => `releases the plug within ${num(v, 'after-going-greatest')} s once the vehicle has gone`,
      why: 'With the vehicle gone the outlet is dead, so the plug may come out. A lock that stays shut traps the driver’s cable.',
      otherwise: (v) => `the plug still held after ${num(v, 'after-going-greatest')} s`,
    },
    'after-fault': {
      text: (v) => `releases the plug within ${num(v, 'after-fault-greatest')} s of a fault on the pilot`,
      why: 'The fault has switched the outlet off, so the plug may come out. A driver should not lose the cable to a unit that has failed.',
      otherwise: (v) => `the plug still held ${num(v, 'after-fault-greatest')} s after the pilot was shorted`,
    },
    'released-live': {
      text: 'releases the plug before its contactor has opened',
      why: 'A plug pulled out live draws an arc at the driver’s hand. So the contactor is heard first, then the lock.',
      otherwise: 'the plug come free before the contactor was heard to open',
    },
    'no-power': {
      text: 'lets somebody free the plug while its supply is off, by the means on its sheet',
      why: 'The supply was on throughout, so the lock’s motor could draw the pin back. With the supply off the motor may not move, and the plug is freed by the means that the sheet names.',
    },
  },
};
