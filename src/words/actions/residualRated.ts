/** Words of the test action `residual-rated`. */
import type { ActionWords } from '../actionWords.ts';
import { goesDark, inTime, staysOff, timeLimit, whichTrips } from './residualFixed.ts';

export const residualRated: ActionWords = {
  purpose: 'Time the trip at the rated current on both half-waves, and show what opens and stays open.',
  stops: {
    'in-time': 'the residual device does not trip in time, so a shock would last: leave off, lock off',
  },
  lines: {
    ...inTime,
    ...whichTrips,
    ...staysOff,
    ...goesDark,
    'neutral-open': {
      text: 'has its neutral open as well after the trip',
      why: 'Neutral is near earth potential, so a neutral that is still through brings no voltage to the outlet. Only a dead test across the pole finds it.',
    },
  },
  limits: {
    'trip-time': timeLimit(1),
  },
};
