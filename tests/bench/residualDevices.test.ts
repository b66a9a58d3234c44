/** What residual devices and d.c. detectors do on the bench, row by row, whatever the spread of sound ones. */
import { describe, expect, test } from 'vitest';
import type { AnyReading } from '../../src/bench/reading.ts';
import { residualTime } from '../../src/bench/sensors.ts';
import { DEVICE_TYPES, type DeviceType } from '../../src/laws/residualLimits.ts';
import type { ResidualProtection } from '../../src/unit/design.ts';
import { benchWith, CHARGE, doing, read, type Wanted } from './build.ts';

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];

const own = (type: DeviceType, by: 'contactor' | 'breaker'): Wanted => ({
  sheet: { residual: { type, rated: 0.03, by, direct: null } },
});
const MONITOR: ResidualProtection = { type: null, rated: null, by: null, direct: 'monitoring' };
const upstream = (delay: 'general' | 'S', rated: number): Wanted => ({
  site: { circuit: { residualDevice: { type: 'A', rated, delay, poles: 2 } } },
  sheet: { residual: MONITOR },
});

type Waveform =
  | 'sinusoidal'
  | 'half-wave-positive'
  | 'half-wave-negative'
  | 'smooth-dc-positive'
  | 'smooth-dc-negative';

function fixed(wanted: Wanted, seed: number, waveform: Waveform, amps: number, seconds?: number): AnyReading {
  const world = benchWith({ ...wanted, seed });
  doing(world, ...CHARGE);
  return read(world, {
    op: 'measure',
    quantity: 'residual',
    line: 'L1',
    waveform,
    mode: 'fixed',
    amps,
    ...(seconds === undefined ? {} : { seconds }),
  });
}

const TIMES = 'IEC 61008-1, break times and non-actuating times';
const ms = (least: number, greatest: number) => ({ least, greatest });

describe('alternating current', () => {
  test.each([
    { name: 'general, 0.5', device: own('A', 'contactor'), amps: 0.015, time: null, source: TIMES },
    { name: 'general, 1', device: own('A', 'contactor'), amps: 0.03, time: ms(0, 300), source: TIMES },
    { name: 'general, 2', device: own('A', 'contactor'), amps: 0.06, time: ms(0, 150), source: TIMES },
    { name: 'general, 5', device: own('A', 'contactor'), amps: 0.15, time: ms(0, 40), source: TIMES },
    {
      name: 'general on its own breaker, 1',
      device: own('F', 'breaker'),
      amps: 0.03,
      time: ms(0, 300),
      source: TIMES,
    },
    {
      name: 'general on its own breaker, 5',
      device: own('B', 'breaker'),
      amps: 0.15,
      time: ms(0, 40),
      source: TIMES,
    },
    {
      name: 'upstream general, 0.5',
      device: upstream('general', 0.03),
      amps: 0.015,
      time: null,
      source: TIMES,
    },
    {
      name: 'upstream general, 1',
      device: upstream('general', 0.03),
      amps: 0.03,
      time: ms(0, 300),
      source: TIMES,
    },
    { name: 'S, 0.5', device: upstream('S', 0.1), amps: 0.05, time: null, source: TIMES },
    {
      name: 'S, 1',
      device: upstream('S', 0.1),
      amps: 0.1,
      time: ms(130, 500),
      source: `${TIMES}, from memory`,
    },
    {
      name: 'S, 2',
      device: upstream('S', 0.1),
      amps: 0.2,
      time: ms(60, 200),
      source: `${TIMES}, from memory`,
    },
    {
      name: 'S, 5',
      device: upstream('S', 0.1),
      amps: 0.5,
      time: ms(50, 150),
      source: `${TIMES}, from memory`,
    },
  ])('$name × the rating ($source)', ({ device, amps, time }) => {
    for (const seed of SEEDS) {
      const { tripMs, trippedWhat } = fixed(device, seed, 'sinusoidal', amps, 2);
      if (time === null) expect(trippedWhat).toBe('none');
      else {
        // The instrument's own 2 ms.
        expect(tripMs).toBeGreaterThanOrEqual(time.least - 2);
        expect(tripMs).toBeLessThanOrEqual(time.greatest + 2);
      }
    }
  });
});

describe('half-waves of 1.4 times the rating, within 300 ms (IEC 61008-1, 9.9)', () => {
  test.each(['A', 'F', 'B'] as const)('type %s answers to both polarities', (type) => {
    for (const waveform of ['half-wave-positive', 'half-wave-negative'] as const)
      for (const seed of SEEDS)
        expect(fixed(own(type, 'contactor'), seed, waveform, 0.042).tripMs).toBeLessThanOrEqual(300);
  });

  test('no type answers below 0.35 of the rating', () => {
    for (const type of DEVICE_TYPES)
      expect(fixed(own(type, 'contactor'), 7, 'half-wave-positive', 0.0104).trippedWhat).toBe('none');
  });

  test('type AC answers to none', () => {
    expect(fixed(own('AC', 'contactor'), 7, 'half-wave-positive', 0.042).trippedWhat).toBe('none');
    expect(fixed(own('AC', 'contactor'), 7, 'half-wave-negative', 0.3).trippedWhat).toBe('none');
  });
});

