/** Words of the test action `isolate`. */
import type { ActionWords } from '../actionWords.ts';

export const isolate: ActionWords = {
  title: 'Isolate the circuit',
  purpose: 'Open every live pole at the origin and lock it, so that nobody can switch it on while you work.',
  lines: {
    'goes-dark': {
      text: 'goes dark',
      why: 'With line and neutral open at the origin nothing feeds the unit’s electronics.',
    },
    'no-indication': {
      text: 'indicates anything with the lock on',
      why: 'An indication would mean another supply, or the wrong circuit locked off.',
    },
    'terminals-dead': {
      text: 'is dead at its supply terminals',
      why: 'A dark unit proves nothing: only a proved two-pole detector at the terminals does.',
    },
  },
};
