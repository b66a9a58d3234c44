/**
 * From volts to bands: what the unit's own circuits make of the voltages at its terminals. Thresholds live in the
 * design. Whoever solves the network supplies the voltages; nothing here knows the chart.
 */
import type { Line } from '../laws/conductors.ts';
import type { CableCoding } from '../laws/proximity.ts';
import { CODING_RANGES, codedCurrent, readCoding, UNPLUGGED_ABOVE } from '../laws/proximity.ts';
import type { Amps, Ohms, Volts } from '../laws/quantities.ts';
import { OPEN_PEN_WINDOW, TOUCH_LIMIT } from '../laws/supplyLimits.ts';
import type { UnitDesign, UnitSheet } from './design.ts';
import { PROXIMITY_SOURCE } from './parts.ts';
import type { PilotBand, Sensed } from './sensed.ts';
import { PILOT_BANDS } from './sensed.ts';

/** What the unit's sensing circuits are connected to. */
export interface AtTheUnit {
  /** Line to neutral behind the unit's own breaker, r.m.s. */
  readonly supply: Readonly<Partial<Record<Line, Volts>>>;
  /** Pilot terminal to PE bar, both halves. */
  readonly pilotHigh: Volts;
  readonly pilotLow: Volts;
  readonly oscillating: boolean;
  /** Proximity contact to PE bar; of no meaning on a tethered unit. */
  readonly proximity: Volts;
  readonly anyPoleClosed: boolean;
  readonly plug: 'out' | 'in' | 'held';
  /** The supply's PE to the measure's own electrode, r.m.s. */
  readonly earth: Volts;
  readonly peak: boolean;
  /** What the site's load management says. */
  readonly limit: Amps | null;
  /** Active current of each line through the service's sensor, and through the unit's own meter; of no meaning without either. */
  readonly throughSensor: Readonly<Partial<Record<Line, Amps>>>;
  readonly ownCurrent: Readonly<Partial<Record<Line, Amps>>>;
}

/** The electronics run from this voltage up, V. A design choice. */
const POWER_UP: Volts = 150;
/** A line below this is missing, V. A design choice. */
const LINE_PRESENT: Volts = 100;
/** Outside this range a unit does not start supplying, V. A design choice, wider than 216.2–253 V. */
const WORKING_RANGE = { least: 180, greatest: 270 };
/** What a unit that does not go by the coding takes a cable for: the largest, so that its own rating decides, A. */
const ANY_CABLE = 63;
/** The low half of a sound pilot, V (IEC 61851-1:2017 Table A.4). */
const LOW_HALF = { least: -13, greatest: -11 };

export const isPowered = (at: AtTheUnit): boolean => (at.supply.L1 ?? 0) >= POWER_UP;

export function sense(design: UnitDesign, at: AtTheUnit): Sensed {
  const proximity = proximitySensed(design, at);
  const lines = Object.entries(at.supply) as [Line, Volts][];
  const present = lines.filter(([, volts]) => volts >= LINE_PRESENT).map(([, volts]) => volts);
  return {
    supply: present.some((v) => v < WORKING_RANGE.least)
      ? 'low'
      : present.some((v) => v > WORKING_RANGE.greatest)
        ? 'high'
        : 'within',
    missing: lines
      .filter(([line, volts]) => volts < LINE_PRESENT && (line === 'L1' || design.watchedLines === 'all'))
      .map(([line]) => line),
    pilot: pilotBand(design, at.pilotHigh),
    lowHalf: !at.oscillating
      ? 'none'
      : at.pilotLow >= LOW_HALF.least && at.pilotLow <= LOW_HALF.greatest
        ? 'sound'
        : 'wrong',
    proximity,
    overCode: drawsOverCode(design.sheet, proximity, at),
    linkedContact: at.anyPoleClosed ? 'closed' : 'open',
    plug: at.plug,
    pen: outsidePen(design, at) ? 'outside' : 'within',
    peak: at.peak,
    limit: leftForUnit(design, at),
  };
}

function proximitySensed({ sheet, codingRule }: UnitDesign, at: AtTheUnit): Sensed['proximity'] {
  if (sheet.outlet !== 'socket') return 'none';
  return codingRule === 'ignored' ? ANY_CABLE : proximityOf(at.proximity);
}

/** A line above the coding and the sheet's margin; a tethered unit reads no coding. */
function drawsOverCode({ overCode }: UnitSheet, proximity: Sensed['proximity'], at: AtTheUnit): boolean {
  if (typeof proximity !== 'number') return false;
  const phases = Object.keys(at.supply).length === 1 ? 1 : 3;
  const most = (1 + overCode.margin) * codedCurrent(proximity, phases);
  return Object.values(at.ownCurrent).some((amps) => amps > most);
}

/**
 * The lesser of what load management says and what the sensor leaves of the service on its most loaded line, in whole
 * amperes (a design choice). The unit takes its own share off what the sensor feels.
 */
function leftForUnit({ sheet, serviceSensor, serviceLimitOver }: UnitDesign, at: AtTheUnit): Amps | null {
  if (sheet.serviceLimit === null) return at.limit;
  const serviceLimit = sheet.serviceLimit + serviceLimitOver;
  const sign = serviceSensor === 'reversed' ? -1 : 1;
  const others = (Object.entries(at.throughSensor) as [Line, Amps][]).map(
    ([line, amps]) => sign * amps - (at.ownCurrent[line] ?? 0),
  );
  const left = Math.max(0, Math.floor(serviceLimit - Math.max(0, ...others)));
  return at.limit === null ? left : Math.min(at.limit, left);
}

/** What each kind of measure looks at (BS 7671:2018+A2:2022 722.411.4.1): a window on line to neutral, or 70 V to true earth. */
function outsidePen({ sheet, openPen }: UnitDesign, at: AtTheUnit): boolean {
  if (!openPen.senses || sheet.openPen === 'none') return false;
  const volts = at.supply.L1 ?? 0;
  return sheet.openPen === 'voltage-window'
    ? volts < OPEN_PEN_WINDOW.least || volts > OPEN_PEN_WINDOW.greatest
    : at.earth > TOUCH_LIMIT;
}

function pilotBand(design: UnitDesign, high: Volts): PilotBand {
  const step = design.thresholds.findIndex((edge) => high >= edge);
  const band = (step < 0 ? PILOT_BANDS.at(-1) : PILOT_BANDS[step]) as PilotBand;
  return band === 'E' && design.shortRule === 'ignored' ? 'C' : band;
}

/** The gaps between the printed ranges are the designer's: this unit takes the lower current (IEC 61851-1:2017 Table B.2). */
function proximityOf(volts: Volts): CableCoding | 'none' | 'invalid' {
  const resistance: Ohms = (PROXIMITY_SOURCE.resistance * volts) / (PROXIMITY_SOURCE.volts - volts);
  if (!(resistance <= UNPLUGGED_ABOVE)) return 'none';
  const read = readCoding(Math.max(0, resistance));
  if (read !== 'gap') return read;
  if (resistance < CODING_RANGES[63].least) return 63;
  if (resistance < CODING_RANGES[32].least) return 32;
  if (resistance < CODING_RANGES[20].least) return 20;
  return resistance < CODING_RANGES[13].least ? 13 : 'none';
}
