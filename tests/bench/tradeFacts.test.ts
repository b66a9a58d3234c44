/**
 * What people of the trade find with a sound unit: common practice, no source. Check values for the tests alone.
 */

import { describe, expect, test } from 'vitest';
import { isOf } from '../../src/bench/reading.ts';
import { measuredLoopLimit } from '../../src/laws/overcurrent.ts';
import { verify } from '../../src/scenario/verify.ts';
import { scenarioOf } from '../scenario/build.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, PLUG_IN, read, THREE_PHASE } from './build.ts';

const SOURCE = 'common practice, no source';

describe(SOURCE, () => {
  test('PE through a sound unit and a few metres of cable is under about 0.1 Ω, 0.08 Ω say', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const world = benchWith({ seed, site: { circuit: { length: 10 } } });
      doing(world, ...MAKE_DEAD);
      const reading = read(world, {
        op: 'measure',
        quantity: 'continuity',
        between: ['origin.PE', 'outlet.PE'],
      });
      // The sum is 31 + 17 mΩ and contacts; the shown value has its own 0.02 Ω and 3 %.
      expect(Math.abs((reading.value ?? 9) - 0.08)).toBeLessThanOrEqual(0.05);
      expect(reading.value).toBeLessThanOrEqual(0.1);
    }
  });

  test.each([500, 250, 100, 50] as const)(
    'a maker that allows %d V is never tried with more at the outlet, and 250 V or, for comparison, 100 V pass',
    (allowed) => {
      const { actions } = verify(scenarioOf({ sheet: { insulationTestVoltageMax: allowed } }));
      const readings = actions
        .filter(({ action }) => action.id === 'insulation-outlet')
        .flatMap(({ run }) => run.samples.flatMap((sample) => sample.readings))
        .filter((reading) => isOf(reading, 'insulation'));
      expect(readings.length).toBeGreaterThan(0);
      for (const { volts, value, qualifier } of readings) {
        expect(volts).toBe(Math.min(allowed, 250));
        expect(qualifier === '>' || (value ?? 0) >= 1e6).toBe(true);
      }
    },
  );

  test('500 V on electronics that the sheet limits to 250 V is an unsafe act; 250 V is none', () => {
    const world = benchWith();
    doing(world, ...MAKE_DEAD);
    const between: [string[], string] = [['outlet.L1', 'outlet.N'], 'outlet.PE'];
    const [high, low] = doing(
      world,
      { op: 'measure', quantity: 'insulation', volts: 500, between },
      { op: 'measure', quantity: 'insulation', volts: 250, between },
    );
    expect(high?.unsafe.map(({ id }) => id)).toEqual(['insulation-over-sheet']);
    expect(low?.unsafe).toEqual([]);
  });

  test('in A there is nothing but the pilot', () => {
    const world = benchWith(THREE_PHASE_BENCH);
    const pairs = ['L1', 'L2', 'L3', 'N'].map((x): [string, string] => [`outlet.${x}`, 'outlet.PE']);
    for (const between of pairs)
      expect(read(world, { op: 'measure', quantity: 'voltage', between }).value).toBeLessThan(5);
    expect(read(world, { op: 'measure', quantity: 'pilot' })).toMatchObject({
      frequency: null,
      duty: 1,
      high: expect.closeTo(12, 0),
    });
  });

  test('in B a 32 A unit offers 31 or 32 A, as whole amperes are shown, and supplies nothing', () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const world = benchWith({ seed });
      doing(world, ...PLUG_IN);
      const { amps } = read(world, { op: 'measure', quantity: 'pilot' });
      expect([31, 32]).toContain(Math.round(amps ?? 0));
      const between: [string, string] = ['outlet.L1', 'outlet.N'];
      expect(read(world, { op: 'measure', quantity: 'voltage', between }).value).toBeLessThan(5);
    }
  });

  test.each(['pilot-short', 'pilot-open', 'earth-open'] as const)('%s takes the voltage away', (of) => {
    const world = benchWith();
    doing(world, ...CHARGE);
    expect(read(world, { op: 'measure', quantity: 'opening-time', of }).value).toBeLessThan(3);
    const between: [string, string] = ['outlet.L1', 'outlet.PE'];
    expect(read(world, { op: 'measure', quantity: 'voltage', between }).value).toBeLessThan(5);
  });

  test('the d.c. test rises far more slowly than the a.c. one, and a sound detector acts below 6 mA, at 4.5 mA say', () => {
    const ramp = (waveform: 'sinusoidal' | 'smooth-dc-positive') => {
      const world = benchWith({ design: { directPickup: 0.0045 } });
      doing(world, ...CHARGE);
      const began = world.timeline.now;
      const reading = read(world, { op: 'measure', quantity: 'residual', waveform, mode: 'ramp' });
      return { took: (world.timeline.now - began) / 1e6, reading };
    };
    const direct = ramp('smooth-dc-positive');
    const alternating = ramp('sinusoidal');
    expect(direct.took).toBeGreaterThan(5 * alternating.took);
    expect(direct.reading.value).toBeLessThan(0.006);
    expect(Math.abs((direct.reading.value ?? 0) - 0.0045)).toBeLessThan(0.0006);
    expect(alternating.reading.value).toBeLessThanOrEqual(0.03);
  });

  test('a loop of 0.15 Ω on a three-phase commercial supply is judged by the device’s tabulated limit', () => {
    const { actions } = verify(
      scenarioOf({ site: { ...THREE_PHASE, loopImpedance: 0.15, neutralImpedance: 0.15 } }),
    );
    const limits = actions.filter(({ action }) => action.id === 'loop').flatMap((done) => done.limits);
    expect(limits).toHaveLength(3);
    for (const { limit, pass } of limits) {
      // C40: 218.5 V / 400 A = 0.55 Ω, measured at 0.8 of it.
      expect(limit.limit).toBeCloseTo(0.44, 2);
      expect(limit.limit).toBe(measuredLoopLimit('C', 40));
      expect(pass).toBe(true);
    }
  });
});

const THREE_PHASE_BENCH = { site: THREE_PHASE } as const;
