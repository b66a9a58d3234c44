/** What test action `pilot-open` ought to show. */
import { lossExpectations, lossLimit } from '../actions/pilotLost.ts';
import { loss } from '../actions/pilotOpen.ts';
import type { TestLines } from '../testAction.ts';

export const pilotOpen: TestLines = {
  expectations: (papers) => lossExpectations(papers, loss),
  figures: () => [],
  limits: () => [lossLimit(loss)],
  stops: ['voltage'],
};
