/** What test action `pe-open` ought to show. */

import { loss } from '../actions/peOpen.ts';
import { lossExpectations, lossLimit } from '../actions/pilotLost.ts';
import type { TestLines } from '../testAction.ts';

export const peOpen: TestLines = {
  expectations: (papers) => lossExpectations(papers, loss),
  figures: () => [],
  limits: () => [lossLimit(loss)],
  stops: ['voltage'],
};
