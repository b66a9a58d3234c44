/** Questions on what the pilot says: levels, duty, coding, and the current that follows from them. */
import { roundTo } from '../../bench/readings/scale.ts';
import type { DutyMeaning } from '../../laws/pilotDuty.ts';
import { currentForDuty, dutyForCurrent, greatestOffer } from '../../laws/pilotDuty.ts';
import {
  MEASURED_PILOT,
  PILOT_SOURCE,
  parallel,
  pilotHigh,
  pilotLow,
  VEHICLE,
} from '../../laws/pilotLevels.ts';
import { sourceResistanceFrom } from '../../laws/pilotSourceResistance.ts';
import { CABLE_CODINGS, codedCurrent, codingResistance, readCoding } from '../../laws/proximity.ts';
import type { Amps, Ohms, Volts } from '../../laws/quantities.ts';
import { CIRCUIT, pilotStandard } from '../../verification/sources.ts';
import { figure, inOrder, shuffled } from '../asking.ts';
import type { Kind } from '../question.ts';

const STATES = ['A', 'B', 'C', 'D'] as const;
type State = (typeof STATES)[number];

/** What the vehicle puts on the pilot, Ω. */
const LOADS: Readonly<Record<State, Ohms>> = {
  A: Infinity,
  B: VEHICLE.permanent,
  C: parallel(VEHICLE.permanent, VEHICLE.stateC),
  D: parallel(VEHICLE.permanent, VEHICLE.stateD),
};

const highIn = (state: State, open: Volts = PILOT_SOURCE.open): Volts =>
  pilotHigh({
    open,
    sourceResistance: PILOT_SOURCE.resistance,
    vehicleResistance: LOADS[state],
    diodeDrop: VEHICLE.diodeDrop,
  });

const stateOfLevel: Kind = {
  id: 'state-of-level',
  topics: ['offer'],
  ask: (dice) => {
    const state = dice.pick('state', STATES);
    const { least, greatest } = MEASURED_PILOT[state];
    const volts = dice.figure('volts', least, greatest, 0.01);
    return inOrder({
      values: { volts, state },
      source: pilotStandard('Tables A.4 and A.10'),
      answer: state,
      choices: STATES.map((id) => ({ id })),
    });
  },
};

const levelOfState: Kind = {
  id: 'level-of-state',
  topics: ['offer'],
  ask: (dice) => {
    const state = dice.pick('state', ['B', 'C', 'D']);
    const open = dice.figure('open', 11.6, 12.4, 0.1);
    const load = LOADS[state];
    return figure({
      values: { state, open, load: Math.round(load) },
      source: CIRCUIT,
      unit: 'V',
      answer: roundTo(highIn(state, open), 0.01),
      tolerance: 0.15,
      mistakes: {
        'diode-forgotten': (open * load) / (PILOT_SOURCE.resistance + load),
        'halves-crossed': (open * PILOT_SOURCE.resistance) / (PILOT_SOURCE.resistance + load),
        'no-load': open,
      },
    });
  },
};

const lowHalf: Kind = {
  id: 'low-half',
  topics: ['refuses'],
  ask: (dice) => {
    const state = dice.pick('state', ['B', 'C']);
    const diode = dice.pick('diode', ['sound', 'shorted']);
    const low = (which: 'sound' | 'shorted') =>
      roundTo(
        pilotLow({
          open: PILOT_SOURCE.open,
          sourceResistance: PILOT_SOURCE.resistance,
          vehicleResistance: LOADS[state],
          diode: which,
        }),
        0.1,
      );
    return shuffled(dice, {
      values: { state, diode },
      source: pilotStandard('Table A.4 note c'),
      answer: diode,
      choices: [
        { id: 'sound', values: { volts: low('sound') } },
        { id: 'shorted', values: { volts: low('shorted') } },
        { id: 'none', values: { volts: 0 } },
        { id: 'as-open', values: { volts: PILOT_SOURCE.open } },
      ],
    });
  },
};

