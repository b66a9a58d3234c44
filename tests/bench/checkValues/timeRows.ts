/** V37 to V42, V76, V77: how fast, or how late, a unit does what it does. */
import { expect } from 'vitest';
import type { OperationInput } from '../../../src/bench/operation.ts';
import type { World } from '../../../src/bench/world.ts';
import { mainsAcross } from '../../../src/bench/world.ts';
import {
  GREATEST_DUTY_CHANGE,
  GREATEST_UNLOCK_AFTER_FAULT,
  GREATEST_VEHICLE_FOLLOW,
  LEAST_OPEN_UNDER_LOAD,
} from '../../../src/laws/timing.ts';
import { branchCurrent } from '../../../src/network/potentials.ts';
import { benchOf } from '../../../src/scenario/scenario.ts';
import { scenarioOf } from '../../scenario/build.ts';
import { benchWith, CHARGE, doing, PLUG_IN } from '../build.ts';
import { type BenchRow, type BenchRows, charging, exact, now, SEEDS } from './row.ts';

const opens = (of: 'C-to-B' | 'earth-open', seconds: number, what: string): BenchRow => ({
  behaviour: `${what}: supply off within ${seconds} s`,
  behaves: () => {
    for (const seed of SEEDS) {
      const opening: OperationInput = { op: 'measure', quantity: 'opening-time', of };
      expect(exact(charging({ seed }), opening).value).toBeLessThanOrEqual(seconds);
    }
  },
});

/** A of 50 Hz in the circuit's line. */
function lineAmps({ wiring, solution }: World): number {
  const { reduced, planes } = solution;
  const { re, im } = branchCurrent(reduced, planes, wiring.branchOf('circuit.L1')).mains;
  return Math.hypot(re, im);
}

const wait = (seconds: number): OperationInput => ({ op: 'wait', seconds });

/** Waits in small steps until something holds, a minute at most; the seconds that took. */
function until(world: World, holds: () => boolean): number {
  const began = now(world);
  while (!holds() && now(world) - began < 60) doing(world, wait(0.05));
  return now(world) - began;
}

/** Seconds from a request for supply, up to `longest`, until it charges. */
function startsAfter(world: World, longest: number): number {
  let waited = 0;
  for (; world.indicator !== 'charging' && waited < longest; waited++) doing(world, wait(1));
  return waited;
}

