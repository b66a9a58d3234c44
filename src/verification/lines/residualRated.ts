/** What test action `residual-rated` ought to show. */
import {
  fixedTest,
  goesDark,
  inTime,
  ratedTimeLimit,
  staysOff,
  whichTrips,
} from '../actions/residualFixed.ts';
import type { TestLines } from '../testAction.ts';

export const residualRated: TestLines = {
  expectations: (papers) => {
    const test = fixedTest(papers, 1);
    return [inTime(papers, test), whichTrips(papers, test), staysOff(papers), ...goesDark(papers)];
  },
  figures: () => [],
  limits: (papers) => [ratedTimeLimit(papers)],
  stops: ['in-time'],
};