const sourceResistance: Kind = {
  id: 'source-resistance',
  topics: ['offer'],
  ask: (dice) => {
    const open = dice.figure('open', 11.6, 12.4, 0.05);
    const real = dice.figure('real', 900, 1120, 10);
    const loaded = roundTo(
      pilotHigh({
        open,
        sourceResistance: real,
        vehicleResistance: VEHICLE.permanent,
        diodeDrop: VEHICLE.diodeDrop,
      }),
      0.01,
    );
    const { least, greatest } = PILOT_SOURCE.resistanceRange;
    return figure({
      values: { open, loaded, load: VEHICLE.permanent, drop: VEHICLE.diodeDrop, least, greatest },
      source: pilotStandard('A.4.4 and Table A.2'),
      unit: 'Ω',
      answer: roundTo(sourceResistanceFrom(open, loaded), 1),
      tolerance: 15,
      mistakes: {
        'diode-forgotten': (VEHICLE.permanent * (open - loaded)) / loaded,
        'load-for-source': VEHICLE.permanent,
        'loaded-over-lost': (VEHICLE.permanent * loaded) / (open - loaded),
      },
    });
  },
};

/** Either branch of the coding, and the sharp corner between them. */
const OFFERS: readonly [Amps, ...Amps[]] = [6, 8, 10, 13, 16, 20, 25, 32, 40, 48, 51, 60, 63, 70, 80];

const dutyOfCurrent: Kind = {
  id: 'duty-of-current',
  topics: ['offer'],
  ask: (dice) => {
    const amps = dice.pick('amps', OFFERS);
    return figure({
      values: { amps },
      source: pilotStandard('Table A.7'),
      unit: '%',
      answer: roundTo(100 * dutyForCurrent(amps), 0.1),
      tolerance: 0.3,
      mistakes: {
        'amperes-for-percent': amps,
        'times-not-over': 100 * Math.min(1, (amps * 0.6) / 100),
        'other-branch': amps <= 51 ? (100 * (amps + 160)) / 250 : amps / 0.6,
      },
    });
  },
};

const currentOfDuty: Kind = {
  id: 'current-of-duty',
  topics: ['offer'],
  ask: (dice) => {
    const percent = roundTo(100 * dutyForCurrent(dice.pick('amps', OFFERS)), 0.1);
    const meaning = currentForDuty(percent / 100);
    return figure({
      values: { percent },
      source: pilotStandard('Table A.8'),
      unit: 'A',
      answer: roundTo(meaning.kind === 'current' ? meaning.amps : 0, 0.1),
      tolerance: 0.3,
      mistakes: {
        'percent-for-amperes': percent,
        'over-not-times': percent / 0.6,
        'other-branch': percent > 85 ? 0.6 * percent : 2.5 * percent - 160,
      },
    });
  },
};

const DUTIES: readonly [number, ...number[]] = [2, 4, 5, 6, 7.5, 8.5, 9, 9.5, 96.5, 97, 98, 99];

/** What a duty outside the two branches means, as an id. */
function bandOf(meaning: DutyMeaning): string {
  if (meaning.kind === 'digital link') return 'digital-link';
  return meaning.kind === 'not allowed' ? 'not-allowed' : `${meaning.amps}-A`;
}

const dutyBand: Kind = {
  id: 'duty-band',
  topics: ['offer'],
  ask: (dice) => {
    const percent = dice.pick('percent', DUTIES);
    return inOrder({
      values: { percent },
      source: pilotStandard('Table A.8'),
      answer: bandOf(currentForDuty(percent / 100)),
      choices: ['not-allowed', 'digital-link', '6-A', '80-A'].map((id) => ({ id })),
    });
  },
};

const currentOfTimes: Kind = {
  id: 'current-of-times',
  topics: ['offer'],
  ask: (dice) => {
    const period = dice.figure('period', 985, 1015, 1);
    const high = Math.round(period * dutyForCurrent(dice.pick('amps', [6, 10, 13, 16, 20, 25, 32, 40, 48])));
    const meaning = currentForDuty(high / period);
    return figure({
      values: { high, period },
      source: pilotStandard('Table A.8'),
      picture: {
        of: 'pilot',
        high: roundTo(highIn('B'), 0.01),
        low: -12,
        period: period / 1e6,
        highFor: high / 1e6,
      },
      unit: 'A',
      answer: roundTo(meaning.kind === 'current' ? meaning.amps : 0, 0.1),
      tolerance: 0.3,
      mistakes: {
        'percent-for-amperes': (100 * high) / period,
        'low-for-high': 0.6 * 100 * (1 - high / period),
        'high-over-low': (60 * high) / (period - high),
      },
    });
  },
};

