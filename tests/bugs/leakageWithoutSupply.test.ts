/**
 * A standing d.c. leakage at the stand-in drove its current through whatever there was: with the contactor open a meter
 * of 10 MΩ showed tens of kilovolts at a dead outlet. It comes out of the mains, and goes when they go.
 */
import { describe, expect, test } from 'vitest';
import { benchWith, CHARGE, doing, PLUG_IN, read } from '../bench/build.ts';

const LEAK = { op: 'vehicle', leakage: { ac: 0, dc: 0.004, line: 'L1' } } as const;
const dc = (world: ReturnType<typeof benchWith>) =>
  read(world, { op: 'measure', quantity: 'voltage', tool: 'meter', between: ['outlet.L1', 'outlet.PE'] }).dc;

describe('a d.c. leakage of 4 mA', () => {
  test('is not there while nothing is supplied', () => {
    const world = benchWith({ faults: [{ fault: 'direct-detector-dead', values: {} }] });
    doing(world, ...PLUG_IN, LEAK);
    expect(Math.abs(dc(world) ?? 0)).toBeLessThan(1);
    expect(world.indicator).toBe('connected');
  });

  test('flows while the outlet is supplied, and takes no part in the pilot', () => {
    const world = benchWith({ faults: [{ fault: 'direct-detector-dead', values: {} }] });
    doing(world, ...CHARGE, LEAK);
    // 4 mA through a loop of some tenths of an ohm.
    expect(Math.abs(dc(world) ?? 9)).toBeLessThan(1);
    expect(world.indicator).toBe('charging');
    doing(world, { op: 'vehicle', state: 'B' }, { op: 'wait', seconds: 1 });
    expect(Math.abs(dc(world) ?? 0)).toBeLessThan(1);
  });

  test('finds no way where PE to the vehicle is open', () => {
    const world = benchWith({ faults: [{ fault: 'pe-not-landed', values: {} }] });
    doing(world, ...CHARGE, LEAK);
    expect(world.indicator).toBe('charging');
    expect(Math.abs(dc(world) ?? 0)).toBeLessThan(1);
  });
});
