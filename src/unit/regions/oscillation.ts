/** Whether the pilot oscillates (an offer stands), with the pause that has to come before the next offer. */
import { and, not } from 'xstate';
import { inLevel, mayOffer } from './conditions.ts';
import { unitSetup } from './setup.ts';

export const oscillation = unitSetup.createStateConfig({
  initial: 'off',
  states: {
    off: { always: { guard: mayOffer, target: 'on' } },
    on: {
      id: 'oscillating',
      tags: 'oscillating',
      always: [
        { guard: and([inLevel('A'), not(mayOffer)]), target: 'off' },
        { guard: not(mayOffer), target: 'pausing' },
      ],
    },
    pausing: {
      always: { guard: inLevel('A'), target: 'off' },
      after: { 'restart pause': 'off' },
    },
  },
});
