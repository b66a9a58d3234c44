/** Words of the test action `prove-dead`. */
import type { ActionWords } from '../actionWords.ts';

export const proveDead: ActionWords = {
  title: 'Prove it dead',
  purpose:
    'Show with a proved detector that every pair is dead, first at the origin, then at the supply terminals.',
  stops: {
    'origin-dead': 'voltage found after isolation: withdraw, find the source, start again',
    'supply-live': 'voltage found after isolation: withdraw, find the source, start again',
  },
  lines: {
    'origin-dead': {
      text: 'reads dead between every pair at the origin',
      why: 'Every live pole is open there, the neutral too.',
    },
    'supply-live': {
      text: 'shows voltage between any pair at the unit’s supply terminals',
      why: 'A voltage there means another source, a crossed neutral, or the wrong circuit: withdraw.',
    },
    stored: {
      text: 'holds more than 60 V d.c. at its supply terminals 5 s after switching off',
      why: 'What its capacitors have stored has to be gone by then.',
    },
    'outlet-side': {
      text: 'has both contactor poles open',
      why: 'With the supply off, dead terminals say nothing about the poles behind them.',
    },
    insulated: { text: 'has sound insulation', why: 'That is a measurement of its own, at a test voltage.' },
  },
};
