/**
 * Readings against sums that need no network: what each fault shows by the circuit alone. True values are compared;
 * the instruments' own errors are left out.
 */
import { describe, expect, test } from 'vitest';
import { voltage } from '../../src/bench/instruments/voltageTools.ts';
import { measure } from '../../src/bench/measure.ts';
import type { Measurement, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { leadsOn } from '../../src/bench/port.ts';
import type { World } from '../../src/bench/world.ts';
import { conductorResistance } from '../../src/laws/conductor.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, PLUG_IN, read, SITE } from './build.ts';

/** The true value of a measurement, or why there is none. */
function truth(world: World, input: OperationInput): number | string {
  const found = measure(world, operation(input) as Measurement);
  return 'refused' in found ? found.refused.id : found.value;
}

const volts = (world: World, a: string, b: string, tool: 'two-pole' | 'meter'): number => {
  const found = voltage(leadsOn(world, a, b), tool, world.plant.duty, {});
  return 'refused' in found ? Number.NaN : found.value;
};

describe('protective conductor open on the supply side', () => {
  const world = benchWith({ faults: [{ fault: 'pe-not-landed', values: {} }] });
  doing(world, ...CHARGE);

  test('the case stands near half of mains on a meter of 10 MΩ: two equal filters share it', () => {
    // Two filters of X = 1 / 1.476549 µS ≈ 677 kΩ, one to line and one to neutral: U / 2 behind X / 2, on 10 MΩ.
    // Line and neutral at the unit are the source's 236 V less a small drop.
    const admittance = { re: 1 / 20e6, im: 1.476549e-6 };
    const [re, im] = [2 * admittance.re + 1e-7, 2 * admittance.im];
    const share = Math.hypot(admittance.re, admittance.im) / Math.hypot(re, im);
    const line = volts(world, 'outlet.L1', 'met', 'meter');
    const neutral = volts(world, 'outlet.N', 'met', 'meter');
    expect(volts(world, 'case', 'met', 'meter')).toBeCloseTo((line + neutral) * share, 0);
    expect(line * share).toBeGreaterThan(0.45 * SITE.voltage);
  });

  test('and hardly anything on a detector that loads it', () => {
    expect(volts(world, 'case', 'met', 'two-pole')).toBeLessThan(20);
  });

  test('the pilot is content, and the unit charges', () => {
    expect(world.indicator).toBe('charging');
    expect(read(world, { op: 'measure', quantity: 'pilot' })).toMatchObject({
      high: expect.closeTo(6, 0),
      low: expect.closeTo(-12, 0),
    });
  });
});

test('tether PE open looks like no vehicle, and the connector’s pilot has no return', () => {
  const open = benchWith({ faults: [{ fault: 'outlet-pe-open', values: {} }] });
  doing(open, ...CHARGE);
  expect(open.indicator).toBe('ready');
  expect(open.plant.contactor).toBe('open');
  expect(read(open, { op: 'measure', quantity: 'pilot' }).high).toBeLessThan(1);
  const sound = benchWith();
  doing(sound, ...PLUG_IN);
  expect(sound.indicator).toBe('connected');
});

describe('a welded line pole', () => {
  const world = benchWith({ faults: [{ fault: 'line-pole-welded', values: { line: 1 } }] });

  test('line to PE is full mains with nothing plugged in', () => {
    expect(volts(world, 'outlet.L1', 'outlet.PE', 'two-pole')).toBeGreaterThan(0.98 * SITE.voltage);
  });

  test('line to neutral is next to nothing: the neutral pole is open', () => {
    expect(volts(world, 'outlet.L1', 'outlet.N', 'two-pole')).toBeLessThan(2);
  });

  test('the unit does not notice', () => {
    expect(world.indicator).toBe('ready');
  });
});

test.each([20_000, 300_000, 900_000])(
  'low insulation of %d Ω reads V / R of it and what is in parallel',
  (ohms) => {
    const world = benchWith({ faults: [{ fault: 'line-pe-insulation-low', values: { ohms } }] });
    doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
    const reading = truth(world, {
      op: 'measure',
      quantity: 'insulation',
      volts: 500,
      between: ['supply.L1', 'supply.PE'],
    });
    // In parallel: L1–N and N–PE of the same cable, 2 GΩ each; the 10 GΩ of open poles less still.
    expect(reading).toBeGreaterThan(0.999 * ohms);
    expect(reading).toBeLessThan(ohms);
  },
);

test('the same insulation in service: mains over it flows to PE through the origin', () => {
  const ohms = 20_000;
  const world = benchWith({ faults: [{ fault: 'line-pe-insulation-low', values: { ohms } }] });
  const part = world.wiring.branchOf('insulation.circuit.L1-PE');
  const { a, b } = world.wiring.topology.branches[part] ?? { a: 0, b: 0 };
  const { re, im } = world.solution.planes.mains;
  const across = Math.hypot((re[a] ?? 0) - (re[b] ?? 0), (im[a] ?? 0) - (im[b] ?? 0));
  expect(across / ohms).toBeCloseTo(SITE.voltage / ohms, 3);
});

describe('conductors and loops are their sums', () => {
  const { length } = SITE.circuit;
  const circuit = conductorResistance({ length, area: 6, class: 2 });
  const tether = conductorResistance({ length: 5, area: 6, class: 5 });

  test('R2 from the earthing terminal to the unit, and on to the connector', () => {
    const world = benchWith();
    doing(world, ...MAKE_DEAD);
    const ohms = (a: string, b: string) =>
      truth(world, { op: 'measure', quantity: 'continuity', between: [a, b] });
    // Terminals and contacts add milliohms, at most 0.05 Ω by the contract of the model.
    for (const [a, b, sum] of [
      ['met', 'supply.PE', circuit],
      ['supply.PE', 'outlet.PE', tether],
      ['met', 'outlet.PE', circuit + tether],
    ] as const) {
      expect(ohms(a, b)).toBeGreaterThan(sum);
      expect(ohms(a, b)).toBeLessThan(sum + 0.05);
    }
  });

  test('R1 + R2 with a link at the board', () => {
    const world = benchWith();
    doing(
      world,
      ...MAKE_DEAD,
      { op: 'disconnect', what: 'unit' },
      { op: 'link', between: ['origin.L1', 'origin.PE'] },
    );
    const between: [string, string] = ['supply.L1', 'supply.PE'];
    expect(truth(world, { op: 'measure', quantity: 'continuity', between })).toBeCloseTo(2 * circuit, 2);
  });

  test('line plus neutral with a link between them at the board, the unit’s 10 kΩ beside it', () => {
    const world = benchWith();
    doing(world, ...MAKE_DEAD);
    const measured: OperationInput = {
      op: 'measure',
      quantity: 'continuity',
      between: ['supply.L1', 'supply.N'],
    };
    expect(Number(truth(world, measured))).toBeGreaterThan(9000);
    doing(world, { op: 'link', between: ['origin.L1', 'origin.N'] });
    expect(truth(world, measured)).toBeCloseTo(2 * circuit, 2);
    doing(world, { op: 'unlink', between: ['origin.L1', 'origin.N'] });
    expect(Number(truth(world, measured))).toBeGreaterThan(9000);
  });

  test('Zs = Ze + circuit + tether, both ways', () => {
    const world = benchWith({ site: { otherLoads: [] } });
    doing(world, ...CHARGE);
    const between: [string, string] = ['outlet.L1', 'outlet.N'];
    const zs = SITE.loopImpedance + 2 * circuit + 2 * tether;
    const found = truth(world, { op: 'measure', quantity: 'loop', current: 'full', between });
    expect(Number(found)).toBeGreaterThan(zs);
    expect(Number(found)).toBeLessThan(zs + 0.05);
  });

  test('prospective current by 230 V over the shown value', () => {
    const world = benchWith();
    doing(world, ...CHARGE);
    const reading = read(world, { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] });
    expect(reading.prospective).toBe(Math.round(230 / (reading.value ?? 0)));
  });
});

describe('what the pilot’s mean is on a d.c. meter', () => {
  test.each([
    ['C', -7.2],
    ['B', -6.4],
  ] as const)('state %s of a 16 A offer: %d V', (state, mean) => {
    const world = benchWith({ sheet: { setCurrent: 16 } });
    doing(world, ...PLUG_IN, { op: 'vehicle', state }, { op: 'wait', seconds: 3 });
    const reading = read(world, {
      op: 'measure',
      quantity: 'voltage',
      tool: 'meter',
      between: ['outlet.CP', 'outlet.PE'],
    });
    // The drawn error is 1 % and 1 V, and the source ±1 %.
    expect(Math.abs((reading.dc ?? 0) - mean)).toBeLessThan(1.3);
    expect(world.plant.duty).toBeCloseTo(16 / 60, 9);
  });
});
