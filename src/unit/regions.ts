/**
 * The regions of the control logic that run side by side while the unit runs, as state configurations, with the
 * guards and delays they name. One region, `sensing`, takes in what is sensed; the others look at it in the next
 * microstep, so that all see the same instant. Assembled into a machine in unitChart.ts.
 */
import { and, assign, not, or, setup, stateIn } from 'xstate';
import type { Seconds } from '../laws/quantities.ts';
import type { LatchReason, UnitDesign } from './design.ts';
import { offeredCurrent } from './offer.ts';
import type { PilotBand, Sensed, UnitEvent } from './sensed.ts';
import { PILOT_BANDS } from './sensed.ts';

export interface UnitContext {
  readonly design: UnitDesign;
  readonly sensed: Sensed;
  /** The band that the debounce is waiting to accept. */
  readonly candidate: PilotBand;
  /** Sessions since the unit was made: each draws its own random delay. */
  readonly session: number;
}

const ms = (s: Seconds): number => s * 1000;

/** How long the control waits for the linked contact to follow the coil before it calls the contactor failed. A design choice. */
const CONTACTOR_PATIENCE: Seconds = 0.5;
/** Settling allowed for a contactor that nobody watches. A design choice. */
const CONTACTOR_UNWATCHED: Seconds = 0.06;
/** A wrong low half must last this long before it latches. A design choice, far below the 3 s of IEC 61851-1:2017 Table A.6. */
const DIODE_PATIENCE: Seconds = 0.1;
/** IEC 61851-1:2017 Table A.6 sequence 9.2: at least 3 s between the end of an oscillation and the next. */
const RESTART_PAUSE: Seconds = 3;
/** The lock motor's time limit. A design choice. */
const LOCK_PATIENCE: Seconds = 2;

const inLevel = (...bands: readonly PilotBand[]) => or(bands.map((band) => stateIn(`#level-${band}`)));

/** What commandsOf looks for in the states. */
export type UnitTag =
  | 'coil driven'
  | 'charging'
  | 'oscillating'
  | 'lock driven'
  | 'not available'
  | 'fault'
  | 'residual tripped'
  | 'direct tripped'
  | 'vehicle'
  | 'asking';

export const unitSetup = setup({
  types: {
    context: {} as UnitContext,
    events: {} as UnitEvent,
    input: {} as { design: UnitDesign },
    tags: {} as UnitTag,
  },
  actions: {
    'take in': assign({
      sensed: ({ context, event }) => (event.type === 'sensed' ? event.sensed : context.sensed),
    }),
  },
  guards: {
    'power comes': ({ event }) => event.type === 'power' && event.on,
    'power goes': ({ event }) => event.type === 'power' && !event.on,
    'sees band': ({ context }, { band }: { band: PilotBand }) => context.sensed.pilot === band,
    'candidate is': ({ context }, { band }: { band: PilotBand }) => context.candidate === band,
    'candidate changed': ({ context }) => context.sensed.pilot !== context.candidate,
    'supply within': ({ context }) => context.sensed.supply === 'within',
    'line missing': ({ context }) => context.sensed.missing.length > 0,
    'has socket': ({ context }) => context.design.sheet.outlet === 'socket',
    'plug held': ({ context }) => context.sensed.plug === 'held',
    'holds in B': ({ context }) => context.design.sheet.holdInB,
    'has something to offer': ({ context }) =>
      offeredCurrent(context.design.sheet, context.sensed.proximity) > 0,
    'permission needed': ({ context }) => context.design.sheet.permission === 'authorise',
    'permission withheld': ({ context }) => context.design.sheet.permission === 'held',
    'no delay': ({ context }) => context.design.sheet.startDelay === 0,
    pressed: ({ event }, { button }: { button: string }) =>
      event.type === 'button' && event.button === button,
    'has ventilation': ({ context }) => context.design.sheet.ventilation,
    'contactor watched': ({ context }) => context.design.weldCheck === 'linked-contact',
    'linked contact closed': ({ context }) => context.sensed.linkedContact === 'closed',
    'low half wrong': ({ context }) =>
      context.design.diodeRule === 'checked' &&
      ['B', 'C', 'D'].includes(context.sensed.pilot) &&
      context.sensed.lowHalf === 'wrong',
    'diode always watched': ({ context }) => context.design.sheet.diodeCheck === 'always',
    'clears by': ({ context }, { reason, by }: { reason: LatchReason; by: string }) =>
      context.design.sheet.clearsBy[reason] === by,
  },
  delays: {
    'start-up': ({ context }) => ms(context.design.sheet.startUp),
    debounce: ({ context }) => ms(context.design.timing.debounce),
    'random delay': ({ context }) =>
      ms(Math.round(context.design.sheet.startDelay * context.design.delayShare(context.session))),
    'before closing': ({ context }) => ms(context.design.timing.beforeClosing),
    'contactor patience': ms(CONTACTOR_PATIENCE),
    'contactor unwatched': ms(CONTACTOR_UNWATCHED),
    'diode patience': ms(DIODE_PATIENCE),
    'restart pause': ms(RESTART_PAUSE),
    'lock patience': ms(LOCK_PATIENCE),
  },
});

