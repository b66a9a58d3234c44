/**
 * The whole bench against the circuit simulator: two scenarios, ten positions each, every terminal that leads can be
 * put on, 50 Hz and both halves of the pilot. The netlist is written from the same parts; everything between parts
 * and potentials is then somebody else's.
 *
 * The bench puts 10 GΩ of insulation beside 1 mΩ of contact, ten times beyond what the simulator is trusted with
 * elsewhere in these tests. Nothing is left out or brought nearer for its sake: it still agrees, also where a
 * potential is held by insulation alone. Spreads beyond that are compared with exact arithmetic in tests/network.
 */
import { describe, expect, test } from 'vitest';
import { leadsOn } from '../../src/bench/port.ts';
import { move } from '../../src/bench/settle.ts';
import { terminalsOf } from '../../src/bench/terminals.ts';
import { valuesOf } from '../../src/bench/wiring.ts';
import type { World } from '../../src/bench/world.ts';
import { mainsAcross } from '../../src/bench/world.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { benchOf } from '../../src/scenario/scenario.ts';
import { CHARGE, doing, MAKE_DEAD, PLUG_IN } from '../bench/build.ts';
import { scenarioNamed } from '../scenario/build.ts';
import { netlistOf, simulate } from './circuitSimulator.ts';

interface Position {
  readonly name: string;
  readonly faults?: readonly FaultChoice[];
  readonly bring: (world: World) => void;
}

const testCurrent = {
  at: 'outlet',
  line: 'L1',
  to: 'PE',
  resistance: 230 / 0.03,
  direct: 0,
  halfWave: 0,
} as const;

const POSITIONS: readonly Position[] = [
  { name: 'energised, nothing plugged in', bring: () => {} },
  { name: 'isolated and proved dead', bring: (w) => doing(w, ...MAKE_DEAD) },
  { name: 'state B', bring: (w) => doing(w, ...PLUG_IN) },
  {
    name: 'state C, supplied, with load and leakage',
    bring: (w) =>
      doing(w, ...CHARGE, {
        op: 'vehicle',
        load: 10,
        leakage: { ac: 0.004, dc: 0.001, line: 'L1' },
      }),
  },
  { name: 'PE to the vehicle open', bring: (w) => doing(w, ...PLUG_IN, { op: 'vehicle', earth: 'open' }) },
  {
    name: 'pilot shorted to PE',
    bring: (w) =>
      doing(w, ...CHARGE, { op: 'vehicle', pilot: 'shorted-to-earth' }, { op: 'wait', seconds: 3 }),
  },
  { name: 'diode shorted in B', bring: (w) => doing(w, ...PLUG_IN, { op: 'vehicle', diode: 'shorted' }) },
  {
    name: 'unit taken off',
    bring: (w) => doing(w, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' }, { op: 'energise' }),
  },
  { name: 'one pole welded', faults: [{ fault: 'line-pole-welded', values: { line: 1 } }], bring: () => {} },
  {
    name: 'supplied, 30 mA a.c. of a test in the outlet',
    bring: (w) => {
      doing(w, ...CHARGE);
      move(w, { test: testCurrent });
    },
  },
];

const bringTo = (id: string, { faults = [], bring }: Position): World => {
  const world = benchOf(scenarioNamed(id), faults);
  bring(world);
  return world;
};

/** V, complex in mains and real elsewhere, of every terminal to the main earthing terminal. */
type Volts = readonly { readonly re: number; readonly im: number }[];

const toEarthing = (world: World, { re, im }: { re: Float64Array; im: Float64Array }): Volts =>
  terminalsOf(world.installation.site).map((terminal) => {
    const { a, b } = leadsOn(world, terminal, 'met').port;
    return { re: (re[a] ?? 0) - (re[b] ?? 0), im: (im[a] ?? 0) - (im[b] ?? 0) };
  });

const real = (re: Float64Array) => ({ re, im: new Float64Array(re.length) });

/** Allowed: a share of the potential, or of the volt where that is more. The simulator's diode is a real one. */
const ALLOWED = {
  mains: { share: 0.001, volts: 0.01 },
  high: { share: 0.02, volts: 0.01 },
  low: { share: 0.02, volts: 0.01 },
} as const;

/** The greatest distance from the simulator's potentials, in what is allowed. */
async function distance(world: World, name: keyof typeof ALLOWED): Promise<number> {
  const { wiring, installation, plant, solution } = world;
  const values = valuesOf(wiring, installation, plant);
  const theirs = toEarthing(world, await simulate(netlistOf(wiring.topology, values, solution, name)));
  const { planes } = solution;
  const ours = toEarthing(world, name === 'mains' ? planes.mains : real(planes[name]));
  const { share, volts } = ALLOWED[name];
  return Math.max(
    ...theirs.map(({ re, im }, i) => {
      const mine = ours[i] ?? { re: Number.NaN, im: Number.NaN };
      return Math.hypot(mine.re - re, mine.im - im) / Math.max(share * Math.hypot(re, im), volts);
    }),
  );
}

describe.each(['harbour-mews', 'foundry-yard'])(
  '%s, every terminal within 0.1 % or 10 mV, pilot 2 %%',
  (id) => {
    test.each(POSITIONS)('$name', { timeout: 60_000 }, async (position) => {
      const world = bringTo(id, position);
      const found = { mains: 0, high: 0, low: 0 };
      for (const name of ['mains', 'high', 'low'] as const) found[name] = await distance(world, name);
      const shares = Object.entries(found).map(([name, far]) => `${name} ${far.toExponential(1)}`);
      console.log(`${id}, ${position.name}: ${shares.join(', ')} of what is allowed`);
      expect(Math.max(...Object.values(found))).toBeLessThanOrEqual(1);
    });
  },
);

test('the positions are what their names say', () => {
  const worlds = POSITIONS.map((position) => ({ ...position, world: bringTo('foundry-yard', position) }));
  for (const { name, world } of worlds) {
    expect(world.plant.contactor, name).toBe(name.includes('supplied') ? 'closed' : 'open');
    const supply = mainsAcross(world, 'origin.L1', 'origin.N');
    if (name.startsWith('isolated')) expect(supply).toBeLessThan(1);
    else expect(supply, name).toBeGreaterThan(230);
    const outlet = mainsAcross(world, 'end.L1', 'end.PE');
    expect(outlet > 200, name).toBe(name.includes('supplied'));
  }
});
