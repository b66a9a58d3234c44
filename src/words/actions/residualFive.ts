/** Words of the test action `residual-five`. */
import type { ActionWords } from '../actionWords.ts';
import { inTime, staysOff, timeLimit, whichTrips } from './residualFixed.ts';

export const residualFive: ActionWords = {
  purpose: 'Time the trip at a current nearer to a real fault: an extra, which no rule asks for.',
  lines: {
    ...inTime,
    ...whichTrips,
    ...staysOff,
    'asked-for': {
      text: 'has to pass this test for a certificate to BS 7671',
      why: 'The trip time shows how the device acts, not who asks for the test. Since Amendment 2, BS 7671 asks for one a.c. test, at the rating.',
    },
  },
  limits: {
    'trip-time': timeLimit(5),
  },
};
