/** Questions on conductors, earth and loops: what they ought to read, what they let flow, and what limit they meet. */
import { loopScaleAt } from '../../bench/readings/loop.ts';
import { roundTo } from '../../bench/readings/scale.ts';
import { conductorResistance } from '../../laws/conductor.ts';
import { ELECTRODE_TOUCH_VOLTAGE, electrodeVoltage, greatestElectrode } from '../../laws/electrode.ts';
import {
  lineToLineProspective,
  loopImpedance,
  prospectiveCurrent,
  threePhaseProspective,
} from '../../laws/loop.ts';
import type { BreakerType } from '../../laws/overcurrent.ts';
import {
  greatestLoopImpedance,
  instantaneousMultiple,
  measuredLoopLimit,
  NOMINAL_TO_EARTH,
} from '../../laws/overcurrent.ts';
import type { Metres, Ohms, SquareMillimetres } from '../../laws/quantities.ts';
import { isWithin } from '../../laws/quantities.ts';
import { SUPPLY_VOLTAGE } from '../../laws/supplyLimits.ts';
import { dropPerAmpereMetre, greatestDrop, voltageDrop } from '../../laws/voltageDrop.ts';
import { fromMemory, PRACTICE, published } from '../../verification/sources.ts';
import { figure, inOrder } from '../asking.ts';
import type { Dice, Kind } from '../question.ts';

/** The wiring rules that these questions go by, as the benches do. */
const RULES = 'BS 7671:2018+A2:2022';
const CONDUCTORS = published('IEC 60228');

/** Ohms of a conductor of a fixed cable, 20 °C. */
const ofCircuit = (length: Metres, area: SquareMillimetres): Ohms =>
  conductorResistance({ length, area, class: 2 });
const ofTether = (length: Metres, area: SquareMillimetres): Ohms =>
  conductorResistance({ length, area, class: 5 });

interface Run {
  readonly length: Metres;
  readonly line: SquareMillimetres;
  readonly protective: SquareMillimetres;
  readonly r1: Ohms;
  readonly r2: Ohms;
}

type Areas = readonly [line: SquareMillimetres, protective: SquareMillimetres];
const THIN_EARTH: readonly [Areas, ...Areas[]] = [
  [6, 6],
  [6, 2.5],
  [10, 4],
  [4, 4],
  [16, 6],
];
const AREAS: readonly [Areas, ...Areas[]] = [...THIN_EARTH, [10, 10]];

function drawRun(dice: Dice, least: Metres = 8, areas = AREAS): Run {
  const length = dice.figure('length', least, 48, 1);
  const [line, protective] = dice.pick('areas', areas);
  return { length, line, protective, r1: ofCircuit(length, line), r2: ofCircuit(length, protective) };
}

/** Rounded to the hundredth of an ohm that an instrument shows it is right, and so is every digit more. */
const HUNDREDTH: Ohms = 0.006;

/** Milliohms a metre, as tabled. */
const perMetre = (area: SquareMillimetres): number => roundTo(1000 * ofCircuit(1, area), 0.01);

const protectiveOhms: Kind = {
  id: 'protective-ohms',
  topics: ['earth'],
  ask: (dice) => {
    const { length, line, protective, r1, r2 } = drawRun(dice);
    return figure({
      values: { length, protective, each: perMetre(protective) },
      source: CONDUCTORS,
      unit: 'Ω',
      answer: roundTo(r2, 0.001),
      tolerance: HUNDREDTH,
      mistakes: {
        'there-and-back': 2 * r2,
        'thousand-out': r2 / 10,
        'line-as-well': line === protective ? Number.NaN : r1 + r2,
      },
    });
  },
};

