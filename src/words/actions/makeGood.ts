/** Words of the test action `make-good`. */
import type { ActionWords } from '../actionWords.ts';

export const makeGood: ActionWords = {
  purpose:
    'Take links out, put conductors back, fix the cover, and keep people away from the first switch-on.',
  lines: {
    'link-in': {
      text: 'still has a temporary link in it',
      why: 'A link from line to PE is a dead short. At switch-on, hundreds of amperes flow through it until the breaker opens.',
      otherwise: 'a link that is on your list and not yet out',
    },
    'conductors-back': {
      text: 'has every conductor back that you took off',
      why: 'Without its earth, a fault makes metal live and nothing trips, so the earthing conductor goes back first. A neutral left off can leave the unit dark with its line still live.',
      otherwise: 'a conductor that is on your list and still off its terminal',
    },
    'cover-on': {
      text: 'has its cover fixed',
      why: 'The terminals behind the cover go live at switch-on. Without it fingers, tools and rain reach them.',
      otherwise: 'open terminals behind a cover that is off',
    },
    'right-way': {
      text: 'has every conductor back on the right terminal',
      why: 'A look shows that each terminal holds a conductor, not which one. Crossed conductors show in the voltages, once there is power.',
    },
  },
};
