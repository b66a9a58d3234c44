/** Whether this session may be offered anything: withheld, authorised, outside its hours, or in a random delay. */
import { and, not, stateIn } from 'xstate';
import { inLevel, vehicle } from './conditions.ts';
import { unitSetup } from './setup.ts';

const pressed = (button: 'authorise' | 'override-delay') =>
  ({ type: 'pressed', params: { button } }) as const;

const gone = { guard: inLevel('A'), target: '#no-session' } as const;

/** Reason to wait taken away, for as long as the vehicle stays. */
const overriding = { guard: pressed('override-delay'), target: '#permitted', actions: 'override' } as const;

/** Without the wish to be supplied there is nothing that ends. */
const asking = inLevel('C', 'D');

export const permission = unitSetup.createStateConfig({
  initial: 'idle',
  states: {
    idle: {
      id: 'no-session',
      always: { guard: vehicle, target: 'asked' },
      on: {
        button: { guard: and([pressed('authorise'), 'may authorise before']), actions: 'authorise' },
      },
      exit: 'new session',
    },
    asked: {
      always: [
        { guard: 'permission withheld', target: 'held' },
        { guard: 'permission needed', target: 'notAuthorised' },
        { target: 'offHours' },
      ],
      exit: 'begin session',
    },
    held: { always: gone },
    notAuthorised: {
      always: gone,
      on: { button: { guard: pressed('authorise'), target: 'offHours' } },
    },
    // SI 2021/1467 reg. 10: outside its default hours, unless overridden.
    offHours: {
      id: 'off-hours',
      always: [gone, { guard: not('off hours'), target: 'delayed' }],
      on: { button: overriding },
    },
    // SI 2021/1467 reg. 11: each time supply would start, unless overridden.
    delayed: {
      id: 'delayed',
      always: [gone, { guard: 'off hours', target: 'offHours' }, { guard: 'no delay', target: 'allowed' }],
      on: { button: overriding },
      after: { 'random delay': 'allowed' },
    },
    // A return from C to B keeps it (IEC 61851-1:2017 A.3); only an unplugging ends the session.
    allowed: {
      id: 'permitted',
      initial: 'before',
      always: gone,
      on: { button: { guard: pressed('override-delay'), actions: 'override' } },
      states: {
        before: {
          always: [
            { guard: 'off hours', target: '#off-hours', actions: 'delay again' },
            { guard: stateIn('#contactor-closed'), target: 'supplied' },
          ],
        },
        // A charge that runs into the peak pauses, at once or after a delay as the sheet says.
        supplied: {
          always: [
            { guard: and(['off hours', 'ends with a delay']), target: 'ending', actions: 'delay again' },
            { guard: 'off hours', target: '#off-hours', actions: 'delay again' },
            { guard: inLevel('B'), target: 'paused' },
          ],
        },
        ending: {
          always: [
            { guard: not(asking), target: '#off-hours', actions: 'delay again' },
            { guard: not('off hours'), target: 'supplied' },
          ],
          after: { 'random delay': { target: '#off-hours', actions: 'delay again' } },
        },
        // Asked again, supply would start again: the delay is due anew.
        paused: {
          always: [
            { guard: 'off hours', target: '#off-hours', actions: 'delay again' },
            { guard: and([asking, 'delays again']), target: '#delayed', actions: 'delay again' },
            { guard: asking, target: 'before' },
          ],
        },
      },
    },
  },
});
