/**
 * The cores of a long run couple, where a site says so. Sums by hand: I = ωCU, and the divider of equal capacitances;
 * 150 pF/m between any two cores is from memory.
 */
import { expect, test } from 'vitest';
import { branchCurrent } from '../../src/network/potentials.ts';
import { benchWith, doing, MAKE_DEAD, read, THREE_PHASE, type Wanted } from '../bench/build.ts';

const FARADS = 150e-12;
const OMEGA = 100 * Math.PI;

const run = (length: number, capacitance?: number): Wanted => ({
  site: { ...THREE_PHASE, circuit: { ...THREE_PHASE.circuit, length, capacitance } },
});

test('a standing current flows from a line to PE, in quadrature, and none where nothing is said', () => {
  const amps = (capacitance?: number) => {
    const { wiring, solution } = benchWith(run(80, capacitance));
    const { re, im } = branchCurrent(
      solution.reduced,
      solution.planes,
      wiring.branchOf('insulation.circuit.L1-PE'),
    ).mains;
    return { re, im };
  };
  // 2π × 50 Hz × 12 nF × 230 V = 0.87 mA.
  const { re, im } = amps(FARADS);
  const volts = read(benchWith(run(80)), {
    op: 'measure',
    quantity: 'voltage',
    between: ['origin.L1', 'origin.PE'],
  });
  expect(Math.abs(im / (OMEGA * 80 * FARADS * (volts.value ?? 0)) - 1)).toBeLessThan(0.02);
  expect(Math.abs(re)).toBeLessThan(0.01 * Math.abs(im));
  expect(Math.abs(amps().im)).toBeLessThan(1e-9);
});

test('an open core shows ghost volts on a meter, which the detector’s load takes away', () => {
  const wanted: Wanted = { ...run(20, FARADS), faults: [{ fault: 'line-missing', values: { line: 2 } }] };
  const world = benchWith(wanted);
  doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' }, { op: 'energise' });
  const volts = (tool: 'meter' | 'two-pole') =>
    read(world, { op: 'measure', quantity: 'voltage', between: ['supply.L2', 'supply.N'], tool }).value ?? 0;
  // (U1 + U3 + 0 + 0) / 4 = −U2 / 4: a quarter of the line's voltage, behind four capacitances of 3 nF.
  const open = 230 / 4;
  const behind = 1 / (OMEGA * 4 * 20 * FARADS);
  expect(Math.abs(volts('meter') - open)).toBeLessThan(3);
  expect(Math.abs(volts('two-pole') - (open * 40_000) / Math.hypot(40_000, behind))).toBeLessThan(2);
  expect(volts('two-pole')).toBeLessThan(12);
});

test('insulation is tested by d.c.: what couples does not lower it', () => {
  const world = benchWith(run(80, FARADS));
  doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
  const shown = read(world, {
    op: 'measure',
    quantity: 'insulation',
    between: ['supply.L1', 'supply.PE'],
    volts: 500,
  });
  expect(shown.qualifier).toBe('>');
});
