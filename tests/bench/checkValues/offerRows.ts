/** V1 to V20, V43 to V47: what a unit offers by duty and coding, and what a duty lets a vehicle take. */
import { expect } from 'vitest';
import { supplied } from '../../../src/bench/instruments/voltageTools.ts';
import type { World } from '../../../src/bench/world.ts';
import type { Parts } from '../../../src/faults/parts.ts';
import { benchWith, doing, PLUG_IN } from '../build.ts';
import { type BenchRow, type BenchRows, exact, NOMINAL_PILOT, PILOT } from './row.ts';

const offer = (amps: number, percent: number): BenchRow => ({
  behaviour: `a unit set to ${amps} A offers ${percent} %`,
  behaves: () => {
    const world = benchWith({ sheet: { ratedCurrent: 80, setCurrent: amps } });
    doing(world, ...PLUG_IN);
    expect(Math.abs(100 * world.plant.duty - percent)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(100 * (exact(world, PILOT).duty ?? 0) - percent)).toBeLessThanOrEqual(0.05);
  },
});

/** The current that the pilot meter reads from a duty that the unit puts out, in per cent. */
function takenAt(percent: number): number | null | undefined {
  const design = { pilot: NOMINAL_PILOT, dutyError: (percent - 10) / 100 };
  const world = benchWith({ sheet: { setCurrent: 6 }, design });
  doing(world, ...PLUG_IN);
  const { duty, amps } = exact(world, PILOT);
  expect(duty).toBeCloseTo(percent / 100, 3);
  return amps;
}

const taken = (percents: readonly number[], amps: number): BenchRow => ({
  behaviour: `at ${percents.join(' % and ')} % the pilot allows ${amps} A`,
  behaves: () => {
    for (const percent of percents) expect(takenAt(percent), `${percent} %`).toBe(amps);
  },
});

/** A socket-outlet in B with this resistor in the plug, in place of a printed one. */
function codedAt(resistance: number): World {
  const odd = { id: 'odd coding', a: 'socket.PP', b: 'socket.PE', resistance, contact: 'cable' };
  const parts = (sound: Parts) => ({ ...sound, parts: [...sound.parts, odd] });
  const world = benchWith({ sheet: { outlet: 'socket' }, parts });
  doing(world, { op: 'vehicle', coding: null }, ...PLUG_IN);
  return world;
}

const coded = (resistances: readonly number[], percent: number): BenchRow => ({
  behaviour: `a plug of ${resistances.join(' and ')} Ω is offered ${percent} % by a unit of 32 A`,
  behaves: () => {
    for (const resistance of resistances)
      expect(Math.abs(100 * codedAt(resistance).plant.duty - percent)).toBeLessThanOrEqual(0.005);
  },
});

export const OFFER_ROWS: BenchRows = {
  V1: offer(6, 10),
  V2: offer(10, 16.67),
  V3: offer(13, 21.67),
  V4: offer(16, 26.67),
  V5: offer(20, 33.33),
  V6: offer(32, 53.33),
  V7: offer(51, 85),
  V8: offer(63, 89.2),
  V9: offer(70, 92),
  V10: offer(80, 96),
  V11: taken([20], 12),
  V12: taken([2.9], 0),
  // No digital link on this bench.
  V13: taken([5], 0),
  V14: taken([7.5], 0),
  V15: taken([8, 9.9], 6),
  V16: taken([86], 55),
  V17: taken([90], 65),
  V18: taken([96.5], 80),
  V19: {
    behaviour: 'at 97.1 % and at a steady pilot nothing may be taken',
    behaves: () => {
      expect(takenAt(97.1)).toBe(0);
      const world = benchWith();
      expect(exact(world, PILOT)).toMatchObject({ duty: 1, amps: 0 });
    },
  },
  V20: {
    behaviour: 'an offer of 32 A half a point off lets 31.7 to 32.3 A be taken',
    behaves: () => {
      for (const [error, amps] of [
        [-0.005, 31.7],
        [0.005, 32.3],
      ] as const) {
        const world = benchWith({ design: { pilot: NOMINAL_PILOT, dutyError: error } });
        doing(world, ...PLUG_IN);
        expect(exact(world, PILOT).amps).toBe(amps);
      }
    },
  },
  V43: coded([680], 33.33),
  V44: coded([220], 53.33),
  V45: coded([1500], 21.67),
  // The plug's own contact adds 2 mΩ.
  V46: coded([164, 307.99], 53.33),
  V47: {
    behaviour: 'a plug of 50 or of 4600 Ω is offered nothing and supplied nothing',
    behaves: () => {
      for (const ohms of [50, 4600]) {
        const world = codedAt(ohms);
        expect(exact(world, PILOT).frequency).toBeNull();
        doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 10 });
        expect(supplied(world, 'outlet.L1', 'outlet.PE')).toBe(false);
      }
    },
  },
};
