/** Whether the supply terminals have what the unit works from. */
import { not } from 'xstate';
import { unitSetup } from './setup.ts';

export const supply = unitSetup.createStateConfig({
  initial: 'within',
  states: {
    within: {
      id: 'supply-within',
      always: [
        { guard: 'line missing', target: 'missing' },
        { guard: not('supply within'), target: 'outside' },
      ],
    },
    outside: { always: { guard: 'supply within', target: 'within' } },
    missing: { always: { guard: not('line missing'), target: 'within' } },
  },
});
