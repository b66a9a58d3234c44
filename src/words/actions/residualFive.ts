/** Words of the test action `residual-five`. */
import type { ActionWords } from '../actionWords.ts';
import { inTime, staysOff, timeLimit, whichTrips } from './residualFixed.ts';

export const residualFive: ActionWords = {
  title: 'Five times the residual rating, a.c.',
  purpose: 'Time the trip at a current nearer to a real fault. Recorded as extra: its absence is no fault.',
  lines: {
    ...inTime,
    ...whichTrips,
    ...staysOff,
    'asked-for': {
      text: 'is asked to pass this before it may be put to use',
      why: 'Since the second amendment one test at the rating is what verification needs.',
    },
  },
  limits: {
    'trip-time': timeLimit('5 × the rating: the time for its kind'),
  },
};
