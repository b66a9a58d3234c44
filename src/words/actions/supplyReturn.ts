/** Words of the test action `supply-return`. */
import type { ActionWords } from '../actionWords.ts';
import { LIVE_LINE } from '../rangeWords.ts';
import { num } from '../values.ts';

export const supplyReturn: ActionWords = {
  purpose: 'Show that the unit checks everything afresh before it closes, when the supply returns.',
  stops: {
    voltage: 'the outlet is live while the unit starts up: isolate and keep people away',
  },
  lines: {
    voltage: {
      text: 'has voltage on its outlet while it starts up',
      why: 'While the supply was off, somebody may have unplugged the vehicle or cut its cable. The unit has not looked at the pilot yet, so it cannot know.',
      otherwise: `${LIVE_LINE} during the start-up`,
    },
    'comes-back-closed': {
      text: (v) => `closes its contactor before its start-up of ${num(v, 'startUp')} s is over`,
      why: 'The contactor’s coil lets go when the supply goes. It may close only once the self-tests have looked at poles, pilot and vehicle.',
      otherwise: 'the contactor closing as soon as the supply is back',
    },
    'permission-again': {
      text: 'supplies again before anyone has given a new permission, where its sheet asks for one',
      why: 'Permission belongs to the session, and the session ended with the supply. Another driver may be there now.',
      otherwise: 'the contactor closing, and 230 V back, before anyone gave permission again',
    },
    'supplies-again': {
      text: 'supplies again after its start-up, once any permission is given',
      why: 'The vehicle still asks (C), and every check can pass again. A unit that stays off would need a visit after each power cut.',
      otherwise: 'no voltage from a line to neutral at the outlet 3 s after the start-up',
    },
    'brown-out': {
      text: 'goes on supplying through a short dip of the supply voltage',
      why: 'The supply was off altogether for 10 s, so the contactor let go. A dip lasts a moment, and may leave the contactor closed.',
    },
  },
};
