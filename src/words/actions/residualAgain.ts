/** Words of the test action `residual-again`. */
import type { ActionWords } from '../actionWords.ts';
import { inTime, timeLimit, whichTrips } from './residualFixed.ts';

export const residualAgain: ActionWords = {
  title: 'Rated residual current again, and the test button',
  purpose: 'Show that the d.c. tests have changed nothing, and that the button works.',
  stops: {
    'in-time': 'the residual device does not act in time: leave off, lock off',
  },
  lines: {
    ...inTime,
    ...whichTrips,
    button: {
      text: 'opens at once when its test button is pressed',
      why: 'The button passes a residual current of its own through the sensor.',
    },
    'reset-restores': { text: 'is ready again once it was reset', why: 'The unit’s sheet says how.' },
    blinded: {
      text: 'fails to trip after the d.c. tests',
      why: 'A core may keep some magnetism; the device has to act all the same.',
    },
    'button-time': {
      text: 'trips in time, by its test button',
      why: 'The button shows that the mechanism moves, not how fast, nor at which current.',
    },
  },
  limits: {
    'trip-time': timeLimit('alternating, 1 × the rating: the time for its kind'),
  },
};
