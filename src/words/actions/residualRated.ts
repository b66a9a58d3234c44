/** Words of the test action `residual-rated`. */
import type { ActionWords } from '../actionWords.ts';
import { goesDark, inTime, staysOff, timeLimit, whichTrips } from './residualFixed.ts';

export const residualRated: ActionWords = {
  title: 'Rated residual current, a.c.',
  purpose:
    'Time the trip at the rated current, on both half-waves, and show what opens and that it stays open.',
  stops: {
    'in-time': 'the residual device does not act in time: leave off, lock off',
  },
  lines: {
    ...inTime,
    ...whichTrips,
    ...staysOff,
    ...goesDark,
    'neutral-open': {
      text: 'has opened its neutral pole as well',
      why: 'Neutral is at earth potential: a closed pole shows no voltage. Only a dead test across the pole tells.',
    },
  },
  limits: {
    'trip-time': timeLimit('alternating, 1 × the rating: the time for its kind'),
  },
};