export const TIME_ROWS: BenchRows = {
  V37: opens('C-to-B', 0.1, 'C2 to B2'),
  V38: {
    behaviour: 'B2 to C2: supply on within 3 s',
    behaves: () => {
      const world = benchWith();
      doing(world, ...PLUG_IN, { op: 'vehicle', state: 'C' }, wait(3));
      expect(mainsAcross(world, 'end.L1', 'end.N')).toBeGreaterThan(230);
    },
  },
  V39: opens('earth-open', 0.1, 'PE opened while charging'),
  V40: {
    behaviour:
      'stopped while the vehicle goes on: a steady pilot at once, under load open from 6 s on, not sooner',
    behaves: () => {
      for (const seed of SEEDS) {
        const world = charging({ seed });
        doing(world, { op: 'vehicle', load: 32 });
        const stopped = now(world);
        doing(world, { op: 'press', button: 'stop' });
        expect(world.plant.pilot).toBe('positive');
        until(world, () => world.plant.contactor === 'open');
        expect(now(world) - stopped).toBeGreaterThanOrEqual(LEAST_OPEN_UNDER_LOAD);
        expect(world.plant.contactor).toBe('open');
      }
    },
  },
  V41: {
    behaviour: 'a lower duty stands for the 5 s in which the vehicle comes down to it, and supply stays',
    behaves: () => {
      for (const seed of SEEDS) {
        const world = charging({ seed, site: { voltage: 230 } });
        doing(world, { op: 'vehicle', load: 32 }, { op: 'supply', loadLimit: 10 });
        const followed = until(world, () => world.plant.duty < 0.2);
        expect(followed).toBeLessThanOrEqual(GREATEST_DUTY_CHANGE);
        const { duty } = world.plant;
        expect(60 * duty).toBeCloseTo(10, 6);
        // The vehicle's part, played by the stand-in at the last moment; the limit moves once more meanwhile.
        doing(world, { op: 'supply', loadLimit: 6 }, wait(GREATEST_VEHICLE_FOLLOW - 0.1));
        expect(lineAmps(world)).toBeGreaterThan(20);
        doing(world, { op: 'vehicle', load: 10 });
        expect(world.plant).toMatchObject({ duty, contactor: 'closed' });
        expect(lineAmps(world)).toBeLessThanOrEqual(10.05);
        until(world, () => world.plant.duty < duty);
        expect(60 * world.plant.duty).toBeCloseTo(6, 6);
      }
    },
  },
  V42: {
    behaviour: 'state F entered: lock freed within 30 s',
    behaves: () => {
      for (const seed of SEEDS) {
        // No pole closes: the unit says so by state F.
        const world = benchWith({
          seed,
          sheet: { outlet: 'socket' },
          faults: [
            { fault: 'line-pole-stuck-open', values: { line: 1 } },
            { fault: 'neutral-pole-stuck-open', values: {} },
          ],
        });
        doing(world, ...PLUG_IN, { op: 'vehicle', state: 'C' });
        expect(world.plant.plugLock).toBe('held');
        until(world, () => world.plant.pilot === 'negative');
        expect(world.plant.pilot).toBe('negative');
        doing(world, wait(GREATEST_UNLOCK_AFTER_FAULT));
        expect(world.plant.plugLock).toBe('free');
      }
    },
  },
  V76: {
    behaviour: '17:30 on a Tuesday, default schedule: does not start before 22:00 unless overridden',
    behaves: () => {
      const at = (clock: string, schedule: 'default-hours' | null) => {
        const world = benchOf({ ...scenarioOf({ sheet: { schedule } }), clock });
        doing(world, ...CHARGE);
        return world;
      };
      const world = at('2026-03-10T17:30', 'default-hours');
      for (const hours of [0, 1, 2, 4]) {
        doing(world, wait(hours * 600));
        expect(world.indicator).toBe('waiting');
      }
      doing(world, wait(22 * 3600 - 17.5 * 3600 - now(world) - 60));
      expect(world.indicator).toBe('waiting');
      doing(world, wait(120));
      expect(world.indicator).toBe('charging');
      // What keeps it is the schedule, the hour and the day: without one of them it starts.
      expect(at('2026-03-10T17:30', null).indicator).toBe('charging');
      expect(at('2026-03-10T14:30', 'default-hours').indicator).toBe('charging');
      expect(at('2026-03-14T17:30', 'default-hours').indicator).toBe('charging');
      const overridden = at('2026-03-10T17:30', 'default-hours');
      doing(overridden, { op: 'press', button: 'override-delay' }, wait(3));
      expect(overridden.indicator).toBe('charging');
    },
  },
  V77: {
    behaviour: 'random delay: starts 0 to 600 s after the request, each time another; overridden, at once',
    behaves: () => {
      const asked = (seed: number): World => {
        const world = benchWith({ sheet: { startDelay: 600 }, seed });
        doing(world, { op: 'vehicle', plugged: true, state: 'C' });
        return world;
      };
      const delays = SEEDS.map((seed) => startsAfter(asked(seed), 700));
      // Closing takes up to 3 s after the delay.
      for (const waited of delays) expect(waited).toBeLessThanOrEqual(603);
      expect(Math.min(...delays)).toBeLessThan(200);
      expect(Math.max(...delays)).toBeGreaterThan(300);
      expect(new Set(delays).size).toBeGreaterThan(5);
      const overridden = asked(1);
      doing(overridden, wait(1), { op: 'press', button: 'override-delay' });
      expect(startsAfter(overridden, 700)).toBeLessThanOrEqual(3);
    },
  },
};
