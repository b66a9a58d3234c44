/**
 * Every tabled time of residual current devices and d.c. detectors on the bench, over the spread of sound ones: currents
 * of an instrument where one can drive them, and a fault of so many amperes above that.
 */
import { describe, expect, test } from 'vitest';
import { leadsOn, modulus, seenBy } from '../../src/bench/port.ts';
import { residualThrough } from '../../src/bench/sensors.ts';
import { advance, move } from '../../src/bench/settle.ts';
import type { World } from '../../src/bench/world.ts';
import { DIRECT, DIRECT_BAND } from '../../src/laws/residualLimits.ts';
import {
  DETECTOR_HOLDS,
  DETECTOR_RISES,
  DETECTOR_TIMES,
  type DeviceTime,
  MEAN_OF_HALF_WAVE,
  RATED_DEVICES,
  type RatedDevice,
} from '../references/deviceTimes.ts';
import { benchWith, CHARGE, doing, read, type Wanted } from './build.ts';

const SEEDS = [1, 2, 3];
type Waveform = 'sinusoidal' | 'half-wave' | 'smooth';

/** A stiff supply behind a breaker that lets hundreds of amperes through for seconds: residual devices alone decide. */
const STIFF: NonNullable<Wanted['site']> = {
  loopImpedance: 0.02,
  neutralImpedance: 0.02,
  otherLoads: [],
  circuit: {
    length: 1,
    lineArea: 16,
    protectiveArea: 16,
    breaker: { type: 'D', rating: 63, breakingCapacity: 10_000, poles: 2 },
  },
};
const NO_DEVICE = { type: null, rated: null, by: null, direct: null } as const;
const MONITOR = { ...NO_DEVICE, direct: 'monitoring' } as const;

/** The device at the origin, alone. */
const upstream = ({ rated, delay }: RatedDevice): Wanted => ({
  site: { ...STIFF, circuit: { ...STIFF.circuit, residualDevice: { type: 'A', rated, delay, poles: 2 } } },
  sheet: { residual: NO_DEVICE },
});
/** A device inside the unit, which the contactor or its own breaker opens. */
const own = (rated: number, by: 'contactor' | 'breaker'): Wanted => ({
  site: STIFF,
  sheet: { residual: { type: 'A', rated, by, direct: null } },
});

/** The test current in the outlet. A current against the other half of the wave, or the other way round, is negative. */
function drive(world: World, waveform: Waveform, amps: number): void {
  const { open, impedance } = seenBy(leadsOn(world, 'outlet.L1', 'outlet.PE'));
  const idle = { at: 'outlet', line: 'L1', to: 'PE', resistance: null, direct: 0, halfWave: 0 } as const;
  move(world, {
    test: {
      sinusoidal: { ...idle, resistance: modulus(open.mains) / amps - modulus(impedance) },
      'half-wave': { ...idle, halfWave: amps },
      smooth: { ...idle, direct: amps },
    }[waveform],
  });
  // What the row says does flow, to a hundredth or to the leakage of the filters.
  const felt = residualThrough(world.wiring, world.solution, world.installation, 'origin');
  const flows = { sinusoidal: felt.alternating, 'half-wave': felt.halfWave, smooth: felt.direct }[waveform];
  expect(Math.abs(flows - amps)).toBeLessThanOrEqual(Math.max(0.01 * Math.abs(amps), 0.0001));
}

/** Milliseconds from the moment the current flows until something has opened, or Infinity after `hold` ms. */
function opensAfter(world: World, waveform: Waveform, amps: number, hold: number): number {
  const began = world.timeline.now;
  drive(world, waveform, amps);
  const opened = ({ plant }: World) =>
    plant.contactor === 'open' || plant.upstream === 'tripped' || plant.unitBreaker === 'tripped';
  advance(world, began + 1000 * hold, opened);
  expect(world.plant.breaker).toBe('closed');
  return opened(world) ? (world.timeline.now - began) / 1000 : Infinity;
}

function keeps(
  wanted: Wanted,
  waveform: Waveform,
  { amps, least, greatest }: DeviceTime,
  sign: 1 | -1 = 1,
): void {
  for (const seed of SEEDS) {
    const world = benchWith({ ...wanted, seed });
    doing(world, ...CHARGE);
    expect(world.indicator).toBe('charging');
    const time = opensAfter(world, waveform, sign * amps, Math.min(20_000, 2 * (greatest ?? least)));
    if (least === Infinity) expect(time).toBe(Infinity);
    else expect(time).toBeGreaterThanOrEqual(least);
    if (greatest !== null) expect(time).toBeLessThanOrEqual(greatest);
  }
}

