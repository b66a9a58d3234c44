/**
 * The published check values that are about what a unit does: run on the bench, every row by its id. What a row says
 * in figures alone is compared with the laws elsewhere.
 */
import { describe, expect, test } from 'vitest';
import { supplied } from '../../src/bench/instruments/voltageTools.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Reading } from '../../src/bench/reading.ts';
import { move, settle } from '../../src/bench/settle.ts';
import type { World } from '../../src/bench/world.ts';
import { mainsAcross } from '../../src/bench/world.ts';
import type { Parts } from '../../src/faults/parts.ts';
import type { Amps } from '../../src/laws/quantities.ts';
import { DIRECT_BAND } from '../../src/laws/residualLimits.ts';
import type { Part } from '../../src/site/part.ts';
import { UNIT_BEHAVIOUR } from '../references/checkValues.ts';
import { benchWith, CHARGE, doing, PLUG_IN, read, type Wanted } from './build.ts';

const charging = (wanted: Wanted = {}): World => {
  const world = benchWith(wanted);
  doing(world, ...CHARGE);
  expect(world.indicator).toBe('charging');
  return world;
};
const supplies = (world: World): boolean => supplied(world, 'outlet.L1', 'outlet.PE');
const openingTime = (
  of: 'C-to-B' | 'pilot-short' | 'earth-open' | 'pilot-open' | 'unplug',
): OperationInput => ({
  op: 'measure',
  quantity: 'opening-time',
  of,
});
type Residual = Extract<OperationInput, { quantity: 'residual' }>;
const residual = (change: Partial<Residual>): Residual => ({
  op: 'measure',
  quantity: 'residual',
  waveform: 'sinusoidal',
  mode: 'fixed',
  ...change,
});
const PILOT: OperationInput = { op: 'measure', quantity: 'pilot' };

/** A socket-outlet in B with this resistor in the plug, in place of a printed one. */
function codedAt(resistance: number): World {
  const odd = { id: 'odd coding', a: 'socket.PP', b: 'socket.PE', resistance, contact: 'cable' };
  const world = benchWith({ sheet: { outlet: 'socket' }, parts: withMore(odd) });
  doing(world, { op: 'vehicle', coding: null }, ...PLUG_IN);
  return world;
}

const withMore = (part: Part) => (parts: Parts) => ({ ...parts, parts: [...parts.parts, part] });

