/**
 * The open-PEN measure: rides out a disturbance shorter than its time, then opens live conductors and the protective
 * conductor, and never closes onto the hazard (BS 7671:2018+A2:2022 722.411.4.1).
 */
import { not } from 'xstate';
import { byReset, byStateA, keep, wasKept } from './clearing.ts';
import { unitSetup } from './setup.ts';

export const openPen = unitSetup.createStateConfig({
  initial: 'watching',
  states: {
    watching: {
      id: 'pen-watching',
      always: [
        { guard: wasKept('openPen'), target: 'lockedOut' },
        { guard: 'PEN outside', target: 'timing' },
      ],
    },
    // After a switch-on the pole stays as it was until the supply has been seen sound.
    timing: {
      tags: 'earth left',
      always: { guard: not('PEN outside'), target: 'watching' },
      after: { 'open-PEN time': 'lockedOut' },
    },
    lockedOut: {
      id: 'pen-locked-out',
      tags: ['fault', 'earth opened'],
      entry: keep('openPen'),
      initial: 'hazard',
      states: {
        hazard: { always: { guard: not('PEN outside'), target: 'over' } },
        over: {
          always: [
            { guard: 'PEN outside', target: 'hazard' },
            {
              guard: { type: 'clears by', params: { reason: 'openPen', by: 'self' } },
              target: '#pen-watching',
            },
            byStateA('openPen', '#pen-watching'),
          ],
          on: { button: byReset('openPen', '#pen-watching') },
        },
      },
    },
  },
});
