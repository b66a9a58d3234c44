/**
 * What every region of the control logic shares: context, events, tags, guards by name, and timers. A guard
 * looks at what was sensed before; one region takes new values in, the others see them in the next microstep.
 */
import { assign, setup } from 'xstate';
import type { Amps } from '../../laws/quantities.ts';
import type { AskedDesign, AskedSheet } from '../asked.ts';
import type { LatchReason } from '../design.ts';
import { offeredCurrent } from '../offer.ts';
import type { PilotBand, Sensed, UnitEvent } from '../sensed.ts';
import { DELAYS } from '../timers.ts';

export interface UnitContext {
  readonly design: AskedDesign;
  readonly sensed: Sensed;
  /** The band that the debounce is waiting to accept. */
  readonly candidate: PilotBand;
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
const outlasts = ({ clearsBy }: AskedSheet, reason: LatchReason): boolean =>
  clearsBy[reason] === 'reset' || (clearsBy[reason] === 'state-A' && reason !== 'F');

/** The line that feeds the electronics (parts.ts). */
const ELECTRONICS = 'L1';

/** What commandsOf looks for in the states. */
export type UnitTag =
  | 'unpowered'
  | 'starting'
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
    input: {} as { design: AskedDesign },
    tags: {} as UnitTag,
  },
  actions: {
    /** For whoever runs the chart: sessions are counted there, since each is like the others to the logic. */
    'new session': () => {},
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
    'begin session': assign({ overridden: false, authorised: false }),
    /** The same: a later random delay of the session draws its own share. */
    'delay again': () => {},
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
  delays: DELAYS,
});
