/** Words of the test action `sharing`. */
import type { ActionWords } from '../actionWords.ts';
import { LIVE_LINE } from '../rangeWords.ts';

export const sharing: ActionWords = {
  purpose: 'Tell a unit that rightly waits from one that is faulty, and take its reason to wait away.',
  stops: {
    'unasked-supply': 'the unit supplies without permission, when nobody expects it: isolate',
  },
  lines: {
    'unasked-offer': {
      text: 'offers a current before it has permission',
      why: 'An oscillating pilot tells the vehicle that it may draw. Until permission is given the pilot stays steady at 9 V, and the vehicle waits.',
      otherwise: 'a pilot with a frequency (1 kHz) and a duty, before anyone gave permission',
    },
    'unasked-supply': {
      text: 'supplies the outlet before it has permission, even when asked (C)',
      why: 'By asking, a vehicle says only that it is ready. Whoever gives permission may have held the unit back, and expects a dead connector.',
      otherwise: `${LIVE_LINE}, before anyone gave permission`,
    },
    fault: {
      text: 'shows a fault on its display while it waits',
      why: 'Nothing is wrong: the pilot stays steady because somebody or the clock has yet to release it. A fault shown would call for a repair that nobody needs.',
      otherwise: 'a fault on the display, where it should say that the unit waits',
    },
    'offers-then': {
      text: 'offers a current once it is authorised and any hours or delay are overridden',
      why: 'With its reasons to wait gone, the unit makes the pilot oscillate, and the vehicle may draw. A pilot that stays steady is held back by something else.',
      otherwise: 'a pilot that stays steady, at about 9 V or another voltage',
    },
    'hours-kept': {
      text: 'keeps to its charging hours and its random delay when nobody overrides them',
      why: 'The override cut the waiting short. To see it kept takes a clock, and as long as the delay lasts.',
    },
  },
};
