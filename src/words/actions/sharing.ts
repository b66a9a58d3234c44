/** Words of the test action `sharing`. */
import type { ActionWords } from '../actionWords.ts';

export const sharing: ActionWords = {
  title: 'Waiting for permission, hours or delay',
  purpose: 'Tell a unit that rightly waits from one that is faulty, and take its reason to wait away.',
  stops: {
    'unasked-supply': 'the unit supplies without permission: isolate',
  },
  lines: {
    'unasked-offer': {
      text: 'offers anything before it has permission',
      why: 'Until then the pilot stays steady.',
    },
    'unasked-supply': {
      text: 'supplies before it has permission',
      why: 'A vehicle that asks is not yet one that may charge.',
    },
    fault: {
      text: 'shows a fault while it waits',
      why: 'Waiting for permission, hours or delay is no fault.',
    },
    'offers-then': {
      text: 'offers a current once permission is given and hours and delay are overridden',
      why: 'An owner may override the hours and the delay.',
    },
    'hours-kept': {
      text: 'keeps to its hours and its delay when nobody overrides them',
      why: 'That takes a clock and as long as the delay.',
    },
  },
};
