/**
 * The site's load management: a changed limit is followed after a time of the unit's own, within 10 s
 * (IEC 61851-1:2017 Table A.6 sequence 6). The vehicle then has 5 s, in which the offer does not change again.
 */
import { not } from 'xstate';
import { unitSetup } from './setup.ts';

export const curtailment = unitSetup.createStateConfig({
  initial: 'following',
  states: {
    following: { always: { guard: 'limit changed', target: 'changing' } },
    changing: {
      always: { guard: not('limit changed'), target: 'following' },
      after: {
        'limit time': {
          target: 'waiting',
          actions: 'take limit',
        },
      },
    },
    waiting: { after: { 'vehicle follows': 'following' } },
  },
});
