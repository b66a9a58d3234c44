/** What test action `residual-five` ought to show. */

import { fixedTest, inTime, staysOff, timeLimit, whichTrips } from '../actions/residualFixed.ts';
import { published } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const residualFive: TestLines = {
  expectations: (papers) => {
    const test = fixedTest(papers, 5);
    return [inTime(papers, test), whichTrips(papers, test), staysOff(papers)];
  },
  figures: () => [],
  limits: (papers) => [timeLimit(fixedTest(papers, 5), published('IEC 61008-1, break times'))],
  stops: [],
};