/** What the bench shows of each row. */
const ROWS: Record<string, { source: string; behaves: () => void }> = {
  V33: {
    source: 'IEC 61851-1:2017 A.4.9, 6.3.1.2',
    behaves: () => {
      // A resistor that no sound stand-in has, behind a contact that this site does not use otherwise.
      const shunt = { id: 'shunt', a: 'car.CP', b: 'car.PE', resistance: 120, contact: 'electrode' };
      const world = benchWith({ parts: withMore(shunt) });
      move(world, { removed: ['electrode'] });
      doing(world, ...CHARGE);
      expect(supplies(world)).toBe(true);
      move(world, { removed: [] });
      settle(world);
      expect(read(world, PILOT)).toMatchObject({
        high: expect.closeTo(1.22, 1),
        low: expect.closeTo(-1.29, 1),
      });
      doing(world, { op: 'wait', seconds: 3 });
      expect(supplies(world)).toBe(false);
    },
  },
  V34: {
    source: 'IEC 61851-1:2017 Table A.4 note c',
    behaves: () => {
      const world = benchWith();
      doing(world, { op: 'vehicle', diode: 'shorted' }, ...PLUG_IN);
      expect(read(world, PILOT).low).toBeCloseTo(-8.79, 0);
      doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 0.05 });
      expect(read(world, PILOT).low).toBeGreaterThan(-11);
      doing(world, { op: 'wait', seconds: 60 });
      expect(supplies(world)).toBe(false);
      expect(world.plant.contactor).toBe('open');
    },
  },
  V37: {
    source: 'IEC 61851-1:2017 Table A.6, 8.1',
    behaves: () => expect(read(charging(), openingTime('C-to-B')).value).toBeLessThanOrEqual(0.1),
  },
  V38: {
    source: 'IEC 61851-1:2017 Table A.6, 4',
    behaves: () => {
      const world = benchWith();
      doing(world, ...PLUG_IN, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 3 });
      expect(mainsAcross(world, 'end.L1', 'end.N')).toBeGreaterThan(230);
    },
  },
  V39: {
    source: 'IEC 61851-1:2017 6.3.1.2, A.4.8',
    behaves: () => expect(read(charging(), openingTime('earth-open')).value).toBeLessThanOrEqual(0.1),
  },
  V44: {
    source: 'IEC 61851-1:2017 Table B.2, Table A.7',
    behaves: () => expect(read(codedAt(220), PILOT)).toMatchObject({ duty: expect.closeTo(0.5333, 2) }),
  },
  V45: {
    source: 'IEC 61851-1:2017 6.3.1.6, Table A.7',
    behaves: () => expect(read(codedAt(1500), PILOT)).toMatchObject({ duty: expect.closeTo(0.2167, 2) }),
  },
  V47: {
    source: 'IEC 61851-1:2017 Table B.2',
    behaves: () => {
      for (const ohms of [50, 4600]) {
        const world = codedAt(ohms);
        expect(read(world, PILOT).frequency).toBeNull();
        doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 10 });
        expect(supplies(world)).toBe(false);
      }
    },
  },
  V48: {
    source: 'BS EN 61008-1; BS 7671:2018+A2:2022 643.8, from memory',
    behaves: () => expect(tripOf(0.03).tripMs).toBeLessThanOrEqual(300),
  },
  V49: {
    source: 'BS EN 61008-1',
    behaves: () => expect(tripOf(0.015)).toMatchObject({ qualifier: '>', trippedWhat: 'none' }),
  },
  V50: {
    source: 'BS EN 61008-1',
    behaves: () => {
      expect(tripOf(0.06).tripMs).toBeLessThanOrEqual(150);
      expect(tripOf(0.15).tripMs).toBeLessThanOrEqual(40);
    },
  },
  V53: {
    source: 'IEC 62955:2018 9.9.2.1',
    behaves: () => {
      const passes = [0.0025, 0.0045, 0.0065].map((directPickup) => {
        const reading = read(
          charging({ design: { directPickup } }),
          residual({ waveform: 'smooth-dc-positive', mode: 'ramp' }),
        );
        return (
          reading.value !== null &&
          reading.value >= DIRECT_BAND.least &&
          reading.value <= DIRECT_BAND.greatest
        );
      });
      expect(passes).toEqual([false, true, false]);
    },
  },
  V54: {
    source: 'IEC 62955:2018 Table 2',
    behaves: () => {
      for (const [amps, seconds] of [
        [0.006, 10],
        [0.06, 0.3],
        [0.2, 0.1],
      ] as const) {
        const reading = read(charging(), residual({ waveform: 'smooth-dc-negative', amps, seconds: 10 }));
        expect(reading.tripMs, `${amps} A`).toBeLessThanOrEqual(1000 * seconds);
      }
    },
  },
  V55: {
    source: 'IEC 62955:2018 Table 3, 9.9.3',
    behaves: () => {
      const monitored = { type: null, rated: null, by: null, direct: 'monitoring' } as const;
      const world = charging({ sheet: { residual: monitored } });
      expect(read(world, residual({ amps: 0.03, seconds: 10 }))).toMatchObject({ trippedWhat: 'none' });
      expect(world.trips.direct.hasTripped).toBe(false);
    },
  },
  V77: {
    source: 'SI 2021/1467 reg. 11',
    behaves: () => {
      const delays = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
        const world = benchWith({ sheet: { startDelay: 600 }, seed });
        doing(world, { op: 'vehicle', plugged: true, state: 'C' });
        let waited = 0;
        for (; world.indicator !== 'charging' && waited < 700; waited++)
          doing(world, { op: 'wait', seconds: 1 });
        return waited;
      });
      // A second or two of closing follow the delay.
      for (const waited of delays) expect(waited).toBeLessThanOrEqual(602);
      expect(new Set(delays).size).toBeGreaterThan(5);
    },
  },
};

/** Of a sound 30 mA device of the unit, held as long as it takes. */
function tripOf(amps: Amps): Reading {
  return read(charging(), residual({ amps, seconds: 2 }));
}

/** Rows that no bench can show as it is, and why. */
const NOT_HERE: Record<string, string> = {
  V40: 'a vehicle that ignores the end of an offer: the unit opens at once in this model, and no operation makes the vehicle ignore it',
  V41: 'the vehicle’s own answer to a new duty: the stand-in has no charger',
  V42: 'lock freed after state F: told by the chart’s tests, for no operation of the bench brings state F about',
  V72: 'the open-PEN device: the unit does not have one yet',
  V76: 'a schedule: the unit does not have one yet',
};

describe('unit behaviour on the bench', () => {
  test.each(UNIT_BEHAVIOUR.filter(({ id }) => id in ROWS))('$id: $behaviour', ({ id }) => {
    expect.hasAssertions();
    ROWS[id]?.behaves();
  });

  test('every row is shown here or left out for a reason', () => {
    expect(UNIT_BEHAVIOUR.map(({ id }) => id).filter((id) => !(id in ROWS) && !(id in NOT_HERE))).toEqual([]);
    expect(Object.keys(ROWS).filter((id) => id in NOT_HERE)).toEqual([]);
  });
});
