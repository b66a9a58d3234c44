/**
 * A stop by hand. A normal one withdraws the offer and lets the vehicle go first; an emergency one opens at once and
 * stays until it is reset (BS 7671 722.537.2.201, 537.3.3).
 */
import { inLevel } from './conditions.ts';
import { unitSetup } from './setup.ts';

const pressed = (button: 'stop' | 'emergency' | 'reset') =>
  ({ type: 'pressed', params: { button } }) as const;

export const stopping = unitSetup.createStateConfig({
  initial: 'none',
  states: {
    none: {
      id: 'not-stopped',
      on: {
        button: [
          { guard: pressed('emergency'), target: 'emergency' },
          { guard: pressed('stop'), target: 'stopped' },
        ],
      },
    },
    // The session is over: a new one begins with a new plugging in.
    stopped: {
      tags: 'stopped',
      always: { guard: inLevel('A'), target: 'none' },
      on: { button: { guard: pressed('emergency'), target: 'emergency' } },
    },
    emergency: {
      id: 'emergency',
      tags: 'stopped',
      on: { button: { guard: pressed('reset'), target: 'none' } },
    },
  },
});