describe('a d.c. detector and half-waves: it feels the mean, 0.637 of the r.m.s. value', () => {
  const detector: Wanted = { site: { circuit: { residualDevice: null } }, sheet: { residual: MONITOR } };
  test.each([
    { amps: 0.0046, acts: false, source: 'mean 2.9 mA: IEC 62955:2018 5.3.4' },
    { amps: 0.0095, acts: true, source: 'mean 6.05 mA: IEC 62955:2018 5.3.3' },
  ])('$amps A r.m.s. ($source)', ({ amps, acts }) => {
    for (const seed of SEEDS)
      for (const waveform of ['half-wave-positive', 'half-wave-negative'] as const)
        expect(fixed(detector, seed, waveform, amps, 10).trippedWhat).toBe(acts ? 'unit' : 'none');
  });

  test('a half-wave against the d.c. that stands takes from it', () => {
    const world = benchWith(detector);
    doing(world, ...CHARGE, { op: 'vehicle', leakage: { ac: 0, dc: 0.003, line: 'L1' } });
    const reading = (waveform: Waveform) =>
      read(world, { op: 'measure', quantity: 'residual', waveform, mode: 'fixed', amps: 0.006, seconds: 10 });
    expect(reading('half-wave-negative').trippedWhat).toBe('none');
    expect(reading('half-wave-positive').trippedWhat).toBe('unit');
  });
});

describe('d.c. detector (IEC 62955:2018)', () => {
  const detector: Wanted = { sheet: { residual: MONITOR } };
  test.each([
    { amps: 0.003, greatest: null, source: '5.3.4' },
    { amps: 0.006, greatest: 10_000, source: 'Table 2' },
    { amps: 0.06, greatest: 300, source: 'Table 2' },
    { amps: 0.2, greatest: 100, source: 'Table 2' },
  ])('$amps A of smooth d.c. ($source)', ({ amps, greatest }) => {
    for (const seed of SEEDS)
      for (const waveform of ['smooth-dc-positive', 'smooth-dc-negative'] as const) {
        const { tripMs, trippedWhat } = fixed(detector, seed, waveform, amps, 10);
        if (greatest === null) expect(trippedWhat).toBe('none');
        else expect(tripMs).toBeLessThanOrEqual(greatest + 2);
      }
  });

  test.each([
    { amps: 0.03, seconds: 10, source: 'Table 3, 9.9.3' },
    { amps: 0.06, seconds: 0.3, source: 'Table 3' },
    { amps: 0.15, seconds: 0.08, source: 'Table 3' },
  ])('does not act on $amps A a.c. for $seconds s ($source)', ({ amps, seconds }) => {
    for (const seed of SEEDS)
      expect(fixed(detector, seed, 'sinusoidal', amps, seconds).trippedWhat).toBe('none');
  });

  test('rising from 2 to 6 mA in 30 s it acts above 3 and by 6 mA, both ways (9.9.2.1)', () => {
    for (const seed of SEEDS)
      for (const waveform of ['smooth-dc-positive', 'smooth-dc-negative'] as const) {
        const world = benchWith({ ...detector, seed });
        doing(world, ...CHARGE);
        const { value, qualifier, uncertainty } = read(world, {
          op: 'measure',
          quantity: 'residual',
          waveform,
          mode: 'ramp',
        });
        expect(qualifier).toBeNull();
        expect(value).toBeGreaterThan(0.003);
        expect((value ?? 1) - (uncertainty ?? 0)).toBeLessThanOrEqual(0.006);
      }
  });
});

describe('type B on smooth d.c. (BS EN 62423, from memory)', () => {
  test.each([
    { multiple: 0.5, greatest: null },
    { multiple: 2, greatest: 300 },
    { multiple: 4, greatest: 150 },
    { multiple: 10, greatest: 40 },
  ])('$multiple × the rating', ({ multiple, greatest }) => {
    for (const seed of SEEDS)
      for (const waveform of ['smooth-dc-positive', 'smooth-dc-negative'] as const) {
        const { tripMs, trippedWhat } = fixed(own('B', 'breaker'), seed, waveform, 0.03 * multiple, 10);
        if (greatest === null) expect(trippedWhat).toBe('none');
        else expect(tripMs).toBeLessThanOrEqual(greatest + 2);
      }
  });

  test('no other type answers to smooth d.c.', () => {
    for (const type of ['AC', 'A', 'F'] as const)
      expect(fixed(own(type, 'contactor'), 7, 'smooth-dc-positive', 0.06, 10).trippedWhat).toBe('none');
  });
});

