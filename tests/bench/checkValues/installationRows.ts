/** V56 to V74: the circuit, its loops and insulation, and the supply. */
import { expect } from 'vitest';
import type { OperationInput } from '../../../src/bench/operation.ts';
import { move } from '../../../src/bench/settle.ts';
import type { World } from '../../../src/bench/world.ts';
import { mainsAcross } from '../../../src/bench/world.ts';
import type { Parts } from '../../../src/faults/parts.ts';
import { withPart } from '../../../src/faults/parts.ts';
import { greatestLoopImpedance, measuredLoopLimit } from '../../../src/laws/overcurrent.ts';
import { OPEN_PEN_TIME } from '../../../src/laws/supplyLimits.ts';
import { verify } from '../../../src/scenario/verify.ts';
import { scenarioOf } from '../../scenario/build.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD } from '../build.ts';
import { type BenchRow, type BenchRows, charging, exact, truth } from './row.ts';

interface Run {
  readonly external: number;
  readonly length: number;
  readonly line: number;
  readonly protective: number;
}

/** A circuit of this run on TN-C-S, its cover off, with nothing else on the supply. */
const runOf = ({ external, length, line, protective }: Run): World =>
  benchWith({
    site: {
      loopImpedance: external,
      neutralImpedance: external,
      otherLoads: [],
      circuit: { length, lineArea: line, protectiveArea: protective },
    },
  });

/** Contacts and terminals of board and earthing: three or four milliohms in all. */
const CONTACTS = 0.005;

function zsAt(run: Run): number {
  const world = runOf(run);
  doing(world, ...MAKE_DEAD, { op: 'energise' });
  return truth(world, {
    op: 'measure',
    quantity: 'loop',
    current: 'full',
    between: ['supply.L1', 'supply.PE'],
  });
}

function r1r2Of(run: Run): number {
  const world = runOf(run);
  doing(
    world,
    ...MAKE_DEAD,
    { op: 'disconnect', what: 'unit' },
    { op: 'link', between: ['origin.L1', 'origin.PE'] },
  );
  return truth(world, { op: 'measure', quantity: 'continuity', between: ['supply.L1', 'supply.PE'] });
}

const near = (found: number, expected: number, more = CONTACTS): void => {
  expect(found).toBeGreaterThan(expected - 0.0006);
  expect(found).toBeLessThan(expected + more);
};

const coldRun = (run: Run, r1r2: number, zs: number): BenchRow => ({
  behaviour: `R1+R2 reads ${r1r2} Ω and Zs ${zs} Ω, cold; nothing warms on the bench`,
  behaves: () => {
    near(r1r2Of(run), r1r2);
    near(zsAt(run), zs);
  },
});

const ORIGIN_LOOP: OperationInput = {
  op: 'measure',
  quantity: 'loop',
  current: 'full',
  between: ['origin.L1', 'origin.PE'],
};

const prospective = (external: number, amps: number): BenchRow => ({
  behaviour: `Ze of ${external} Ω shows ${amps} A prospective`,
  behaves: () => {
    const world = runOf({ external, length: 10, line: 6, protective: 6 });
    const reading = exact(world, ORIGIN_LOOP);
    expect(reading.value).toBe(external);
    expect(reading.prospective).toBe(amps);
  },
});

/** The limit that the loop test of a verification is judged by. */
function loopLimitOf(type: 'B' | 'C', rating: number): number | undefined {
  const breaker = { type, rating, breakingCapacity: 6000, poles: 2 } as const;
  const { actions } = verify(scenarioOf({ site: { circuit: { breaker } } }));
  return actions.find(({ action }) => action.id === 'loop')?.limits[0]?.limit.limit;
}

/** Insulation between live conductors and PE of this circuit and of others on the same board, MΩ. */
function insulated(megohms: readonly [number, number, ...number[]]): (sound: Parts) => Parts {
  const [line, neutral, ...others] = megohms;
  return (sound) => {
    const both = (
      [
        ['insulation.circuit.L1-PE', line],
        ['insulation.circuit.N-PE', neutral],
      ] as const
    ).reduce((parts, [id, m]) => withPart(parts, id, (part) => ({ ...part, resistance: m * 1e6 })), sound);
    const more = others.map((m, i) => ({
      id: `circuit ${i}`,
      a: 'supply.L1',
      b: 'supply.PE',
      resistance: m * 1e6,
    }));
    return { ...both, parts: [...both.parts, ...more] };
  };
}

