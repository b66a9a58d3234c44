/** From volts to bands, at and beside every edge: what is published with its source, what is the design's own named so. */
import { describe, expect, test } from 'vitest';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import type { AtTheUnit } from '../../src/unit/sense.ts';
import { isPowered, sense } from '../../src/unit/sense.ts';
import { sameSensed, UNPLUGGED } from '../../src/unit/sensed.ts';
import { designOf, SHEET } from '../bench/build.ts';

/** Supplied, nothing plugged in. */
const QUIET: AtTheUnit = {
  supply: { L1: 230 },
  pilotHigh: 12,
  pilotLow: 12,
  oscillating: false,
  proximity: 5,
  anyPoleClosed: false,
  plug: 'out',
  earth: 0,
  peak: false,
  limit: null,
  throughSensor: {},
  ownCurrent: {},
};

const sensedBy =
  (sheet: Partial<UnitSheet> = {}, design: Partial<UnitDesign> = {}) =>
  (change: Partial<AtTheUnit>) =>
    sense({ ...designOf(sheet), ...design }, { ...QUIET, ...change });
const usual = sensedBy();

test('supplied and with nothing plugged in, a sound unit feels nothing out of order', () => {
  expect(usual({})).toEqual(UNPLUGGED);
});

describe('the supply (150, 100, 180 and 270 V are design choices, outside 216.2 to 253 V of ESQCR 2002 reg. 27)', () => {
  test.each([
    [0, false],
    [149.9, false],
    [150, true],
    [230, true],
  ])('%d V on L1 runs the electronics: %s', (L1, runs) => {
    expect(isPowered({ ...QUIET, supply: { L1 } })).toBe(runs);
  });

  test('only L1 feeds them', () => {
    expect(isPowered({ ...QUIET, supply: { L2: 230, L3: 230 } })).toBe(false);
  });

  test.each([
    [179.9, 'low'],
    [180, 'within'],
    [216.2, 'within'],
    [253, 'within'],
    [270, 'within'],
    [270.1, 'high'],
  ] as const)('%d V is %s, on any line', (volts, band) => {
    expect(usual({ supply: { L1: volts } }).supply).toBe(band);
    expect(usual({ supply: { L1: 230, L2: 230, L3: volts } }).supply).toBe(band);
  });

  test.each([
    [99.9, ['L2'], 'within'],
    [100, [], 'low'],
  ] as const)('%d V left on L2: missing %j, the rest %s', (L2, missing, supply) => {
    expect(usual({ supply: { L1: 230, L2, L3: 230 } })).toMatchObject({ missing, supply });
  });

  test('a unit that watches its own line alone does not miss another', () => {
    const own = sensedBy({}, { watchedLines: 'own' });
    expect(own({ supply: { L1: 230, L2: 0, L3: 230 } }).missing).toEqual([]);
    expect(own({ supply: { L1: 0, L2: 230, L3: 230 } }).missing).toEqual(['L1']);
  });
});

describe('the pilot: windows of IEC 61851-1:2017 Table A.4, thresholds inside the bands that it leaves', () => {
  test.each([
    [13, 'A'],
    [11, 'A'],
    [10, 'B'],
    [8, 'B'],
    [7, 'C'],
    [5, 'C'],
    [4, 'D'],
    [2, 'D'],
    [1, 'E'],
    [0, 'E'],
    [-1, 'E'],
    [-2, 'invalid'],
    [-10, 'invalid'],
    [-11, 'F'],
    [-13, 'F'],
  ] as const)('%d V: %s', (pilotHigh, band) => {
    expect(usual({ pilotHigh }).pilot).toBe(band);
  });

  test('a threshold belongs to the state above it', () => {
    const { thresholds } = designOf();
    const bands = thresholds.map((pilotHigh) => usual({ pilotHigh }).pilot);
    expect(bands).toEqual(['A', 'B', 'C', 'D', 'E', 'invalid']);
  });

  test('one that does not act on a short takes it for a request, and nothing else', () => {
    const deaf = sensedBy({}, { shortRule: 'ignored' });
    const bands = [12, 9, 3, 0, -5].map((pilotHigh) => deaf({ pilotHigh }).pilot);
    expect(bands).toEqual(['A', 'B', 'D', 'C', 'invalid']);
  });

  test.each([
    [-13.1, 'wrong'],
    [-13, 'sound'],
    [-12, 'sound'],
    [-11, 'sound'],
    [-10.9, 'wrong'],
    // A shorted diode: −8.8 V in B, −5.6 V in C.
    [-8.8, 'wrong'],
    [-5.6, 'wrong'],
  ] as const)('a low half of %d V is %s: −13 to −11 V with a diode (Table A.4)', (pilotLow, lowHalf) => {
    expect(usual({ oscillating: true, pilotHigh: 9, pilotLow }).lowHalf).toBe(lowHalf);
  });

  test('steady, it has no low half, whatever the voltage', () => {
    for (const pilotLow of [12, 9, -12]) expect(usual({ pilotLow }).lowHalf).toBe('none');
  });
});