const lineAndProtective: Kind = {
  id: 'line-and-protective',
  topics: ['wiring'],
  ask: (dice) => {
    const { length, line, protective, r1, r2 } = drawRun(dice);
    return figure({
      values: { length, line, protective, lineEach: perMetre(line), protectiveEach: perMetre(protective) },
      source: CONDUCTORS,
      unit: 'Ω',
      answer: roundTo(r1 + r2, 0.001),
      tolerance: HUNDREDTH,
      mistakes: {
        'one-way': r1,
        'line-twice': 2 * r1,
        'in-parallel': (r1 * r2) / (r1 + r2),
      },
    });
  },
};

/** What terminals and contacts may add, Ω (contract: at most 0.05 Ω). */
const CONTACTS: Ohms = 0.05;

const sumJudged: Kind = {
  id: 'sum-judged',
  topics: ['wiring'],
  ask: (dice) => {
    // Long enough that a path beside PE takes away more than any instrument errs.
    const { length, line, protective, r1, r2 } = drawRun(dice, 34, THIN_EARTH);
    const sum = roundTo(r1 + r2, 0.01);
    const answer = dice.pick('answer', ['as-it-ought', 'too-high', 'too-low']);
    const off = {
      'as-it-ought': [0, 0.03],
      'too-high': [0.3, 1.2],
      // What is left of PE beside another path; the line is whole.
      'too-low': [-0.9 * r2, -0.65 * r2],
    } as const;
    const [least, greatest] = off[answer];
    const read = roundTo(sum + dice.figure('off', least, greatest, 0.01), 0.01);
    return inOrder({
      values: { length, line, protective, sum, read, contacts: CONTACTS },
      source: CONDUCTORS,
      answer,
      choices: ['as-it-ought', 'too-high', 'too-low'].map((id) => ({ id })),
    });
  },
};

const RATED_RESIDUAL = [0.03, 0.1, 0.3, 0.5] as const;

const electrodeLimit: Kind = {
  id: 'electrode-limit',
  topics: ['earth'],
  ask: (dice) => {
    const rated = dice.pick('rated', RATED_RESIDUAL);
    return figure({
      values: { milliamps: roundTo(1000 * rated, 1) },
      source: published(`${RULES} 411.5.3 and Table 41.5`),
      unit: 'Ω',
      answer: roundTo(greatestElectrode(rated), 1),
      tolerance: 1,
      mistakes: {
        'mains-voltage': NOMINAL_TO_EARTH / rated,
        'milliamps-for-amps': ELECTRODE_TOUCH_VOLTAGE / (1000 * rated),
        'times-not-over': ELECTRODE_TOUCH_VOLTAGE * rated,
      },
    });
  },
};

const electrodeTouch: Kind = {
  id: 'electrode-touch',
  topics: ['earth'],
  ask: (dice) => {
    const ohms = dice.figure('ohms', 20, 180, 5);
    const amps = dice.pick('amps', [0.03, 0.1, 0.3]);
    return figure({
      values: { ohms, milliamps: roundTo(1000 * amps, 1) },
      source: published(`${RULES} 411.5.3`),
      unit: 'V',
      answer: roundTo(electrodeVoltage(ohms, amps), 0.01),
      tolerance: 0.1,
      mistakes: {
        'milliamps-for-amps': 1000 * ohms * amps,
        'over-not-times': ohms / amps,
        'mains-voltage': NOMINAL_TO_EARTH,
      },
    });
  },
};

const LOOP_SOURCE = published(`${RULES} Part 2 (Zs)`);

const loopOfParts: Kind = {
  id: 'loop-of-parts',
  topics: ['clears'],
  ask: (dice) => {
    const external = dice.figure('external', 0.08, 0.6, 0.01);
    const run = drawRun(dice);
    const fixed = roundTo(run.r1 + run.r2, 0.01);
    const tether = roundTo(2 * ofTether(dice.figure('tether', 4, 8, 0.5), dice.pick('area', [4, 6])), 0.01);
    return figure({
      values: { external, fixed, tether },
      source: LOOP_SOURCE,
      unit: 'Ω',
      answer: roundTo(loopImpedance(external, fixed + tether), 0.01),
      tolerance: HUNDREDTH,
      mistakes: {
        'tether-forgotten': external + fixed,
        'external-forgotten': fixed + tether,
        'external-halved': external / 2 + fixed + tether,
        'taken-off': fixed + tether - external,
      },
    });
  },
};