export const INSTALLATION_ROWS: BenchRows = {
  V56: {
    behaviour: 'a loop behind a B32 is judged by 0.8 of 1.37 Ω',
    behaves: () => {
      expect(Math.abs((loopLimitOf('B', 32) ?? 0) - 0.8 * 1.37)).toBeLessThanOrEqual(0.01);
    },
  },
  V58: {
    behaviour:
      'behind a C32 0.60 Ω, measured cold, is over the limit of 0.54 Ω, and below the 0.68 Ω of the table',
    behaves: () => {
      const world = charging({ site: { loopImpedance: 0.44, neutralImpedance: 0.44, otherLoads: [] } });
      const between: [string, string] = ['outlet.L1', 'outlet.PE'];
      const { value } = exact(world, { op: 'measure', quantity: 'loop', current: 'full', between });
      expect(value).toBe(0.6);
      expect(Math.abs((loopLimitOf('C', 32) ?? 0) - 0.54)).toBeLessThanOrEqual(0.01);
      expect(0.6).toBeGreaterThan(measuredLoopLimit('C', 32));
      expect(0.6).toBeLessThan(greatestLoopImpedance('C', 32));
    },
  },
  V59: coldRun({ external: 0.6, length: 10, line: 1.5, protective: 1 }, 0.302, 0.902),
  V60: {
    behaviour: 'Zs of 2.0 Ω less Ze of 1.5 Ω is the R1+R2 of 0.5 Ω that is read dead',
    behaves: () => {
      const run = { external: 1.5, length: 0.5 / 0.0302, line: 1.5, protective: 1 };
      near(zsAt(run), 2);
      near(r1r2Of(run), 0.5);
      near(zsAt(run) - 1.5, r1r2Of(run));
    },
  },
  V61: coldRun({ external: 0.35, length: 30, line: 6, protective: 2.5 }, 0.315, 0.665),
  V62: coldRun({ external: 0.8, length: 25, line: 6, protective: 4 }, 0.192, 0.992),
  V63: coldRun({ external: 0.35, length: 40, line: 10, protective: 4 }, 0.258, 0.608),
  V64: {
    behaviour: '50 m of 6/2.5 mm² read 0.52 Ω',
    behaves: () => near(r1r2Of({ external: 0.2, length: 50, line: 6, protective: 2.5 }), 0.52, 0.01),
  },
  V65: {
    behaviour: '50 m of 10/4 mm² read 0.32 Ω',
    behaves: () => near(r1r2Of({ external: 0.2, length: 50, line: 10, protective: 4 }), 0.32, 0.01),
  },
  V66: prospective(0.3, 767),
  V67: prospective(0.35, 657),
  V69: {
    behaviour: 'on 200 Ω of electrode 30 mA raise 6 V, and a dead fault to PE draws 1.15 A',
    behaves: () => {
      const dead = {
        id: 'fault',
        a: 'supply.L1',
        b: 'supply.PE',
        resistance: 0.001,
        contact: 'earthing-conductor',
      };
      const world = benchWith({
        site: {
          earthing: 'TT',
          voltage: 230,
          neutralImpedance: 0.02,
          electrodeResistance: 200,
          sourceElectrodeResistance: 0.01,
          otherLoads: [],
        },
        parts: (sound) => ({ ...sound, parts: [...sound.parts, dead] }),
      });
      // On TT that contact belongs to nothing else.
      move(world, { removed: ['earthing-conductor'] });
      doing(world, ...CHARGE);
      const test = {
        at: 'outlet',
        line: 'L1',
        to: 'PE',
        resistance: 230 / 0.03,
        direct: 0,
        halfWave: 0,
      } as const;
      move(world, { test });
      // The electrode is in series with the tester's resistor: 30 mA less 2.5 %.
      expect(mainsAcross(world, 'met', 'earth')).toBeCloseTo((6 * 7667) / 7867, 1);
      move(world, { test: null, removed: [] });
      expect(mainsAcross(world, 'met', 'earth') / 200).toBeCloseTo(1.15, 2);
    },
  },
  V70: {
    behaviour: '5, 20, 10, 20 and 2 MΩ in parallel read 1.11 MΩ, lives joined to PE',
    behaves: () => {
      const world = benchWith({ parts: insulated([5, 20, 10, 20, 2]) });
      doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
      const { value } = exact(world, {
        op: 'measure',
        quantity: 'insulation',
        volts: 500,
        between: [['supply.L1', 'supply.N'], 'supply.PE'],
      });
      expect(value).toBe(1.11e6);
    },
  },
  V71: {
    behaviour: 'at 216.2 and at 253.0 V a sound unit charges, with a window on its voltage too',
    behaves: () => {
      for (const voltage of [216.2, 253])
        for (const openPen of ['none', 'voltage-window'] as const) {
          const world = charging({ site: { voltage, otherLoads: [] }, sheet: { openPen } });
          doing(world, { op: 'wait', seconds: 2 * OPEN_PEN_TIME });
          expect(world.indicator).toBe('charging');
        }
    },
  },
  V72: {
    behaviour:
      'origin at 216.2 V and 5 % of drop: a window on the voltage locks out, though nothing is broken',
    behaves: () => {
      // 65.5 m of 6 mm² drop 11.5 V under what a load of 32 A at 230 V draws from 205 V.
      const world = charging({
        site: {
          voltage: 216.82,
          loopImpedance: 0.02,
          neutralImpedance: 0.02,
          otherLoads: [],
          circuit: { length: 65.5 },
        },
        sheet: { openPen: 'voltage-window' },
      });
      doing(world, { op: 'wait', seconds: 2 * OPEN_PEN_TIME });
      expect(world.indicator).toBe('charging');
      doing(world, { op: 'vehicle', load: 32 });
      expect(Math.abs(mainsAcross(world, 'origin.L1', 'origin.N') - 216.2)).toBeLessThan(0.05);
      expect(Math.abs(mainsAcross(world, 'inner.L1', 'inner.N') - 204.7)).toBeLessThan(0.1);
      doing(world, { op: 'wait', seconds: OPEN_PEN_TIME });
      expect(world.plant).toMatchObject({ contactor: 'open', earthPole: 'open', pen: 'sound' });
      expect(world.indicator).toBe('fault');
    },
  },
  V73: {
    behaviour: 'the tether’s PE, 5 m of 6 mm² class 5, reads 16.5 mΩ and its contacts',
    behaves: () => {
      const world = benchWith();
      doing(world, ...MAKE_DEAD);
      const between: [string, string] = ['supply.PE', 'outlet.PE'];
      near(truth(world, { op: 'measure', quantity: 'continuity', between }), 0.0165, 0.01);
    },
  },
  V74: {
    behaviour: 'a kilometre of 1.5 mm² reads 12.1 Ω',
    behaves: () => {
      const world = runOf({ external: 0.2, length: 1000, line: 6, protective: 1.5 });
      doing(world, ...MAKE_DEAD);
      const between: [string, string] = ['met', 'supply.PE'];
      near(truth(world, { op: 'measure', quantity: 'continuity', between }), 12.1);
    },
  },
};
