/** Holding the plug of a socket-outlet: before the contactor closes, and until it is open again. */
import { and, not, or, stateIn } from 'xstate';
import { allClear, inLevel, vehicle } from './conditions.ts';
import { unitSetup } from './setup.ts';

const wantsHold = and([
  'has socket',
  allClear,
  or([and([vehicle, 'holds in B']), and([inLevel('C', 'D'), stateIn('#permitted')])]),
]);

export const retention = unitSetup.createStateConfig({
  initial: 'free',
  states: {
    free: { always: { guard: wantsHold, target: 'engaging' } },
    engaging: {
      tags: 'lock driven',
      always: [
        { guard: not(wantsHold), target: 'free' },
        { guard: 'plug held', target: 'held' },
      ],
      after: { 'lock patience': 'jammed' },
    },
    // Never let go while a pole may be closed: IEC 61851-1:2017 6.3.2. One that failed to close is open.
    held: {
      tags: 'lock driven',
      always: {
        guard: and([
          or([stateIn('#contactor-open'), stateIn('#failed-to-close')]),
          or([inLevel('A'), not(allClear)]),
        ]),
        target: 'free',
      },
    },
    jammed: { always: { guard: inLevel('A'), target: 'free' } },
  },
});
