/**
 * One charge point's design: the maker's sheet, which the trainee may read, and the hidden details that make two
 * sound units differ a little (pick-ups, delays, levels). A fault changes the hidden details or a rule, never the
 * sheet; a not-fault changes the sheet before the rest is drawn.
 */
import type { Live } from '../laws/conductors.ts';
import { LIVES } from '../laws/conductors.ts';
import type { CableCoding } from '../laws/proximity.ts';
import type {
  Amps,
  Duty,
  Hertz,
  Metres,
  Ohms,
  Seconds,
  SquareMillimetres,
  Volts,
} from '../laws/quantities.ts';
import type { DeviceType } from '../laws/residualLimits.ts';
import { LEAST_OSCILLATION_PAUSE } from '../laws/timing.ts';

export const OUTLETS = ['tethered', 'socket'] as const;
export type Outlet = (typeof OUTLETS)[number];
export const OPEN_PEN_KINDS = ['none', 'voltage-window', 'earth-sensing', 'other'] as const;
export type OpenPenKind = (typeof OPEN_PEN_KINDS)[number];
export const PERMISSIONS = ['open', 'authorise', 'held'] as const;
export type Permission = (typeof PERMISSIONS)[number];
export const DIODE_CHECKS = ['before-closing', 'always'] as const;
export type DiodeCheck = (typeof DIODE_CHECKS)[number];
/** What a latched reason waits for: no vehicle, the reset button, a return of supply, or nothing but its cause gone. */
export const CLEARINGS = ['state-A', 'reset', 'supply', 'self'] as const;
export type Clearing = (typeof CLEARINGS)[number];
/** What a unit on three phases does when a line is lost that does not feed its electronics. */
export const LOST_LINES = ['stops', 'goes-on'] as const;
export type LostLine = (typeof LOST_LINES)[number];
/** Where the PE pole of an open-PEN measure stands without power: held where it was, or opened by its spring. */
export const UNPOWERED_POLES = ['closed', 'open'] as const;
export type UnpoweredPole = (typeof UNPOWERED_POLES)[number];
/** How a charge ends that runs into the peak: at once, or after a random delay as at its beginning. */
export const HOURS_ENDS = ['at-once', 'delayed'] as const;
export type HoursEnd = (typeof HOURS_ENDS)[number];
export const SCHEDULES = ['default-hours'] as const;
export type Schedule = (typeof SCHEDULES)[number];
export const LATCH_REASONS = ['E', 'F', 'diode', 'residual', 'direct', 'openPen'] as const;
export type LatchReason = (typeof LATCH_REASONS)[number];

export interface CodedCable {
  readonly length: Metres;
  readonly area: SquareMillimetres;
  readonly coding: CableCoding;
}

/** How a socket-outlet cuts off a vehicle that draws more than its cable is coded for (IEC 61851-1:2017 Annex B names neither). */
export interface OverCode {
  /** What may be drawn above the coding, as a share of it. */
  readonly margin: number;
  /** How long more than that may last, s. */
  readonly seconds: Seconds;
}

/** Usual, common practice, no source: 10 % for seconds. */
export const OVER_CODE: OverCode = { margin: 0.1, seconds: 5 };

export interface ResidualProtection {
  /** The a.c. device inside the unit, or null where it stands upstream. */
  readonly type: DeviceType | null;
  readonly rated: Amps | null;
  /** What it opens: the unit's own breaker (the unit goes dark) or the contactor. */
  readonly by: 'breaker' | 'contactor' | null;
  /** The smooth-d.c. detector (IEC 62955): with its own contacts and a.c. device, or monitoring only, or none. */
  readonly direct: 'protective' | 'monitoring' | null;
}