describe.each(RATED_DEVICES)('residual device of $name, at the origin', (device) => {
  test.each(device.alternating)('a.c. of $current: $least to $greatest ms ($source)', (row) => {
    keeps(upstream(device), 'sinusoidal', row);
  });
  test.each(device.pulsating)('half-wave of $current: $least to $greatest ms ($source)', (row) => {
    keeps(upstream(device), 'half-wave', row);
    keeps(upstream(device), 'half-wave', row, -1);
  });
});

describe.each([
  { by: 'contactor', rated: 0.03 },
  { by: 'breaker', rated: 0.03 },
] as const)('30 mA device inside the unit, opening by its $by', ({ by, rated }) => {
  const device = RATED_DEVICES.find((one) => one.rated === rated);
  test.each(device?.alternating ?? [])('a.c. of $current: $least to $greatest ms ($source)', (row) => {
    keeps(own(rated, by), 'sinusoidal', row);
  });
  test.each(device?.pulsating ?? [])('half-wave of $current: $least to $greatest ms ($source)', (row) => {
    keeps(own(rated, by), 'half-wave', row);
  });
});

describe('d.c. detector', () => {
  const detector: Wanted = { site: STIFF, sheet: { residual: MONITOR } };

  test.each(DETECTOR_TIMES)('smooth d.c. of $current: $least to $greatest ms ($source)', (row) => {
    keeps(detector, 'smooth', row);
    keeps(detector, 'smooth', row, -1);
  });

  test.each(DETECTOR_HOLDS)('a.c. of $current is borne for $least ms ($source)', (row) => {
    keeps(detector, 'sinusoidal', row);
  });

  test.each(DETECTOR_RISES)('$current, rising slowly: $least to $greatest A ($source)', (row) => {
    const band = {
      smooth: DIRECT_BAND,
      'rectified, two-phase': DIRECT.rectifiedTwoPhase,
      'rectified, three-phase': DIRECT.rectifiedThreePhase,
    }[row.current];
    expect(band).toEqual({ least: row.least, greatest: row.greatest });
    if (row.current !== 'smooth') return;
    for (const seed of SEEDS)
      for (const waveform of ['smooth-dc-positive', 'smooth-dc-negative'] as const) {
        const world = benchWith({ ...detector, seed });
        doing(world, ...CHARGE);
        const { value, uncertainty } = read(world, {
          op: 'measure',
          quantity: 'residual',
          waveform,
          mode: 'ramp',
        });
        expect(value).toBeGreaterThan(row.least);
        expect((value ?? 1) - (uncertainty ?? 0)).toBeLessThanOrEqual(row.greatest);
      }
  });
});

describe('a half-wave through a d.c. detector counts by its mean', () => {
  test(`which is ${MEAN_OF_HALF_WAVE.share} of its r.m.s. (${MEAN_OF_HALF_WAVE.source})`, () => {
    const steps = 10_000;
    const wave = Array.from({ length: steps }, (_, i) => Math.max(0, Math.sin((2 * Math.PI * i) / steps)));
    const mean = wave.reduce((sum, x) => sum + x, 0) / steps;
    const square = wave.reduce((sum, x) => sum + x * x, 0) / steps;
    expect(mean / Math.sqrt(square)).toBeCloseTo(MEAN_OF_HALF_WAVE.share, 3);
  });

  test.each([0.0035, 0.0045, 0.0055])(
    'a detector that acts from %d A on acts from that over 0.637',
    (pickup) => {
      const from = pickup / MEAN_OF_HALF_WAVE.share;
      const acts = (amps: number): boolean => {
        const world = benchWith({
          site: STIFF,
          sheet: { residual: MONITOR },
          design: { directPickup: pickup },
        });
        doing(world, ...CHARGE);
        return opensAfter(world, 'half-wave', amps, 20_000) < Infinity;
      };
      expect([0.998 * from, 1.002 * from, -0.998 * from, -1.002 * from].map(acts)).toEqual([
        false,
        true,
        false,
        true,
      ]);
    },
  );
});