describe('the proximity contact of a socket-outlet (IEC 61851-1:2017 Table B.2)', () => {
  const socket = sensedBy({ outlet: 'socket' });
  /** 5 V behind 1 kΩ: V = 5 R / (R + 1000). */
  const across = (ohms: number) => (ohms === Infinity ? 5 : (5 * ohms) / (ohms + 1000));

  /** The ends from a thousandth of an ohm inside, since the way through volts rounds. */
  test.each([
    { reading: 'invalid', ohms: [0, 30, 59.999] },
    { reading: 63, ohms: [80.001, 100, 139.999] },
    { reading: 32, ohms: [164.001, 220, 307.999] },
    { reading: 20, ohms: [400.001, 680, 935.999] },
    { reading: 13, ohms: [1100.001, 1500, 2459.999] },
    { reading: 'none', ohms: [4500.001, 100_000, Infinity] },
  ])('$reading: $ohms Ω', ({ reading, ohms }) => {
    for (const one of ohms) expect(socket({ proximity: across(one) }).proximity, `${one} Ω`).toBe(reading);
  });

  /** In the gaps, which are the designer’s, the lower current is the safe one. */
  test.each([
    [60.001, 63],
    [79.999, 63],
    [140.001, 32],
    [163.999, 32],
    [308.001, 20],
    [399.999, 20],
    [936.001, 13],
    [1099.999, 13],
    [2460.001, 'none'],
    [4499.999, 'none'],
  ] as const)('%d Ω, between two ranges: %s', (ohms, reading) => {
    expect(socket({ proximity: across(ohms) }).proximity).toBe(reading);
  });

  test('shorted or at a negative voltage it is invalid', () => {
    expect(socket({ proximity: 0 }).proximity).toBe('invalid');
    expect(socket({ proximity: -0.1 }).proximity).toBe('invalid');
  });

  test('a tethered unit reads none, and one that ignores codings takes any cable for the largest', () => {
    expect(usual({ proximity: across(220) }).proximity).toBe('none');
    const ignoring = sensedBy({ outlet: 'socket' }, { codingRule: 'ignored' });
    expect([0, across(1500), 5].map((proximity) => ignoring({ proximity }).proximity)).toEqual([63, 63, 63]);
  });
});

/** IEC 61851-1:2017 Annex B: the current that a coding stands for; how much above it is borne is the sheet's. */
describe('a vehicle that draws more than its cable is coded for', () => {
  const sheet: Partial<UnitSheet> = { outlet: 'socket', overCode: { ...SHEET.overCode, margin: 0.1 } };
  const socket = sensedBy(sheet);
  const [ohms32, ohms63] = [220, 100].map((ohms) => (5 * ohms) / (ohms + 1000)) as [number, number];
  const three = { supply: { L1: 230, L2: 230, L3: 230 } };

  test.each([
    ['32 A and a tenth', { ownCurrent: { L1: 35.2 } }, false],
    ['more', { ownCurrent: { L1: 35.3 } }, true],
    ['one line of three more', { ...three, ownCurrent: { L1: 10, L2: 35.3, L3: 10 } }, true],
    ['each line of three as much', { ...three, ownCurrent: { L1: 35.2, L2: 35.2, L3: 35.2 } }, false],
  ] as const)('coded 32 A: %s', (_, change, over) => {
    expect(socket({ proximity: ohms32, ...change }).overCode).toBe(over);
  });

  test('100 Ω stand for 70 A on one phase and 63 A on three', () => {
    const drawing = (amps: number, more: Partial<AtTheUnit> = {}) =>
      socket({ proximity: ohms63, ownCurrent: { L1: amps }, ...more }).overCode;
    expect([drawing(77), drawing(77.1)]).toEqual([false, true]);
    expect([drawing(69.3, three), drawing(69.4, three)]).toEqual([false, true]);
  });

  test('a tethered unit reads no coding, and where no cable is read none is drawn over', () => {
    expect(sensedBy({ ...sheet, outlet: 'tethered' })({ ownCurrent: { L1: 99 } }).overCode).toBe(false);
    expect(socket({ proximity: 5, ownCurrent: { L1: 99 } }).overCode).toBe(false);
  });
});

