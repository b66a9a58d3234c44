/** Words of the test action `stop`. */
import type { ActionWords } from '../actionWords.ts';

export const stop: ActionWords = {
  title: 'Normal stop, and emergency stop',
  purpose: 'Show that a normal stop lets the vehicle go first, and that an emergency stop waits for nobody.',
  stops: {
    emergency: 'the emergency stop does not open: isolate',
  },
  lines: {
    steady: {
      text: 'goes steady after a normal stop',
      why: 'That asks the vehicle to stop drawing; it has 3 s to do so.',
    },
    'under-load': {
      text: 'opens within 6 s of a normal stop while the vehicle still asks',
      why: 'Live at 4 s is right: opening under load wears the contacts, so the vehicle is given time.',
    },
    emergency: {
      text: 'opens all live conductors at once at an emergency stop',
      why: 'An emergency stop waits for nobody.',
    },
    restarts: {
      text: 'starts again when the emergency button comes up',
      why: 'Only a reset may allow it again.',
    },
    pause: {
      text: 'supplies again within 3 s of going steady, when it is reset at once',
      why: 'A pilot that has gone steady stays so for 3 s: the vehicle has that long to stop drawing.',
    },
    'says-so': { text: 'says that it was stopped', why: 'The unit’s sheet says so.' },
    'other-outlets': {
      text: 'takes every other outlet of the bay off at an emergency stop',
      why: 'Only this outlet was looked at.',
    },
  },
};
