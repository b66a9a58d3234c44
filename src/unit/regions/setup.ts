/**
 * What every region of the control logic shares: context, events, tags, and the guards and delays by name. A guard
 * looks at what was sensed before; one region takes new values in, the others see them in the next microstep.
 */
import { assign, setup } from 'xstate';
import type { Amps, Seconds } from '../../laws/quantities.ts';
import { GREATEST_VEHICLE_FOLLOW, LEAST_STATE_F } from '../../laws/timing.ts';
import type { LatchReason, UnitDesign, UnitSheet } from '../design.ts';
import { offeredCurrent } from '../offer.ts';
import type { PilotBand, Sensed, UnitEvent } from '../sensed.ts';

export interface UnitContext {
  readonly design: UnitDesign;
  readonly sensed: Sensed;
  /** The band that the debounce is waiting to accept. */
  readonly candidate: PilotBand;
  /** Sessions since the unit was made: each draws its own random delay. */
  readonly session: number;
  /** Random delays of this session after its first. */
  readonly again: number;
  /** Authorised before a vehicle came, where the sheet lets that count. */
  readonly authorised: boolean;
  /** Hours and delays were taken away for this session. */
  readonly overridden: boolean;
  /** What has latched and is still known when the supply comes back. */
  readonly kept: readonly LatchReason[];
  /** The load limit that is being followed. */
  readonly limit: Amps | null;
}

/**
 * What has latched outlasts a loss of supply, unless the sheet says that a return of supply clears it, or that it clears
 * by itself (BS 7671 722.411.4.1, IEC 61851-1:2017 clause 14, UK note: nothing closes again unasked). The pilot of a
 * contactor that failed shows no vehicle's going: there only the reset waits.
 */
const outlasts = ({ clearsBy }: UnitSheet, reason: LatchReason): boolean =>
  clearsBy[reason] === 'reset' || (clearsBy[reason] === 'state-A' && reason !== 'F');

const ms = (s: Seconds): number => s * 1000;

/** How long the control waits for the linked contact to follow the coil before it calls the contactor failed. A design choice. */
const CONTACTOR_PATIENCE: Seconds = 0.5;

/** Settling allowed for a contactor that nobody watches. A design choice. */
const CONTACTOR_UNWATCHED: Seconds = 0.06;

/** A wrong low half must last this long before it latches. A design choice, far below the 3 s of IEC 61851-1:2017 Table A.6. */
const DIODE_PATIENCE: Seconds = 0.1;

/** The lock motor's time limit. A design choice. */
const LOCK_PATIENCE: Seconds = 2;

/** The line that feeds the electronics (parts.ts). */
const ELECTRONICS = 'L1';

/** Longer than any verification, s: a timer that nothing waits for. A design choice. */
const NEVER: Seconds = 1_000_000;

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
  | 'asking'
  | 'stopped'
  | 'earth opened'
  | 'earth left';

export const unitSetup = setup({
  types: {
    context: {} as UnitContext,
    events: {} as UnitEvent,
    input: {} as { design: UnitDesign },
    tags: {} as UnitTag,
  },
  actions: {
    'take limit': assign({ limit: ({ context }) => context.sensed.limit }),
    keep: assign(({ context }, { reason }: { reason: LatchReason }) =>
      context.design.latchMemory === 'lost' ||
      context.kept.includes(reason) ||
      !outlasts(context.design.sheet, reason)
        ? {}
        : { kept: [...context.kept, reason] },
    ),
    forget: assign(({ context }, { reason }: { reason: LatchReason }) => ({
      kept: context.kept.filter((other) => other !== reason),
    })),
    'forget by reset': assign(({ context }) => ({
      kept: context.kept.filter((reason) => context.design.sheet.clearsBy[reason] !== 'reset'),
    })),
    authorise: assign({ authorised: true }),
    'forget authorisation': assign({ authorised: false }),
    override: assign({ overridden: true }),
    'begin session': assign(({ context }) => ({
      session: context.session + 1,
      again: 0,
      overridden: false,
      authorised: false,
    })),
    'delay again': assign(({ context }) => ({ again: context.again + 1 })),
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
    'line missing': ({ context }) =>
      context.sensed.missing.some(
        (line) => line === ELECTRONICS || context.design.sheet.lostLine === 'stops',
      ),
    'has socket': ({ context }) => context.design.sheet.outlet === 'socket',
    'plug held': ({ context }) => context.sensed.plug === 'held',
    'holds in B': ({ context }) => context.design.sheet.holdInB,
    'cable coded': ({ context }) => typeof context.sensed.proximity === 'number',
    'draws over its code': ({ context }) =>
      context.sensed.overCode && context.design.overCodeRule === 'acted on',
    kept: ({ context }, { reason }: { reason: LatchReason }) => context.kept.includes(reason),
    'has something to offer': ({ context }) =>
      offeredCurrent(context.design.sheet, context.sensed.proximity, context.limit) > 0,
    'permission needed': ({ context }) =>
      context.design.sheet.permission === 'authorise' && !context.authorised,
    'may authorise before': ({ context }) => context.design.sheet.authoriseBefore,
    'permission withheld': ({ context }) => context.design.sheet.permission === 'held',
    'off hours': ({ context }) =>
      context.design.sheet.schedule !== null && context.sensed.peak && !context.overridden,
    'ends with a delay': ({ context }) => context.design.sheet.hoursEnd === 'delayed',
    'delays again': ({ context }) => context.design.sheet.startDelay > 0 && !context.overridden,
    'limit changed': ({ context }) => context.sensed.limit !== context.limit,
    'PEN outside': ({ context }) => context.sensed.pen === 'outside',
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
    'trip opens nothing': ({ context }) => !context.design.tripOpens,
    'closes after trip': ({ context }) => context.design.closesAfterTrip !== null,
    'clears by': ({ context }, { reason, by }: { reason: LatchReason; by: string }) =>
      context.design.sheet.clearsBy[reason] === by,
  },
  delays: {
    'start-up': ({ context }) => ms(context.design.sheet.startUp),
    debounce: ({ context }) => ms(context.design.timing.debounce),
    'random delay': ({ context }) =>
      ms(
        Math.round(
          context.design.sheet.startDelay * context.design.delayShare(context.session, context.again),
        ),
      ),
    'over-code time': ({ context }) => ms(context.design.sheet.overCode.seconds),
    'before closing': ({ context }) => ms(context.design.timing.beforeClosing),
    'contactor patience': ms(CONTACTOR_PATIENCE),
    'contactor unwatched': ms(CONTACTOR_UNWATCHED),
    'diode patience': ms(DIODE_PATIENCE),
    // IEC 61851-1:2017 Table A.6 sequence 9.2.
    'restart pause': ({ context }) => ms(context.design.timing.pause),
    'lock patience': ms(LOCK_PATIENCE),
    'open-PEN time': ({ context }) => ms(context.design.timing.openPen),
    'before closing after trip': ({ context }) => ms(context.design.closesAfterTrip ?? NEVER),
    'limit time': ({ context }) => ms(context.design.timing.limit),
    'least F': ms(LEAST_STATE_F),
    'vehicle follows': ms(GREATEST_VEHICLE_FOLLOW),
    'stop patience': ({ context }) => ms(context.design.timing.stop),
  },
});