describe('the open-PEN measure (BS 7671:2018+A2:2022 722.411.4.1)', () => {
  const window = sensedBy({ openPen: 'voltage-window' });

  test.each([
    [206.9, 'outside'],
    [207, 'within'],
    [230, 'within'],
    [253, 'within'],
    [253.1, 'outside'],
    // A line lost altogether, and a neutral that has gone the whole way to another line.
    [0, 'outside'],
    [400, 'outside'],
  ] as const)('by line to neutral: %d V is %s 207 to 253 V (iv)', (L1, pen) => {
    expect(window({ supply: { L1 } }).pen).toBe(pen);
    // It does not look at the earth.
    expect(window({ supply: { L1 }, earth: 100 }).pen).toBe(pen);
  });

  test.each(['earth-sensing', 'other'] as const)(
    '%s: 70 V to true earth is borne, more is not (iii)',
    (openPen) => {
      const sensing = sensedBy({ openPen });
      expect([0, 70, 70.1, 230].map((earth) => sensing({ earth }).pen)).toEqual([
        'within',
        'within',
        'outside',
        'outside',
      ]);
      expect(sensing({ supply: { L1: 200 } }).pen).toBe('within');
    },
  );

  test('without a measure, or with one that senses nothing, all is within', () => {
    const bad = { supply: { L1: 300 }, earth: 200 };
    expect(usual(bad).pen).toBe('within');
    for (const openPen of ['voltage-window', 'earth-sensing'] as const)
      expect(sensedBy({ openPen }, { openPen: { senses: false, opensEarth: true } })(bad).pen).toBe('within');
  });
});

describe('what the service leaves, in whole amperes of its most loaded line', () => {
  const of60 = sensedBy({ serviceLimit: 60 });

  test.each([
    { others: 0, left: 60 },
    { others: 45.7, left: 14 },
    // The 6 A that can just be offered (IEC 61851-1:2017 Table A.7), and a hair under it.
    { others: 54, left: 6 },
    { others: 54.01, left: 5 },
    { others: 60, left: 0 },
    { others: 75, left: 0 },
  ])('$others A in the house of 60 A: $left A', ({ others, left }) => {
    expect(of60({ throughSensor: { L1: others }, ownCurrent: { L1: 0 } }).limit).toBe(left);
  });

  test('its own share is taken off, and the most loaded line decides', () => {
    expect(of60({ throughSensor: { L1: 50 }, ownCurrent: { L1: 20 } }).limit).toBe(30);
    expect(
      of60({ throughSensor: { L1: 30, L2: 40, L3: 10 }, ownCurrent: { L1: 10, L2: 10, L3: 10 } }).limit,
    ).toBe(30);
    expect(of60({ throughSensor: { L1: 20 } }).limit).toBe(40);
  });

  test('what the house feeds back is not offered on top of the service', () => {
    expect(of60({ throughSensor: { L1: -30 }, ownCurrent: { L1: 0 } }).limit).toBe(60);
  });

  test('a sensor the wrong way round takes import for export', () => {
    const reversed = sensedBy({ serviceLimit: 60 }, { serviceSensor: 'reversed' });
    expect(reversed({ throughSensor: { L1: 40 }, ownCurrent: { L1: 0 } }).limit).toBe(60);
    expect(reversed({ throughSensor: { L1: -40 }, ownCurrent: { L1: 0 } }).limit).toBe(20);
  });

  test('the lesser of it and load management', () => {
    const felt = { throughSensor: { L1: 40 }, ownCurrent: { L1: 0 } };
    expect([null, 10, 20, 32].map((limit) => of60({ ...felt, limit }).limit)).toEqual([20, 10, 20, 20]);
    // Without a sensor of its own, what it is told.
    expect([null, 10].map((limit) => usual({ ...felt, limit }).limit)).toEqual([null, 10]);
  });
});

describe('what it is told is passed on', () => {
  test('the linked contact, the plug and the hours', () => {
    expect(usual({ anyPoleClosed: true }).linkedContact).toBe('closed');
    expect((['out', 'in', 'held'] as const).map((plug) => usual({ plug }).plug)).toEqual([
      'out',
      'in',
      'held',
    ]);
    expect(usual({ peak: true }).peak).toBe(true);
  });

  test.each([
    { supply: 'low' },
    { missing: ['L2'] },
    { pilot: 'B' },
    { lowHalf: 'sound' },
    { proximity: 32 },
    { linkedContact: 'closed' },
    { plug: 'in' },
    { pen: 'outside' },
    { peak: true },
    { limit: 10 },
  ] as const)('a change of it is told: %j', (change) => {
    expect(sameSensed(UNPLUGGED, { ...UNPLUGGED })).toBe(true);
    expect(sameSensed(UNPLUGGED, { ...UNPLUGGED, ...change })).toBe(false);
  });
});
