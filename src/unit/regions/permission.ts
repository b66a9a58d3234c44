/** Whether this session may be offered anything: withheld, authorised, or in its random delay. */
import { not } from 'xstate';
import { inLevel, vehicle } from './conditions.ts';
import { unitSetup } from './setup.ts';

export const permission = unitSetup.createStateConfig({
  initial: 'idle',
  states: {
    idle: {
      always: { guard: vehicle, target: 'asked' },
      exit: 'new session',
    },
    asked: {
      always: [
        { guard: 'permission withheld', target: 'held' },
        { guard: 'permission needed', target: 'notAuthorised' },
        { target: 'offHours' },
      ],
    },
    held: { always: { guard: inLevel('A'), target: 'idle' } },
    notAuthorised: {
      always: { guard: inLevel('A'), target: 'idle' },
      on: { button: { guard: { type: 'pressed', params: { button: 'authorise' } }, target: 'offHours' } },
    },
    // SI 2021/1467 reg. 10: outside its default hours, unless overridden.
    offHours: {
      always: [
        { guard: inLevel('A'), target: 'idle' },
        { guard: not('off hours'), target: 'delayed' },
      ],
      on: {
        button: { guard: { type: 'pressed', params: { button: 'override-delay' } }, target: 'allowed' },
      },
    },
    // SI 2021/1467 reg. 11: each time supply would start, unless overridden.
    delayed: {
      always: [
        { guard: inLevel('A'), target: 'idle' },
        { guard: 'no delay', target: 'allowed' },
      ],
      on: {
        button: { guard: { type: 'pressed', params: { button: 'override-delay' } }, target: 'allowed' },
      },
      after: { 'random delay': 'allowed' },
    },
    // A return from C to B keeps it (IEC 61851-1:2017 A.3); only an unplugging ends the session.
    allowed: { id: 'permitted', always: { guard: inLevel('A'), target: 'idle' } },
  },
});
