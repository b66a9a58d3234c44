/**
 * A vehicle that draws more than its cable is coded for is cut off after the sheet's time (IEC 61851-1:2017 Annex B).
 * The session is over: a new one begins with a new plugging in.
 */
import { not } from 'xstate';
import { inLevel } from './conditions.ts';
import { unitSetup } from './setup.ts';

export const overCode = unitSetup.createStateConfig({
  initial: 'within',
  states: {
    within: { id: 'within-code', always: { guard: 'draws over its code', target: 'over' } },
    over: {
      always: { guard: not('draws over its code'), target: 'within' },
      after: { 'over-code time': 'cut' },
    },
    cut: { id: 'over-code-cut', tags: 'stopped', always: { guard: inLevel('A'), target: 'within' } },
  },
});