const vehicle = inLevel('B', 'C', 'D');
const allClear = and([stateIn('#clear'), stateIn('#residual-ready'), stateIn('#direct-ready')]);
const mayOffer = and([
  vehicle,
  allClear,
  stateIn('#permitted'),
  stateIn('#supply-within'),
  'has something to offer',
]);
/** The vehicle asks (C, or D where ventilation is declared) and nothing stands against it: IEC 61851-1:2017 Table A.6 sequence 4, 6.3.1.4. */
const maySupply = and([
  or([inLevel('C'), and([inLevel('D'), 'has ventilation'])]),
  allClear,
  stateIn('#oscillating'),
  stateIn('#supply-within'),
  or([not('has socket'), 'plug held']),
]);

const sensing = unitSetup.createStateConfig({
  on: {
    sensed: { actions: 'take in' },
  },
});

const supply = unitSetup.createStateConfig({
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

const LEVEL_TAGS: Partial<Record<PilotBand, UnitTag[]>> = {
  B: ['vehicle'],
  C: ['vehicle', 'asking'],
  D: ['vehicle', 'asking'],
};

/** A band is accepted once it has stood for the debounce; a new candidate starts it afresh, a repeated one does not. */
const levelState = (band: PilotBand) =>
  unitSetup.createStateConfig({
    id: `level-${band}`,
    tags: LEVEL_TAGS[band] ?? [],
    initial: 'held',
    states: {
      held: { always: { guard: not({ type: 'sees band', params: { band } }), target: 'leaving' } },
      leaving: {
        entry: assign({ candidate: ({ context }) => context.sensed.pilot }),
        always: [
          { guard: { type: 'sees band', params: { band } }, target: 'held' },
          { guard: 'candidate changed', target: 'leaving', reenter: true },
        ],
        after: {
          debounce: PILOT_BANDS.filter((next) => next !== band).map((next) => ({
            guard: { type: 'candidate is' as const, params: { band: next } },
            target: `#level-${next}`,
          })),
        },
      },
    },
  });

const level = unitSetup.createStateConfig({
  initial: 'A',
  states: Object.fromEntries(PILOT_BANDS.map((band) => [band, levelState(band)])),
});

const permission = unitSetup.createStateConfig({
  initial: 'idle',
  states: {
    idle: {
      always: { guard: vehicle, target: 'asked' },
      exit: assign({ session: ({ context }) => context.session + 1 }),
    },
    asked: {
      always: [
        { guard: 'permission withheld', target: 'held' },
        { guard: 'permission needed', target: 'notAuthorised' },
        { target: 'delayed' },
      ],
    },
    held: { always: { guard: inLevel('A'), target: 'idle' } },
    notAuthorised: {
      always: { guard: inLevel('A'), target: 'idle' },
      on: { button: { guard: { type: 'pressed', params: { button: 'authorise' } }, target: 'delayed' } },
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

const oscillation = unitSetup.createStateConfig({
  initial: 'off',
  states: {
    off: { always: { guard: mayOffer, target: 'on' } },
    on: {
      id: 'oscillating',
      tags: 'oscillating',
      always: [
        { guard: and([not(mayOffer), inLevel('A')]), target: 'off' },
        { guard: not(mayOffer), target: 'pausing' },
      ],
    },
    pausing: {
      always: { guard: inLevel('A'), target: 'off' },
      after: { 'restart pause': 'off' },
    },
  },
});

const wantsHold = and([
  'has socket',
  allClear,
  or([and([vehicle, 'holds in B']), and([inLevel('C', 'D'), stateIn('#permitted')])]),
]);

const retention = unitSetup.createStateConfig({
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
    // Never let go while a pole may be closed: IEC 61851-1:2017 6.3.2.
    held: {
      tags: 'lock driven',
      always: { guard: and([or([inLevel('A'), not(allClear)]), stateIn('#contactor-open')]), target: 'free' },
    },
    jammed: { always: { guard: inLevel('A'), target: 'free' } },
  },
});

const contactor = unitSetup.createStateConfig({
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
      always: { guard: not(maySupply), target: 'opening' },
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

/** The three ways in which a latched reason may end by itself or by hand; a return of supply leaves `powered` altogether. */
const byReset = (reason: LatchReason, target: string) => ({
  guard: and([
    { type: 'clears by', params: { reason, by: 'reset' } } as const,
    { type: 'pressed', params: { button: 'reset' } } as const,
  ]),
  target,
});
const byStateA = (reason: LatchReason, target: string) => ({
  guard: and([{ type: 'clears by', params: { reason, by: 'state-A' } } as const, inLevel('A')]),
  target,
});
const bySelf = (reason: LatchReason, cause: ReturnType<typeof inLevel>, target: string) => ({
  guard: and([{ type: 'clears by', params: { reason, by: 'self' } } as const, not(cause)]),
  target,
});

/** After a residual or d.c. trip nothing closes by itself (IEC 61851-1:2017 clause 14, UK note). */
const trip = (reason: 'residual' | 'direct') =>
  unitSetup.createStateConfig({
    initial: 'ready',
    states: {
      ready: { id: `${reason}-ready`, on: { [`${reason} trip`]: 'tripped' } },
      tripped: {
        tags: `${reason} tripped`,
        always: byStateA(reason, 'ready'),
        on: { button: byReset(reason, 'ready') },
      },
    },
  });

const badPilot = inLevel('E', 'invalid');
const contactorFailed = or([stateIn('#failed-to-open'), stateIn('#failed-to-close')]);
/** A unit that checks only before closing looks when the vehicle asks; one that always checks looks in B too, and goes on. */
const diodeSuspect = and([
  'low half wrong',
  or(['diode always watched', and([inLevel('C', 'D'), not(stateIn('#contactor-closed'))])]),
]);

const supervision = unitSetup.createStateConfig({
  initial: 'clear',
  states: {
    clear: {
      id: 'clear',
      initial: 'quiet',
      always: [
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
          always: [byStateA('E', '#clear'), bySelf('E', badPilot, '#clear')],
          on: { button: byReset('E', '#clear') },
        },
        diode: {
          id: 'latched-diode',
          always: [byStateA('diode', '#clear'), bySelf('diode', vehicle, '#clear')],
          on: { button: byReset('diode', '#clear') },
        },
        F: {
          tags: 'not available',
          always: bySelf('F', contactorFailed, '#clear'),
          on: { button: byReset('F', '#clear') },
        },
      },
    },
  },
});

export const regions = {
  sensing,
  supply,
  level,
  permission,
  oscillation,
  retention,
  contactor,
  residual: trip('residual'),
  direct: trip('direct'),
  supervision,
};
