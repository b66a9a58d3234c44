/**
 * Two charging points on one service: what the unit feels of the other, and what it offers beside it. Sums by Ohm's law
 * with the loads of the site as resistances, by hand; that the whole stays within its limit: BS 7671:2018+A2:2022
 * 722.311; that a changed limit is followed within 10 s: IEC 61851-1:2017 Table A.6 sequence 6.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { verify } from '../../src/scenario/verify.ts';
import { benchWith, doing, PLUG_IN, read, SITE, type Wanted } from '../bench/build.ts';
import { INSTALLATIONS, scenarioOn } from './installations.ts';

const PAST_PARTING: FaultChoice = { fault: 'service-sensor-past-parting', values: {} };
const setHigh = (amps: number): FaultChoice => ({ fault: 'service-limit-set-high', values: { amps } });
const CHARGES: FaultChoice = { fault: 'next-point-charges', values: { amps: 32 } };

const LIMIT = INSTALLATIONS.pair.sheet.serviceLimit;
/** The supply's line and neutral together, the house's 1500 W, and a vehicle's 32 A at 230 V, Ω. */
const LOOP = 0.16;
const HOUSE = (230 * 230) / 1500;
const VEHICLE = 230 / 32;
const parallel = (...ohms: readonly number[]): number => 1 / ohms.reduce((sum, one) => sum + 1 / one, 0);
/** Through the service with these loads on it, A. */
const drawn = (...ohms: readonly number[]): number => SITE.voltage / (LOOP + parallel(...ohms));

function pair(faults: readonly FaultChoice[] = [], more: Partial<Wanted> = {}) {
  const world = benchWith({ ...(INSTALLATIONS.pair as Wanted), ...more, faults });
  doing(world, ...PLUG_IN);
  return world;
}

/** What the pilot's duty stands for, whole amperes. */
const offered = (world: ReturnType<typeof pair>): number =>
  Math.round(read(world, { op: 'measure', quantity: 'pilot' }).amps ?? 0);

function with32(world: ReturnType<typeof pair>): number {
  doing(world, { op: 'supply', nextPoint: 32 }, { op: 'wait', seconds: 10 });
  return offered(world);
}

describe('the offer, with the next point idle and charging', () => {
  test('idle it leaves the unit its rating; charging it takes its share; idle again it gives it back', () => {
    const world = pair();
    expect(offered(world)).toBe(32);
    // 236 / (0.16 + 35.3 ∥ 7.19) = 38.4 A of 60 A.
    const left = Math.floor(LIMIT - drawn(HOUSE, VEHICLE));
    expect(left).toBe(21);
    expect(with32(world)).toBe(left);
    doing(world, { op: 'supply', nextPoint: 0 }, { op: 'wait', seconds: 14 });
    expect(offered(world)).toBe(32);
  });

  test('while this unit supplies, what its own vehicle draws is no load beside it', () => {
    const world = pair();
    doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 3 }, { op: 'vehicle', load: 20 });
    expect(Math.abs(with32(world) - 21)).toBeLessThanOrEqual(1);
  });

  test('found charging, it takes its share from the first', () => {
    expect(offered(pair([CHARGES]))).toBe(21);
  });

  test('a sensor past the parting feels the house and not the next point', () => {
    const world = pair([PAST_PARTING]);
    // The house alone, at what the next point leaves of the voltage: 6.5 A.
    expect(with32(world)).toBe(32);
    doing(world, { op: 'supply', nextPoint: 0, siteLoad: 40 }, { op: 'wait', seconds: 10 });
    expect(offered(world)).toBe(Math.floor(LIMIT - drawn(HOUSE, 230 / 40)));
  });

  test('a limit set too high leaves so much more', () => {
    expect(with32(pair([setHigh(12)]))).toBe(Math.min(32, Math.floor(LIMIT + 12 - drawn(HOUSE, VEHICLE))));
  });

  test('its line to earth and its neutral are untouched by what this board switches', () => {
    const world = pair();
    doing(world, { op: 'supply', nextPoint: 32 });
    const incoming = (): number =>
      read(world, { op: 'measure', quantity: 'voltage', between: ['incoming.L1', 'incoming.N'] }).value ?? 0;
    doing(world, { op: 'isolate', at: 'main-switch' });
    // The next point alone: 236 V × 7.19 / (7.19 + 0.16).
    expect(Math.abs(incoming() - (SITE.voltage * VEHICLE) / (VEHICLE + LOOP))).toBeLessThan(3.5);
  });
});

test('whatever the next point and the house draw one after the other, 10 s later all together is within the limit', () => {
  const setting = fc.record({
    next: fc.integer({ min: 0, max: 40 }),
    beside: fc.integer({ min: 0, max: 40 }),
  });
  fc.assert(
    fc.property(fc.array(setting, { minLength: 1, maxLength: 6 }), (settings) => {
      const world = pair();
      for (const { next, beside } of settings) {
        doing(world, { op: 'supply', nextPoint: next, siteLoad: beside }, { op: 'wait', seconds: 10 });
        // 230 V by 0 A is no path.
        const others = drawn(HOUSE, 230 / next, 230 / beside);
        if (world.plant.pilot !== 'oscillating') continue;
        const offer = 60 * world.plant.duty;
        // The least that a pilot can offer is 6 A; less is a steady pilot (IEC 61851-1:2017 Table A.7).
        expect(offer + others, `${next} A and ${beside} A`).toBeLessThanOrEqual(LIMIT + 0.01);
      }
    }),
    { seed: 431, numRuns: 60 },
  );
});

test('a site without a next point refuses to make one charge', () => {
  const [outcome] = doing(benchWith(), { op: 'supply', nextPoint: 16 });
  expect(outcome?.refused).toEqual({ id: 'no-next-point' });
});

describe('the verdict', () => {
  const broken = (faults: readonly FaultChoice[]) => {
    const { conclusion, actions } = verify(scenarioOn('pair', faults));
    const found = actions.flatMap(({ action, expectations }) =>
      expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation }) => `${action.id}/${expectation.id}`),
    );
    return { conclusion, found };
  };

  test('sound, with the next point idle and with it charging all the while', () => {
    expect(broken([])).toEqual({ conclusion: 'sound', found: [] });
    expect(broken([CHARGES])).toEqual({ conclusion: 'sound', found: [] });
  });

  test('a sensor past the parting shows in this test and in no other', () => {
    expect(broken([PAST_PARTING])).toEqual({ conclusion: 'not sound', found: ['next-point/over-service'] });
  });

  test.each([10, 12, 15])('a limit set %d A too high shows beside house and next point', (amps) => {
    const { found } = broken([setHigh(amps)]);
    expect(found).toEqual(expect.arrayContaining(['limit/too-much', 'next-point/over-service']));
  });

  test('a limit stated above the rating breaks the papers alone', () => {
    const above: FaultChoice = { fault: 'service-limit-above-rating', values: { over: 20 } };
    expect(broken([above])).toEqual({ conclusion: 'not sound', found: ['papers/service-carries'] });
  });
});
