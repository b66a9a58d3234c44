/** Questions on insulation, on what trips at which leakage and when, and on how soon a unit has to let go. */
import { roundTo } from '../../bench/readings/scale.ts';
import { EQUIPMENT_MINIMUM, EQUIPMENT_TEST_VOLTAGE, minimumInsulation } from '../../laws/insulationLimits.ts';
import { parallel } from '../../laws/pilotLevels.ts';
import type { Seconds } from '../../laws/quantities.ts';
import type { Delay } from '../../laws/residualLimits.ts';
import {
  alternatingBand,
  breakTimeLimit,
  DIRECT_BAND,
  directBreakTimeLimit,
  halfWaveBand,
  NON_TRIPPING_SHARE,
} from '../../laws/residualLimits.ts';
import { isSelective } from '../../laws/residualProtection.ts';
import {
  GREATEST_OFF_AFTER_EARTH_LOSS,
  GREATEST_OFF_AFTER_FAULT,
  GREATEST_OFF_AFTER_NOT_READY,
  GREATEST_OFF_AFTER_UNPLUGGING,
  GREATEST_ON_AFTER_READY,
  GREATEST_UNLOCK_AFTER_UNPLUGGING,
} from '../../laws/timing.ts';
import { fromMemory, PRACTICE, pilotStandard, published } from '../../verification/sources.ts';
import { figure, inOrder } from '../asking.ts';
import type { Dice, Kind } from '../question.ts';

const RULES = 'BS 7671:2018+A2:2022';

const insulationVolts: Kind = {
  id: 'insulation-volts',
  topics: ['insulation'],
  ask: (dice) => {
    const what = dice.pick('what', ['circuit', 'with-electronics', 'selv']);
    const volts =
      what === 'with-electronics'
        ? EQUIPMENT_TEST_VOLTAGE
        : minimumInsulation(230, what === 'selv' ? 'SELV or PELV' : 'other').testVoltage;
    return inOrder({
      values: { what },
      source: published(`${RULES} Table 64 and 643.3.3`),
      answer: String(volts),
      choices: ['50', '250', '500', '1000'].map((id) => ({ id })),
    });
  },
};

const insulationLeast: Kind = {
  id: 'insulation-least',
  topics: ['insulation'],
  ask: (dice) => {
    const what = dice.pick('what', ['circuit', 'with-electronics', 'selv']);
    const least =
      what === 'with-electronics'
        ? EQUIPMENT_MINIMUM
        : minimumInsulation(230, what === 'selv' ? 'SELV or PELV' : 'other').minimum;
    const answer = least / 1e6;
    return figure({
      values: { what },
      source: published(`${RULES} Table 64 and 643.3.3`),
      unit: 'MΩ',
      answer,
      tolerance: 0.01,
      mistakes: { 'selv-for-mains': 0.5, 'mains-for-selv': 1, 'two-megohms': 2, kilohms: answer / 1000 },
    });
  },
};

const insulationParallel: Kind = {
  id: 'insulation-together',
  topics: ['insulation'],
  ask: (dice) => {
    const first = dice.figure('first', 1.5, 12, 0.5);
    const second = dice.figure('second', 2, 40, 1);
    return figure({
      values: { first, second },
      source: PRACTICE,
      unit: 'MΩ',
      answer: roundTo(parallel(first, second), 0.01),
      tolerance: 0.06,
      mistakes: {
        'in-series': first + second,
        'the-lower': Math.min(first, second),
        mean: (first + second) / 2,
      },
    });
  },
};

const RATED = [0.03, 0.1, 0.3] as const;

const residualTime: Kind = {
  id: 'residual-time',
  topics: ['leakage'],
  ask: (dice) => {
    const delay = dice.pick('delay', ['general', 'S']);
    const multiple = dice.pick('multiple', [1, 2, 5]);
    const other: Delay = delay === 'general' ? 'S' : 'general';
    return figure({
      values: { delay, multiple, milliamps: 30 * (delay === 'S' ? 10 : 1) },
      source: fromMemory('BS EN 61008-1, break times'),
      unit: 'ms',
      answer: roundTo(1000 * breakTimeLimit(delay, multiple), 1),
      tolerance: 0.5,
      mistakes: {
        'other-kind': 1000 * breakTimeLimit(other, multiple),
        'at-rated': 1000 * breakTimeLimit(delay, 1),
        'at-five-times': 1000 * breakTimeLimit(delay, 5),
      },
    });
  },
};

/** Where a rising current tripped, against the band that it may trip in. */
const judged = (read: number, band: { readonly least: number; readonly greatest: number }): string =>
  read < band.least ? 'too-early' : read > band.greatest ? 'too-late' : 'in-its-band';

