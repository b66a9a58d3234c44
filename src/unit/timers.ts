/**
 * How long each of the chart's timers runs on one unit. The chart has but their names, as its delays: it asks for no
 * time, so that two units that differ in their times alone have one chart.
 */
import type { Seconds } from '../laws/quantities.ts';
import { GREATEST_VEHICLE_FOLLOW, LEAST_STATE_F } from '../laws/timing.ts';
import type { UnitDesign } from './design.ts';

/** How long the control waits for the linked contact to follow the coil before it calls the contactor failed. A design choice. */
const CONTACTOR_PATIENCE: Seconds = 0.5;

/** Settling allowed for a contactor that nobody watches. A design choice. */
const CONTACTOR_UNWATCHED: Seconds = 0.06;

/** A wrong low half must last this long before it latches. A design choice, far below the 3 s of IEC 61851-1:2017 Table A.6. */
const DIODE_PATIENCE: Seconds = 0.1;

/** The lock motor's time limit. A design choice. */
const LOCK_PATIENCE: Seconds = 2;

/** Longer than any verification, s: a timer that nothing waits for. A design choice. */
const NEVER: Seconds = 1_000_000;

/**
 * By name, s; `session`: sessions since the unit was made, each of which draws its own random delay; `again`: later
 * starts and ends in the session, which draw theirs.
 */
export const TIMERS = {
  'start-up': ({ sheet }) => sheet.startUp,
  debounce: ({ timing }) => timing.debounce,
  'random delay': ({ sheet, delayShare }, session, again) =>
    Math.round(sheet.startDelay * delayShare(session, again)),
  'over-code time': ({ sheet }) => sheet.overCode.seconds,
  'before closing': ({ timing }) => timing.beforeClosing,
  'contactor patience': () => CONTACTOR_PATIENCE,
  'contactor unwatched': () => CONTACTOR_UNWATCHED,
  'diode patience': () => DIODE_PATIENCE,
  // IEC 61851-1:2017 Table A.6 sequence 9.2.
  'restart pause': ({ timing }) => timing.pause,
  'lock patience': () => LOCK_PATIENCE,
  'open-PEN time': ({ timing }) => timing.openPen,
  'before closing after trip': ({ closesAfterTrip }) => closesAfterTrip ?? NEVER,
  'limit time': ({ timing }) => timing.limit,
  'least F': () => LEAST_STATE_F,
  'vehicle follows': () => GREATEST_VEHICLE_FOLLOW,
  'stop patience': ({ timing }) => timing.stop,
} as const satisfies Record<string, (design: UnitDesign, session: number, again: number) => Seconds>;

export type TimerName = keyof typeof TIMERS;

/** The chart's delays: names alone, since how long each is, whoever runs the chart knows. */
export const DELAYS = Object.fromEntries(Object.keys(TIMERS).map((name) => [name, 0])) as Readonly<
  Record<TimerName, number>
>;