const BREAKERS = [
  ['B', 16],
  ['B', 20],
  ['B', 32],
  ['B', 40],
  ['C', 16],
  ['C', 32],
  ['C', 40],
] as const satisfies readonly (readonly [BreakerType, number])[];

const loopLimit: Kind = {
  id: 'loop-limit',
  topics: ['clears'],
  ask: (dice) => {
    const [type, rating] = dice.pick('breaker', BREAKERS);
    const tabled = greatestLoopImpedance(type, rating);
    const multiple = instantaneousMultiple(type);
    return figure({
      values: { type, rating, multiple, tabled },
      source: published(`${RULES} Table 41.3 and Appendix 3`, 'factor-from-guidance-note'),
      unit: 'Ω',
      answer: measuredLoopLimit(type, rating),
      tolerance: 0.011,
      mistakes: {
        'hot-for-cold': tabled,
        'no-factor': NOMINAL_TO_EARTH / (multiple * rating),
        'other-type': measuredLoopLimit(type === 'B' ? 'C' : 'B', rating),
        'rating-alone': NOMINAL_TO_EARTH / rating,
      },
    });
  },
};

/** Half-width of a loop reading of some ohms at most, as the bench’s own instrument has it. */
const loopUncertainty = (ohms: Ohms): Ohms => {
  const { gain, digits } = loopScaleAt(ohms);
  return gain * ohms + digits;
};

const loopJudged: Kind = {
  id: 'loop-judged',
  topics: ['clears'],
  ask: (dice) => {
    const [type, rating] = dice.pick('breaker', BREAKERS);
    const limit = measuredLoopLimit(type, rating);
    const share = dice.pick('share', [0.45, 0.6, 0.75, 0.95, 1.03, 1.3, 1.6]);
    const read = roundTo(share * limit, 0.01);
    const uncertainty = roundTo(loopUncertainty(read), 0.01);
    const close = Math.abs(read - limit) < uncertainty;
    return inOrder({
      values: { type, rating, limit, read, uncertainty },
      source: published(`${RULES} Table 41.3 and Appendix 3`, 'factor-from-guidance-note'),
      answer: close ? 'too-close' : read < limit ? 'within' : 'outside',
      choices: ['within', 'outside', 'too-close'].map((id) => ({ id })),
    });
  },
};

const prospective: Kind = {
  id: 'prospective-current',
  topics: ['supply'],
  ask: (dice) => {
    const ohms = dice.figure('ohms', 0.07, 0.9, 0.01);
    return figure({
      values: { ohms, volts: NOMINAL_TO_EARTH },
      source: published(`${RULES} 643.7.3.201`),
      unit: 'A',
      answer: roundTo(prospectiveCurrent(ohms), 1),
      tolerance: Math.max(2, roundTo(0.01 * prospectiveCurrent(ohms), 1)),
      mistakes: {
        'times-not-over': NOMINAL_TO_EARTH * ohms,
        'line-to-line': 400 / ohms,
        'upside-down': ohms / NOMINAL_TO_EARTH,
      },
    });
  },
};

const prospectiveThree: Kind = {
  id: 'prospective-three-phases',
  topics: ['supply'],
  ask: (dice) => {
    const single = dice.figure('single', 600, 3600, 20);
    return figure({
      values: { single },
      source: published('IET Guidance Note 3', 'doubling-from-guidance-note'),
      unit: 'A',
      answer: threePhaseProspective(single),
      tolerance: 10,
      mistakes: {
        'as-single': single,
        'three-times': 3 * single,
        'root-three': lineToLineProspective(single),
      },
    });
  },
};