/** The maker's extract: shown to the trainee in every scenario. */
export interface UnitSheet {
  readonly outlet: Outlet;
  readonly ratedCurrent: Amps;
  readonly setCurrent: Amps;
  /** The tether, or the customer's cable that is at hand for a socket-outlet. */
  readonly cable: CodedCable;
  readonly residual: ResidualProtection;
  readonly openPen: OpenPenKind;
  /** Whether the measure rides out what is over within 4 s, which it may and need not (BS 7671 722.411.4.1). */
  readonly openPenRidesOut: boolean;
  readonly openPenUnpowered: UnpoweredPole;
  readonly surgeArrester: boolean;
  readonly ventilation: boolean;
  readonly insulationTestVoltageMax: Volts;
  readonly startUp: Seconds;
  /** Longest random delay before an offer, s. */
  readonly startDelay: Seconds;
  readonly permission: Permission;
  /** Whether an authorisation given before plugging in counts for the next vehicle. */
  readonly authoriseBefore: boolean;
  readonly loadLimit: Amps | null;
  /** What the service may carry, A per line: the unit measures it and offers what is left. Null: no sensor of its own. */
  readonly serviceLimit: Amps | null;
  /** Least supply voltage at its terminals for which the maker declares it; null: not stated. */
  readonly leastVoltage: Volts | null;
  /** Default charging hours of SI 2021/1467 reg. 10, or none. */
  readonly schedule: Schedule | null;
  readonly hoursEnd: HoursEnd;
  readonly overCode: OverCode;
  readonly holdInB: boolean;
  readonly diodeCheck: DiodeCheck;
  readonly poleBleed: Ohms | null;
  readonly lostLine: LostLine;
  readonly clearsBy: Readonly<Record<LatchReason, Clearing>>;
}

/** Whether the outlet's protective conductor reads open with the supply off, and rightly so. */
export const opensEarthUnpowered = ({
  openPen,
  openPenUnpowered,
}: Pick<UnitSheet, 'openPen' | 'openPenUnpowered'>): boolean =>
  openPen !== 'none' && openPenUnpowered === 'open';

export interface PoleDesign {
  readonly welded: boolean;
  /** The pole stays open whatever the coil does. */
  readonly stuckOpen?: boolean;
}

export interface UnitDesign {
  readonly sheet: UnitSheet;
  readonly pilot: { readonly positive: Volts; readonly negative: Volts; readonly frequency: Hertz };
  /** Boundaries between A/B, B/C, C/D, D/E, E/invalid and invalid/F, V, inside the bands that Table A.4 leaves to the designer. */
  readonly thresholds: readonly [Volts, Volts, Volts, Volts, Volts, Volts];
  readonly poles: Readonly<Record<Live, PoleDesign>>;
  /** Of every so many openings one, which the seed draws, comes later by this; null: none does. */
  readonly sticks: { readonly oneIn: number; readonly seconds: Seconds } | null;
  /** How the control knows that no pole has stayed closed: a contact linked to every pole, or not at all. */
  readonly weldCheck: 'linked-contact' | 'none';
  /** Whether a wrong low half is ever looked at. */
  readonly diodeRule: 'checked' | 'ignored';
  /** Whether a pilot near 0 V is taken for the short that it is, or for a request. */
  readonly shortRule: 'acted on' | 'ignored';
  /** What the duty comes out too high (or, below 0, too low) by, share of a period. */
  readonly dutyError: Duty;
  /** Whether a socket-outlet goes by the cable's coding, or takes any cable, and none, for as good as itself. */
  readonly codingRule: 'read' | 'ignored';
  /** Whether a vehicle that draws more than its cable is coded for is cut off, or goes on. */
  readonly overCodeRule: 'acted on' | 'ignored';
  /** The lock of a socket-outlet: what its motor can do, and whether its feedback tells the truth. */
  readonly lock: {
    readonly engages: boolean;
    readonly releases: boolean;
    readonly feedback: 'true' | 'always held';
  };
  /**
   * The sensor of the service's current: round the incoming line the right way, the other way, round the unit's own
   * circuit, or round the tail of this board alone, past where the next point's part from it.
   */
  readonly serviceSensor: 'right' | 'reversed' | 'own circuit' | 'past parting';
  /** How much higher than the sheet says the limit of the service is set in the unit, A. */
  readonly serviceLimitOver: Amps;
  /** Which lines it watches for loss: every one, or the one that feeds its electronics alone. */
  readonly watchedLines: 'all' | 'own';
  /** The open-PEN measure: whether it senses, whether it opens the PE pole too. */
  readonly openPen: { readonly senses: boolean; readonly opensEarth: boolean };
  /** The type of the a.c. device that is really fitted; null where there is none. */
  readonly residualType: DeviceType | null;
  /** Residual currents at which the sensors begin to act, A; Infinity: never. */
  readonly residualPickup: Amps;
  readonly directPickup: Amps;
  /** Which way round smooth d.c. is felt. */
  readonly directFeels: 'both' | 'positive';
  /** How much later than a sound device's the sensors' trip comes. */
  readonly residualDelay: Seconds;
  readonly directDelay: Seconds;
  /** How much later still its first trip comes, after which it moves freely. */
  readonly firstTripLater: Seconds;
  /** What a residual or d.c. trip comes to: it opens, or it is only shown. After how long it closes by itself; null: never. */
  readonly tripOpens: boolean;
  readonly closesAfterTrip: Seconds | null;
  /** Whether what has latched is still known when the supply comes back. */
  readonly latchMemory: 'kept' | 'lost';
  readonly timing: {
    readonly debounce: Seconds;
    readonly beforeClosing: Seconds;
    readonly closing: Seconds;
    readonly opening: Seconds;
    readonly lock: Seconds;
    /** How long the open-PEN measure sees its limit passed before it opens. */
    readonly openPen: Seconds;
    /** How soon a changed limit is followed. */
    readonly limit: Seconds;
    /** How long supply goes on after a normal stop that the vehicle ignores. */
    readonly stop: Seconds;
    /** How long the pilot stays steady before it oscillates again. */
    readonly pause: Seconds;
  };
  /** Random delay as a share (0–1) of the sheet's longest: drawn for each session, and again for each later start or end in it. */
  readonly delayShare: (session: number, again: number) => number;
}

