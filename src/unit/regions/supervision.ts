/** Faults that latch: a pilot that proves no PE, a vehicle without its diode, a contactor that fails. */
import { and, not, or, stateIn } from 'xstate';
import { byReset, bySelf, byStateA, keep, wasKept } from './clearing.ts';
import { inLevel, vehicle } from './conditions.ts';
import { unitSetup } from './setup.ts';

const badPilot = inLevel('E', 'invalid');

const contactorFailed = or([stateIn('#failed-to-open'), stateIn('#failed-to-close')]);

/** A unit that checks only before closing looks when the vehicle asks; one that always checks looks in B too, and goes on. */
const diodeSuspect = and([
  'low half wrong',
  stateIn('#oscillating'),
  or(['diode always watched', and([inLevel('C', 'D'), not(stateIn('#contactor-closed'))])]),
]);

export const supervision = unitSetup.createStateConfig({
  initial: 'clear',
  states: {
    clear: {
      id: 'clear',
      initial: 'quiet',
      always: [
        ...(['E', 'diode', 'F'] as const).map((reason) => ({
          guard: wasKept(reason),
          target: `latched.${reason}`,
        })),
        { guard: badPilot, target: 'latched.E' },
        { guard: contactorFailed, target: 'latched.F' },
      ],
      states: {
        quiet: { always: { guard: diodeSuspect, target: 'suspicious' } },
        suspicious: {
          always: { guard: not(diodeSuspect), target: 'quiet' },
          after: { 'diode patience': '#latched-diode' },
        },
      },
    },
    latched: {
      tags: 'fault',
      initial: 'E',
      states: {
        E: {
          entry: keep('E'),
          always: [byStateA('E', '#clear'), bySelf('E', badPilot, '#clear')],
          on: { button: byReset('E', '#clear') },
        },
        diode: {
          id: 'latched-diode',
          entry: keep('diode'),
          always: [byStateA('diode', '#clear'), bySelf('diode', vehicle, '#clear')],
          on: { button: byReset('diode', '#clear') },
        },
        F: {
          tags: 'not available',
          entry: keep('F'),
          initial: 'shown',
          states: {
            shown: { after: { 'least F': 'over' } },
            over: {
              always: bySelf('F', contactorFailed, '#clear'),
              on: { button: byReset('F', '#clear') },
            },
          },
        },
      },
    },
  },
});
