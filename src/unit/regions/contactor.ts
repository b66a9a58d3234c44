/** The contactor as the control drives it, and what it makes of a contact that does not follow. */
import { and, not, stateIn } from 'xstate';
import { mayRemain, maySupply } from './conditions.ts';
import { unitSetup } from './setup.ts';

export const contactor = unitSetup.createStateConfig({
  initial: 'open',
  states: {
    open: {
      id: 'contactor-open',
      always: [
        { guard: and(['contactor watched', 'linked contact closed']), target: 'failedToOpen' },
        { guard: maySupply, target: 'checking' },
      ],
    },
    // The d.c. detector tests itself and the low half is looked at once more before the coil is driven.
    checking: {
      always: [{ guard: not(maySupply), target: 'open' }],
      after: { 'before closing': { guard: not('low half wrong'), target: 'closing' } },
    },
    closing: {
      tags: 'coil driven',
      always: [
        { guard: not(maySupply), target: 'opening' },
        { guard: and(['contactor watched', 'linked contact closed']), target: 'closed' },
      ],
      after: {
        'contactor unwatched': { guard: not('contactor watched'), target: 'closed' },
        'contactor patience': 'failedToClose',
      },
    },
    closed: {
      id: 'contactor-closed',
      tags: ['coil driven', 'charging'],
      always: [
        { guard: not(mayRemain), target: 'opening' },
        // It has dropped out by itself.
        { guard: and(['contactor watched', not('linked contact closed')]), target: 'failedToClose' },
        { guard: not(stateIn('#oscillating')), target: 'draining' },
      ],
    },
    // The offer was withdrawn: the vehicle has time to stop drawing before supply opens under load
    // (IEC 61851-1:2017 Table A.6 sequences 9.1 and 10.2).
    draining: {
      tags: ['coil driven'],
      always: [
        { guard: not(mayRemain), target: 'opening' },
        { guard: stateIn('#oscillating'), target: 'closed' },
      ],
      after: { 'stop patience': 'opening' },
    },
    opening: {
      always: { guard: and(['contactor watched', not('linked contact closed')]), target: 'open' },
      after: {
        'contactor unwatched': { guard: not('contactor watched'), target: 'open' },
        'contactor patience': 'failedToOpen',
      },
    },
    failedToOpen: {
      id: 'failed-to-open',
      always: { guard: not('linked contact closed'), target: 'open' },
    },
    failedToClose: {
      id: 'failed-to-close',
      on: { button: { guard: { type: 'pressed', params: { button: 'reset' } }, target: 'open' } },
    },
  },
});
