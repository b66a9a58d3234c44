/** Words of the test action `prove-dead`. */
import type { ActionWords } from '../actionWords.ts';

const FOUND = 'voltage found after isolation, so hands may meet it: withdraw, find the source, start again';

export const proveDead: ActionWords = {
  purpose:
    'Show with a proved detector that every pair is dead, first at the origin, then at the supply terminals.',
  stops: {
    'detector-proves':
      'a detector that is dark on its proving unit shows live parts as dead: replace it, and prove every place anew',
    'origin-dead': FOUND,
    'supply-live': FOUND,
  },
  lines: {
    'detector-proves': {
      text: 'lights on its proving unit before the test of a place and again after it',
      why: 'A battery that runs out or a lead that parts in use leaves the detector dark on whatever it touches. Only the second trial tells a dead place from a dead detector.',
      otherwise: 'a detector that lit before the test and stays dark on the proving unit after it',
    },
    'origin-dead': {
      text: 'reads dead (about 0 V) between every pair of conductors at the origin',
      why: 'The locked switch parts every live conductor from the supply, the neutral too. Voltage here means a second source, or the wrong switch.',
      otherwise: 'voltage on one pair or more, such as 230 V',
    },
    'supply-live': {
      text: 'shows voltage between any two of the unit’s supply terminals',
      why: 'These are the terminals that you will touch. The switch is off, so voltage here comes from another source or another circuit.',
      otherwise: 'voltage on one pair or more, such as 230 V, though the switch is locked off',
    },
    stored: {
      text: 'holds more than 60 V d.c. at its supply terminals 5 s after switching off',
      why: 'Capacitors in the unit’s filter keep their charge when the supply goes. Resistors have to drain them in that time, or they give a shock to the hand at the terminals.',
      otherwise: 'a d.c. voltage above 60 V that fades slowly',
    },
    'outlet-side': {
      text: 'has every pole of its contactor open',
      why: 'With the supply off, both sides of a pole are dead, whether the pole is open or closed. No voltage test finds a closed one now.',
    },
    insulated: {
      text: 'has good insulation between its conductors',
      why: 'The detector shows whether a voltage is there. Poor insulation shows only when a tester puts a voltage across it.',
    },
  },
};