const BAND_CHOICES = ['too-early', 'in-its-band', 'too-late'].map((id) => ({ id }));

const risingAlternating: Kind = {
  id: 'rising-alternating',
  topics: ['leakage'],
  ask: (dice) => {
    const rated = dice.pick('rated', RATED);
    const band = alternatingBand(rated);
    const share = dice.pick('share', [0.3, 0.4, 0.6, 0.7, 0.8, 0.9, 1.1]);
    const amps = roundTo(share * rated, 0.001);
    return inOrder({
      values: {
        rated: roundTo(1000 * rated, 1),
        milliamps: roundTo(1000 * amps, 1),
        least: roundTo(1000 * band.least, 1),
        greatest: roundTo(1000 * band.greatest, 1),
      },
      source: published('BS EN 61008-1'),
      answer: judged(amps, band),
      choices: BAND_CHOICES,
    });
  },
};

const risingDirect: Kind = {
  id: 'rising-direct',
  topics: ['leakage'],
  ask: (dice) => {
    const milliamps = dice.pick('milliamps', [1.8, 2.4, 3.4, 4.2, 4.8, 5.6, 6.6, 7.4]);
    return inOrder({
      values: { milliamps },
      source: published('IEC 62955:2018 9.9.2.1'),
      answer: judged(milliamps / 1000, DIRECT_BAND),
      choices: BAND_CHOICES,
    });
  },
};

const halfWave: Kind = {
  id: 'half-wave',
  topics: ['leakage'],
  ask: (dice) => {
    const type = dice.pick('type', ['AC', 'A']);
    const band = halfWaveBand(type, 0.03, 0);
    const share = dice.pick('share', [0.25, 0.6, 0.9, 1.2]);
    const milliamps = roundTo(30 * share, 0.1);
    return inOrder({
      values: { type, milliamps, ...(band === undefined ? {} : { least: 10.5, greatest: 42 }) },
      source: published('BS EN 61008-1 9.9'),
      answer: band === undefined ? 'nothing-asked' : judged(milliamps / 1000, band),
      choices: ['too-early', 'in-its-band', 'nothing-asked'].map((id) => ({ id })),
    });
  },
};

const mayTripAtHalf: Kind = {
  id: 'at-half-the-rating',
  topics: ['leakage'],
  ask: (dice) => {
    const rated = dice.pick('rated', RATED);
    const above = dice.pick('share', [0.3, NON_TRIPPING_SHARE, 0.8, 1]);
    return {
      way: 'three-answers',
      values: { rated: roundTo(1000 * rated, 1), milliamps: roundTo(1000 * above * rated, 0.1) },
      source: published('BS EN 61008-1', 'no-operation-at-half'),
      // Between half and the whole rating it may do either.
      answer: above <= NON_TRIPPING_SHARE ? 'should-not' : above >= 1 ? 'should' : 'cant-tell',
    };
  },
};

const directTime: Kind = {
  id: 'direct-time',
  topics: ['leakage'],
  ask: (dice) => {
    const milliamps = dice.pick('milliamps', [6, 60, 200]);
    return inOrder({
      values: { milliamps },
      source: published('IEC 62955:2018 Table 2'),
      answer: `${roundTo(1000 * directBreakTimeLimit(milliamps / 1000), 1)}`,
      choices: ['40', '100', '300', '10000'].map((id) => ({ id })),
    });
  },
};

/** Devices at a board: none is made both delayed and for 30 mA. */
const UPSTREAM = [
  { delay: 'general', rated: 0.03 },
  { delay: 'general', rated: 0.1 },
  { delay: 'S', rated: 0.1 },
  { delay: 'S', rated: 0.3 },
] as const satisfies readonly { delay: Delay; rated: number }[];

const whoTrips: Kind = {
  id: 'who-trips',
  topics: ['leakage'],
  ask: (dice) => {
    const upstream = dice.pick('upstream', UPSTREAM);
    const downstream = { delay: 'general', rated: 0.03 } as const;
    return inOrder({
      values: { delay: upstream.delay, rated: roundTo(1000 * upstream.rated, 1) },
      source: published(`${RULES} 536.4.1.4`),
      answer: isSelective(upstream, downstream) ? 'unit-alone' : 'either',
      choices: ['unit-alone', 'board-alone', 'either'].map((id) => ({ id })),
    });
  },
};