/** A number in [0, 1) that depends on nothing but its key. */
export type Draw = (key: string) => number;

const between = (share: number, low: number, high: number): number => low + share * (high - low);

/**
 * A sound unit to the sheet. Spreads are trade judgement (common practice, no source) kept inside the published
 * limits: levels ±1 % against ±5 % (IEC 61851-1:2017 Table A.2), frequency ±0.3 % against ±0.5 % (A.4.4),
 * openings of an open-PEN measure between its 4 s allowance and 5 s, or under a second where it rides nothing out
 * (BS 7671 722.411.4.1), 20–26 mA a.c. for a 30 mA device (IEC 61008-1: 15–30 mA), 3.8–5.2 mA d.c. (IEC 62955 9.9.2.1: 3–6 mA),
 * opening in 60 ms at most against 100 ms (Table A.6).
 */
export function soundDesign(sheet: UnitSheet, draw: Draw): UnitDesign {
  const rated = sheet.residual.rated ?? 0.03;
  return {
    sheet,
    pilot: {
      positive: between(draw('pilot positive'), 11.88, 12.12),
      negative: between(draw('pilot negative'), -12.12, -11.88),
      frequency: between(draw('pilot frequency'), 997, 1003),
    },
    thresholds: [10.5, 7.5, 4.5, 1.5, -1.5, -10.5],
    poles: { L1: { welded: false }, L2: { welded: false }, L3: { welded: false }, N: { welded: false } },
    sticks: null,
    weldCheck: 'linked-contact',
    diodeRule: 'checked',
    shortRule: 'acted on',
    dutyError: 0,
    codingRule: 'read',
    overCodeRule: 'acted on',
    lock: { engages: true, releases: true, feedback: 'true' },
    serviceSensor: 'right',
    serviceLimitOver: 0,
    watchedLines: 'all',
    openPen: { senses: true, opensEarth: true },
    residualType: sheet.residual.type,
    residualPickup: rated * between(draw('residual pick-up'), 0.67, 0.87),
    directPickup: between(draw('direct pick-up'), 0.0038, 0.0052),
    directFeels: 'both',
    residualDelay: 0,
    directDelay: 0,
    firstTripLater: 0,
    tripOpens: true,
    closesAfterTrip: null,
    latchMemory: 'kept',
    timing: {
      debounce: between(draw('debounce'), 0.018, 0.03),
      beforeClosing: between(draw('before closing'), 0.3, 0.9),
      closing: between(draw('closing'), 0.015, 0.025),
      opening: between(draw('opening'), 0.01, 0.02),
      lock: between(draw('lock'), 0.3, 0.5),
      openPen: sheet.openPenRidesOut
        ? between(draw('open PEN'), 4.1, 4.6)
        : between(draw('open PEN'), 0.2, 0.8),
      limit: between(draw('limit'), 1, 4),
      stop: between(draw('stop'), 6.2, 8),
      pause: LEAST_OSCILLATION_PAUSE,
    },
    delayShare: (session, again) => draw(`start delay ${session}${again === 0 ? '' : ` again ${again}`}`),
  };
}

/** The lives that have a pole in a unit on this number of phases. */
export const polesOf = (phases: 1 | 3): readonly Live[] => (phases === 1 ? ['L1', 'N'] : LIVES);