describe('smooth d.c. that stands while nothing takes it away', () => {
  /** The rated current on top of standing d.c.; no d.c. detector acts. */
  const onTopOf = (type: DeviceType, dc: number) => {
    const world = benchWith(own(type, 'contactor'));
    doing(world, ...CHARGE, { op: 'vehicle', leakage: { ac: 0, dc, line: 'L1' } });
    return read(world, {
      op: 'measure',
      quantity: 'residual',
      waveform: 'sinusoidal',
      mode: 'fixed',
      amps: 0.03,
    }).trippedWhat;
  };
  test.each([
    { type: 'A', dc: 0.006, trips: true, source: 'BS 7671:2018+A2:2022 531.3.3: 6 mA' },
    { type: 'A', dc: -0.006, trips: true, source: 'BS 7671:2018+A2:2022 531.3.3: 6 mA' },
    { type: 'A', dc: 0.02, trips: false, source: 'above what type A bears' },
    { type: 'F', dc: 0.01, trips: true, source: 'BS 7671:2018+A2:2022 531.3.3: 10 mA' },
    { type: 'F', dc: 0.02, trips: false, source: 'above what type F bears' },
    { type: 'AC', dc: 0.006, trips: false, source: 'BS 7671:2018+A2:2022 531.3.3: type AC bears none' },
    { type: 'B', dc: 0.012, trips: true, source: 'BS EN 62423, from memory: 0.4 of the rating' },
  ] as const)('type $type with $dc A ($source)', ({ type, dc, trips }) => {
    expect(onTopOf(type, dc)).toBe(trips ? 'unit' : 'none');
  });

  test('a type A device upstream is blinded too, and acts again once the d.c. is gone', () => {
    const world = benchWith({
      ...upstream('general', 0.03),
      faults: [{ fault: 'direct-detector-dead', values: {} }],
    });
    const rated = () =>
      read(world, { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'fixed', amps: 0.03 });
    doing(world, ...CHARGE, { op: 'vehicle', leakage: { ac: 0, dc: 0.02, line: 'L1' } });
    expect(rated().trippedWhat).toBe('none');
    doing(world, { op: 'vehicle', leakage: null });
    expect(rated().trippedWhat).toBe('upstream');
  });

  test('with the detector at work the d.c. is switched off before it can blind', () => {
    const world = benchWith(upstream('general', 0.03));
    doing(
      world,
      ...CHARGE,
      { op: 'vehicle', leakage: { ac: 0, dc: 0.02, line: 'L1' } },
      { op: 'wait', seconds: 10 },
    );
    expect(world.plant.contactor).toBe('open');
    expect(world.indicator).toBe('tripped');
  });
});

test('of two general devices in series either may open; a delayed one upstream stays closed', () => {
  const inSeries = (by: 'contactor' | 'breaker', delay: 'general' | 'S', rated: number): Wanted => ({
    site: { circuit: { residualDevice: { type: 'A', rated, delay, poles: 2 } } },
    sheet: { residual: { type: 'A', rated: 0.03, by, direct: null } },
  });
  const opened = SEEDS.map(
    (seed) => fixed(inSeries('breaker', 'general', 0.03), seed, 'sinusoidal', 0.03).trippedWhat,
  );
  expect(new Set(opened)).toEqual(new Set(['unit', 'upstream']));
  for (const by of ['contactor', 'breaker'] as const)
    for (const seed of SEEDS)
      expect(fixed(inSeries(by, 'S', 0.1), seed, 'sinusoidal', 0.15).trippedWhat).toBe('unit');
});

test('a blinded or absent answer is no time at all', () => {
  const device = { type: 'A', rated: 0.03, delay: 'general' } as const;
  const felt = { alternating: 0.03, halfWave: 0, direct: 0 };
  expect(residualTime(device, 0.022, felt)).toBeLessThan(0.3);
  expect(residualTime(device, 0.022, { ...felt, direct: 0.0061 })).toBe(Infinity);
  expect(residualTime(device, Infinity, felt)).toBe(Infinity);
});

test('through whatever loop a test current is what was set: a device takes the same time', () => {
  const behind = (earthing: 'TN-S' | 'TT', electrodeResistance: number | null): Wanted => ({
    sheet: { residual: MONITOR },
    site: {
      earthing,
      electrodeResistance,
      circuit: { residualDevice: { type: 'A', rated: 0.3, delay: 'general', poles: 2 } },
    },
  });
  // 300 mA through 80 Ω lose 24 of 236 V: a resistor for 236 V alone would let 272 mA flow, and the device take longer.
  const [short, long] = [behind('TN-S', null), behind('TT', 80)].map(
    (wanted) => fixed(wanted, 3, 'sinusoidal', 0.3).tripMs,
  );
  expect(short).toBeGreaterThan(0);
  // 2 ms either way are the instrument's own.
  expect(Math.abs((long ?? 0) - (short ?? 0))).toBeLessThanOrEqual(4);
});
