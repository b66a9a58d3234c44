/** V21 to V36: the pilot's levels with vehicles of every tolerance, and what the unit makes of them. */
import { expect } from 'vitest';
import { supplied } from '../../../src/bench/instruments/voltageTools.ts';
import { move, settle } from '../../../src/bench/settle.ts';
import { type Parts, withPart } from '../../../src/faults/parts.ts';
import { benchWith, CHARGE, doing, PLUG_IN } from '../build.ts';
import { type PilotCircuit, withVehicle } from '../otherVehicle.ts';
import { type BenchRow, type BenchRows, exact, NOMINAL_PILOT, PILOT } from './row.ts';

const LOWEST = { drop: 0.55, open: 11.4, source: 1030 } as const;
const HIGHEST = { drop: 0.85, open: 12.6, source: 970 } as const;

/** What a sound unit without ventilation shows in each state after 3 s. */
const SHOWS = { B: 'connected', C: 'charging', D: 'preparing' } as const;

const levels = (
  state: 'B' | 'C' | 'D',
  ...cases: readonly (PilotCircuit & { volts: number })[]
): BenchRow => ({
  behaviour: `${cases.map(({ volts }) => `${volts} V`).join(' and ')} at the outlet, taken for state ${state}`,
  behaves: () => {
    for (const { volts, ...circuit } of cases) {
      const world = withVehicle(circuit);
      // To the hundredth that is shown; a metre of cable adds its milliohms.
      expect(Math.abs((exact(world, PILOT).high ?? 0) - volts), `${volts} V`).toBeLessThanOrEqual(0.0101);
      expect(world.indicator).toBe(SHOWS[state]);
    }
  },
});

const parallel = (x: number, y: number): number => (x * y) / (x + y);

/** The source resistance by A.4.4, from the readings in A and B. */
function sourceFrom(open: number, source: number): { readings: number[]; ohms: number } {
  const pilot = { positive: open, negative: -open, frequency: 1000 };
  const parts = (sound: Parts) =>
    withPart(sound, 'pilot.source', (part) => ({ ...part, resistance: source }));
  const world = benchWith({ design: { pilot }, parts });
  const unplugged = exact(world, PILOT).high ?? 0;
  doing(world, ...PLUG_IN);
  const loaded = exact(world, PILOT).high ?? 0;
  return { readings: [unplugged, loaded], ohms: (2740 * (unplugged - loaded)) / (loaded - 0.7) };
}

const mean = (state: 'B' | 'C', volts: number): BenchRow => ({
  behaviour: `a d.c. meter shows ${volts} V on a 16 A offer in state ${state}`,
  behaves: () => {
    const world = benchWith({ sheet: { setCurrent: 16 }, design: { pilot: NOMINAL_PILOT } });
    doing(world, ...PLUG_IN, { op: 'vehicle', state }, { op: 'wait', seconds: 3 });
    const { dc } = exact(world, {
      op: 'measure',
      quantity: 'voltage',
      tool: 'meter',
      between: ['outlet.CP', 'outlet.PE'],
    });
    // The meter's resolution is a volt.
    expect(Math.abs((dc ?? 0) - volts)).toBeLessThanOrEqual(0.5);
    const { high = 0, low = 0 } = exact(world, PILOT);
    expect(Math.abs(world.plant.duty * high + (1 - world.plant.duty) * low - volts)).toBeLessThan(0.02);
  },
});

export const LEVEL_ROWS: BenchRows = {
  V21: levels('B', { ohms: 2740, volts: 8.98 }),
  V22: levels('C', { ohms: parallel(2740, 1300), volts: 5.99 }),
  V23: levels('D', { ohms: parallel(2740, 270), volts: 2.93 }),
  V24: levels('B', { ...LOWEST, ohms: 2658, volts: 8.37 }),
  V25: levels('B', { ...HIGHEST, ohms: 2822, volts: 9.59 }),
  V26: levels('C', { ...LOWEST, ohms: 856, volts: 5.47 }, { ...HIGHEST, ohms: 908, volts: 6.53 }),
  V27: levels('D', { ...LOWEST, ohms: 239, volts: 2.59 }, { ...HIGHEST, ohms: 253, volts: 3.28 }),
  V28: levels('B', { ohms: 1870, volts: 8.06 }, { ohms: 4610, volts: 9.99 }),
  V29: levels('C', { ohms: parallel(1870, 909), volts: 4.99 }, { ohms: parallel(4610, 1723), volts: 6.99 }),
  V30: levels('D', { ohms: parallel(1870, 140), volts: 2 }, { ohms: parallel(4610, 448), volts: 3.98 }),
  V31: {
    behaviour: 'readings of 12.0 and 8.98 V give a source of 999 Ω',
    behaves: () => {
      const { readings, ohms } = sourceFrom(12, 1000);
      expect(readings).toEqual([12, 8.98]);
      expect(Math.round(ohms)).toBe(999);
    },
  },
  V32: {
    behaviour: 'readings of 11.9 and 8.6 V give a source of 1145 Ω',
    behaves: () => {
      const { readings, ohms } = sourceFrom(11.9, 1145);
      expect(readings).toEqual([11.9, 8.6]);
      expect(Math.round(ohms)).toBe(1145);
      expect(ohms).toBeGreaterThan(1030);
    },
  },
  V33: {
    behaviour: '120 Ω from pilot to PE while charging: +1.22 and −1.29 V, supply off within 3 s',
    behaves: () => {
      // A resistor that no sound stand-in has, behind a contact that this site does not use otherwise.
      const shunt = { id: 'shunt', a: 'car.CP', b: 'car.PE', resistance: 120, contact: 'electrode' };
      const world = benchWith({
        design: { pilot: NOMINAL_PILOT },
        parts: (sound) => ({ ...sound, parts: [...sound.parts, shunt] }),
      });
      move(world, { removed: ['electrode'] });
      doing(world, ...CHARGE);
      expect(supplied(world, 'outlet.L1', 'outlet.PE')).toBe(true);
      move(world, { removed: [] });
      settle(world);
      const { high = 0, low = 0 } = exact(world, PILOT);
      expect(Math.abs(high - 1.22)).toBeLessThanOrEqual(0.0101);
      expect(Math.abs(low + 1.29)).toBeLessThanOrEqual(0.0101);
      doing(world, { op: 'wait', seconds: 3 });
      expect(supplied(world, 'outlet.L1', 'outlet.PE')).toBe(false);
    },
  },
  V34: {
    behaviour: 'a shorted diode: −8.79 V in B, −5.62 V in C, and it does not close',
    behaves: () => {
      const world = benchWith({ design: { pilot: NOMINAL_PILOT } });
      doing(world, { op: 'vehicle', diode: 'shorted' }, ...PLUG_IN);
      expect(Math.abs((exact(world, PILOT).low ?? 0) + 8.79)).toBeLessThanOrEqual(0.0101);
      doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 0.05 });
      expect(Math.abs((exact(world, PILOT).low ?? 0) + 5.62)).toBeLessThanOrEqual(0.0101);
      doing(world, { op: 'wait', seconds: 60 });
      expect(supplied(world, 'outlet.L1', 'outlet.PE')).toBe(false);
      expect(world.plant.contactor).toBe('open');
    },
  },
  V35: mean('C', -7.2),
  V36: mean('B', -6.4),
};