const breakingCapacity: Kind = {
  id: 'breaking-capacity',
  topics: ['supply'],
  ask: (dice) => {
    const capacity = dice.pick('capacity', [4500, 6000, 10_000]);
    // As often one as the other.
    const steps = Math.floor((100 * NOMINAL_TO_EARTH) / capacity);
    const ohms = dice.pick('bears', [true, false])
      ? dice.figure('more', (steps + 1) / 100, 0.2, 0.01)
      : dice.figure('less', 0.02, Math.max(2, steps) / 100, 0.01);
    const amps = Math.round(prospectiveCurrent(ohms));
    return inOrder({
      values: { ohms, amps, capacity },
      source: published(`${RULES} 434.5.1`),
      answer: amps <= capacity ? 'bears-it' : 'does-not',
      choices: ['bears-it', 'does-not'].map((id) => ({ id })),
    });
  },
};

const supplyVoltage: Kind = {
  id: 'supply-voltage',
  topics: ['supply'],
  ask: (dice) => {
    const volts = dice.pick('volts', [203, 209, 214, 218, 224, 230, 238, 246, 251, 256, 259]);
    const answer = isWithin(SUPPLY_VOLTAGE, volts)
      ? 'within'
      : volts < SUPPLY_VOLTAGE.nominal
        ? 'low'
        : 'high';
    return inOrder({
      values: { volts },
      source: published('ESQCR 2002, regulation 27'),
      answer,
      choices: ['low', 'within', 'high'].map((id) => ({ id })),
    });
  },
};

const voltDrop: Kind = {
  id: 'volt-drop',
  topics: ['clears'],
  ask: (dice) => {
    const area = dice.pick('area', [4, 6, 10]);
    const amps = dice.pick('amps', [16, 20, 32]);
    const length = dice.figure('length', 8, 45, 1);
    const drop = voltageDrop({ area, phases: 1, amps, length });
    return figure({
      values: { area, amps, length, each: dropPerAmpereMetre(area, 1), most: greatestDrop(1) },
      source: fromMemory(`${RULES} Appendix 4 section 6`),
      unit: 'V',
      answer: roundTo(drop, 0.01),
      tolerance: 0.1,
      mistakes: {
        'length-forgotten': (dropPerAmpereMetre(area, 1) * amps) / 1000,
        'there-and-back': 2 * drop,
        'as-percent': (100 * drop) / NOMINAL_TO_EARTH,
      },
    });
  },
};

/** Of a loop beside the sum of its parts, Ω: what the reading differs by, and what that hints at. */
const LOOP_BESIDE_SUM = {
  'parallel-path': [-0.13, -0.08],
  'as-it-ought': [-0.01, 0.01],
  joint: [0.35, 1.2],
} as const;

const loopBesideSum: Kind = {
  id: 'loop-beside-its-sum',
  topics: ['clears'],
  ask: (dice) => {
    const external = dice.figure('external', 0.15, 0.5, 0.01);
    const fixed = dice.figure('fixed', 0.15, 0.6, 0.01);
    const answer = dice.pick('answer', ['parallel-path', 'as-it-ought', 'joint']);
    const [least, greatest] = LOOP_BESIDE_SUM[answer];
    const sum = external + fixed;
    return inOrder({
      values: {
        external,
        fixed,
        read: roundTo(sum + dice.figure('off', least, greatest, 0.01), 0.01),
        sum: roundTo(sum, 0.01),
      },
      source: PRACTICE,
      answer,
      choices: ['as-it-ought', 'parallel-path', 'joint', 'warm'].map((id) => ({ id })),
    });
  },
};

export const CONDUCTOR_KINDS: readonly Kind[] = [
  protectiveOhms,
  lineAndProtective,
  sumJudged,
  electrodeLimit,
  electrodeTouch,
  loopOfParts,
  loopLimit,
  loopJudged,
  prospective,
  prospectiveThree,
  breakingCapacity,
  supplyVoltage,
  voltDrop,
  loopBesideSum,
];
