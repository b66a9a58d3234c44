/** Words of the test action `isolate`. */
import type { ActionWords } from '../actionWords.ts';

export const isolate: ActionWords = {
  purpose: 'Open every live pole at the origin and lock it, so that nobody can switch it on while you work.',
  lines: {
    'goes-dark': {
      text: 'lets the unit’s display go off when you switch off at the origin',
      why: 'With line and neutral open at the origin, no current reaches the unit’s electronics. A display that stays on is fed by another circuit.',
      otherwise: 'a display that stays lit after you have switched off',
    },
    'no-indication': {
      text: 'brings any light or message back on the unit while your lock is on',
      why: 'A light needs a supply: a second one, or your lock is on the wrong breaker. The terminals behind the cover are then live.',
      otherwise: 'a display that lights up, or was never off, with your lock on the breaker',
    },
    'terminals-dead': {
      text: 'is dead at its supply terminals',
      why: 'A lost neutral or a blown fuse inside darkens the display too, and the line is then still live. Only a proved two-pole detector on the terminals shows that they are dead.',
    },
  },
};