const leastOfLimits: Kind = {
  id: 'least-of-limits',
  topics: ['offer'],
  ask: (dice) => {
    const unit = dice.pick('unit', [16, 32]);
    const coding = dice.pick('coding', [13, 20, 32, 63]);
    // Nobody can set a unit above its rating.
    const setting = dice.pick('setting', unit === 16 ? [8, 10, 13, 16] : [10, 13, 16, 25, 32]);
    const limit = dice.pick('limit', [5, 8, 12, 18, 40]);
    const phases = dice.pick('phases', [1, 3]);
    const cable = codedCurrent(coding, phases);
    const answer = greatestOffer(unit, cable, setting, limit);
    return figure({
      values: { unit, cable, setting, limit, phases },
      source: pilotStandard('6.3.1.6 and Table A.7'),
      unit: 'A',
      answer,
      tolerance: 0.2,
      mistakes: {
        'least-below-six': Math.min(unit, cable, setting, limit),
        'greatest-of-all': Math.max(unit, cable, setting, limit),
        'unit-alone': unit,
        'cable-alone': cable,
        'limit-forgotten': Math.min(unit, cable, setting),
      },
    });
  },
};

/** Resistances between PP and PE that a plug gives: coded, off its value, in a gap, none. */
const READ_OHMS: readonly [Ohms, ...Ohms[]] = [
  1500, 1455, 1545, 1200, 2400, 680, 660, 700, 420, 900, 220, 214, 226, 180, 300, 100, 97, 103, 130, 350,
  1000, 3000, 5000, 20_000, 40,
];
const CODINGS = ['13', '20', '32', '63', 'gap', 'none', 'invalid'] as const;

const codingOfOhms: Kind = {
  id: 'coding-of-ohms',
  topics: ['wiring'],
  ask: (dice) => {
    const ohms = dice.pick('ohms', READ_OHMS);
    return inOrder({
      values: { ohms },
      source: pilotStandard('Table B.2'),
      answer: String(readCoding(ohms)),
      choices: CODINGS.map((id) => ({ id })),
    });
  },
};

const codingWithContact: Kind = {
  id: 'coding-with-contact',
  topics: ['offer'],
  ask: (dice) => {
    const coding = dice.pick('coding', CABLE_CODINGS);
    const contact = dice.pick('contact', [20, 60, 120, 250, 500, 900, 1300, 4000]);
    const ohms = codingResistance(coding) + contact;
    return inOrder({
      values: { coding, contact, ohms: codingResistance(coding) },
      source: pilotStandard('Table B.2'),
      answer: String(readCoding(ohms)),
      choices: CODINGS.filter((id) => id !== 'invalid').map((id) => ({ id })),
    });
  },
};

const highTime: Kind = {
  id: 'high-time',
  topics: ['offer'],
  ask: (dice) => {
    const amps = dice.pick('amps', OFFERS);
    const duty = dutyForCurrent(amps);
    return figure({
      values: { amps },
      source: pilotStandard('Tables A.2 and A.7'),
      unit: 'ms',
      answer: roundTo(duty, 0.001),
      tolerance: 0.004,
      mistakes: {
        'low-for-high': 1 - duty,
        'amperes-for-percent': amps / 100,
        'times-not-over': (0.6 * amps) / 100,
      },
    });
  },
};

/** Between PP and PE of what is in the socket, Ω; without a resistor nothing joins them. */
const IN_SOCKET = ['none', 'none', '5200', '1500', '680', '220'] as const;

const uncodedPlug: Kind = {
  id: 'uncoded-plug',
  topics: ['wiring'],
  ask: (dice) => {
    const rated = dice.pick('rated', [16, 32]);
    const read = dice.pick('read', IN_SOCKET);
    const coding = readCoding(read === 'none' ? Infinity : Number(read));
    const cable = typeof coding === 'number' ? codedCurrent(coding, 1) : null;
    const answer = cable === null ? 'no-supply' : `${greatestOffer(rated, cable, rated, rated)}-A`;
    return inOrder({
      values: { rated, read, answer: cable ?? 0 },
      source: pilotStandard('B.2.2 and Table B.2'),
      answer,
      choices: ['no-supply', '13-A', '16-A', '20-A', '32-A'].map((id) => ({ id })),
    });
  },
};

export const OFFER_KINDS: readonly Kind[] = [
  stateOfLevel,
  levelOfState,
  lowHalf,
  sourceResistance,
  dutyOfCurrent,
  currentOfDuty,
  dutyBand,
  currentOfTimes,
  leastOfLimits,
  codingOfOhms,
  codingWithContact,
  highTime,
  uncodedPlug,
];