/** What happens while the unit supplies, and within which time what has to follow. */
const LETS_GO: Readonly<Record<string, Seconds>> = {
  'stops-asking': GREATEST_OFF_AFTER_NOT_READY,
  unplugged: GREATEST_OFF_AFTER_UNPLUGGING,
  'earth-lost': GREATEST_OFF_AFTER_EARTH_LOSS,
  'pilot-to-earth': GREATEST_OFF_AFTER_FAULT,
  asks: GREATEST_ON_AFTER_READY,
  'unlock-after-unplugging': GREATEST_UNLOCK_AFTER_UNPLUGGING,
};

const howSoon: Kind = {
  id: 'how-soon',
  topics: ['lets-go'],
  ask: (dice) => {
    const [first, ...more] = Object.keys(LETS_GO);
    const what = dice.pick('what', [first ?? '', ...more]);
    return inOrder({
      values: { what },
      source: pilotStandard('Table A.6, 6.3.1.2'),
      answer: String(roundTo(1000 * (LETS_GO[what] ?? 0), 1)),
      choices: ['100', '3000', '5000', '10000'].map((id) => ({ id })),
    });
  },
};

/** Contacts that stay closed in A, and what then stands between the outlet's conductors, V. */
const stuck = (line: boolean, neutral: boolean, volts: number) => ({
  // Where neither side is joined to the supply the electronics and capacitances decide; such a reading is not asked for.
  'line-neutral': line && neutral ? volts : 0,
  'line-earth': line ? volts : 0,
  'neutral-earth': 0,
});

const whichPole: Kind = {
  id: 'which-pole',
  topics: ['outlet-dead'],
  ask: (dice) => {
    const volts = dice.figure('volts', 226, 246, 1);
    const answer = dice.pick('answer', ['none', 'line', 'both']);
    const read = stuck(answer !== 'none', answer === 'both', volts);
    return inOrder({
      values: { lineNeutral: read['line-neutral'], lineEarth: read['line-earth'], neutralEarth: 0 },
      source: PRACTICE,
      answer,
      choices: ['none', 'line', 'both'].map((id) => ({ id })),
    });
  },
};

const onePair: Kind = {
  id: 'one-pair',
  topics: ['dead'],
  ask: (dice) => {
    const read = dice.pick('read', ['line-neutral', 'neutral-earth', 'all-three']);
    return inOrder({
      values: { read },
      source: published('HSG85'),
      answer: read === 'all-three' ? 'dead' : 'cant-tell',
      choices: ['dead', 'live', 'cant-tell'].map((id) => ({ id })),
    });
  },
};

const PROVING = ['isolate', 'lock', 'prove-before', 'test-every-pair', 'prove-after'] as const;

const orderOfProving: Kind = {
  id: 'order-of-proving',
  topics: ['dead'],
  ask: (dice: Dice) => {
    const drawn = dice.shuffle('parts', PROVING);
    // The right order as the first one shown would ask nothing.
    const isRight = drawn.every((part, i) => part === PROVING[i]);
    return {
      way: 'order',
      values: {},
      source: published('HSE GS38, HSG85'),
      parts: isRight ? [...drawn].reverse() : drawn,
      answer: PROVING,
    };
  },
};

/** What an insulation tester shows of a sound cable, MΩ, and of the electronics between the live conductors. */
const LOW_WHERE = ['electronics', 'cable', 'to-earth', 'good'] as const;

const lowLineNeutral: Kind = {
  id: 'low-line-neutral',
  topics: ['insulation'],
  ask: (dice) => {
    const answer = dice.pick('answer', LOW_WHERE);
    const good = (name: string): number => dice.figure(name, 210, 480, 10);
    const bad = (name: string): number => dice.figure(name, 0.02, 0.6, 0.02);
    // With the unit connected its electronics make the reading between line and neutral low, whatever else there is.
    const isConnected = answer === 'electronics' || (answer === 'to-earth' && dice.pick('on', [true, false]));
    return inOrder({
      values: {
        connected: isConnected,
        lineNeutral: isConnected || answer === 'cable' ? bad('line-neutral') : good('line-neutral'),
        toEarth: answer === 'to-earth' ? bad('to-earth') : good('to-earth'),
        least: minimumInsulation(230, 'other').minimum / 1e6,
      },
      source: published(`${RULES} Table 64 and 643.3.3`),
      answer,
      choices: LOW_WHERE.map((id) => ({ id })),
    });
  },
};

export const PROTECTION_KINDS: readonly Kind[] = [
  insulationVolts,
  insulationLeast,
  insulationParallel,
  residualTime,
  risingAlternating,
  risingDirect,
  halfWave,
  mayTripAtHalf,
  directTime,
  whoTrips,
  howSoon,
  whichPole,
  onePair,
  orderOfProving,
  lowLineNeutral,
];
