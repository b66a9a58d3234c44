/** The worked examples that only a bench can show: each beside what a verifier makes of it. */

import { describe, expect, test } from 'vitest';
import { INPUT } from '../../src/bench/instruments/voltageTools.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { leadsOn, loadedVolts, seenBy } from '../../src/bench/port.ts';
import { residualThrough } from '../../src/bench/sensors.ts';
import { move } from '../../src/bench/settle.ts';
import type { World } from '../../src/bench/world.ts';
import { mainsAcross } from '../../src/bench/world.ts';
import { conductorResistance, fromTwenty } from '../../src/laws/conductor.ts';
import { branchCurrent } from '../../src/network/potentials.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations } from '../../src/verification/assess.ts';
import { observe } from '../../src/verification/observed.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { BENCH_EXAMPLES, W24, W27, W28, W29, W30 } from '../references/benchExamples.ts';
import { DESIGN_CHECK_VALUES } from '../references/designCheckValues.ts';
import { scenarioOf } from '../scenario/build.ts';
import { benchWith, CHARGE, doing, PLUG_IN, read, type Wanted } from './build.ts';

const openPen = actionNamed('open-pen') as TestAction;

test('W1 to W30 are there, each once', () => {
  const ids = [...DESIGN_CHECK_VALUES.map(({ id }) => id), ...Object.keys(BENCH_EXAMPLES)];
  expect(ids.sort()).toEqual(Array.from({ length: 30 }, (_, i) => `W${i + 1}`).sort());
});

describe(`W24: ${W24.input} (${W24.source})`, () => {
  const WATTS = 150_000;
  /** Neighbours that move the neutral by so many volts at right angles to L1 (Millman's theorem). */
  const moved = (volts: number) => {
    const apart = volts / (236 * Math.sqrt(3));
    const shares = { L1: 1 / 3, L2: 1 / 3 - apart, L3: 1 / 3 + apart };
    const neighbours = (['L1', 'L2', 'L3'] as const).map((line) => ({ line, power: WATTS * shares[line] }));
    return { op: 'supply', pen: 'open', neighbours } as const;
  };
  const unit = (opensIn: number | null, ridesOut = true, blind = false): Wanted => ({
    site: { otherLoads: [], sourceElectrodeResistance: 0.001 },
    sheet: { openPen: 'earth-sensing', openPenRidesOut: ridesOut },
    faults: [
      ...(opensIn === null ? [] : [{ fault: 'open-pen-late', values: { seconds: opensIn } }]),
      ...(blind ? [{ fault: 'open-pen-blind', values: {} }] : []),
    ],
  });
  const met = (world: World) => mainsAcross(world, 'met', 'earth');
  const findingsOf = (wanted: Wanted) =>
    Object.fromEntries(
      verify(scenarioOf(wanted))
        .actions.find(({ action }) => action === openPen)
        ?.expectations.map(({ expectation, finding }) => [expectation.id, finding]) ?? [],
    );

  test.each(W24.opens)('opens after $after s: complies $complies', ({ after, complies }) => {
    const world = benchWith(unit(after));
    doing(world, ...CHARGE, moved(W24.touch));
    expect(Math.abs(met(world) - W24.touch)).toBeLessThan(0.5);
    doing(world, { op: 'wait', seconds: after - 0.1 });
    expect(world.plant).toMatchObject({ contactor: 'closed', earthPole: 'closed' });
    doing(world, { op: 'wait', seconds: 0.3 });
    expect(world.plant).toMatchObject({ contactor: 'open', earthPole: 'open' });
    const found = findingsOf(unit(after, after > W24.back));
    expect(found['in-time']).toBe(complies ? 'met' : 'broken');
  });

  test.each([
    { does: 'stays on, and its sheet says so', opensIn: 4.6, ridesOut: true },
    { does: 'opens, and its sheet says so', opensIn: 1.2, ridesOut: false },
  ])('over after $does: complies', ({ opensIn, ridesOut }) => {
    const world = benchWith(unit(opensIn, ridesOut));
    doing(
      world,
      ...CHARGE,
      moved(W24.touch),
      { op: 'wait', seconds: W24.back },
      { op: 'supply', pen: 'sound', neighbours: null },
    );
    doing(world, { op: 'wait', seconds: 5 });
    expect(world.plant.contactor).toBe(ridesOut ? 'closed' : 'open');
    expect(verify(scenarioOf(unit(opensIn, ridesOut))).conclusion).toBe('sound');
  });

  const again = (volts: number) =>
    [
      moved(volts),
      { op: 'wait', seconds: 6 },
      { op: 'reset', what: 'unit' },
      { op: 'wait', seconds: 8 },
    ] as const;

  test.each(W24.closes)('closes again at $at V: $allowed', ({ at, allowed }) => {
    const world = benchWith(unit(null));
    doing(world, ...CHARGE, moved(W24.touch), { op: 'wait', seconds: 6 }, ...again(at));
    expect(world.plant.contactor).toBe(allowed ? 'closed' : 'open');
  });

  // A meter's 1 % + 1 V leaves 72 V open: what is said is said of 75 V.
  test.each([
    { at: W24.touch, finding: 'broken' },
    { at: W24.closes[1].at, finding: 'not shown' },
  ])('of a unit that stays closed at $at V a verifier says: $finding', ({ at, finding }) => {
    const wanted = unit(null, true, true);
    const world = benchWith(wanted);
    doing(world, ...CHARGE);
    const inputs: readonly OperationInput[] = [
      ...again(at),
      { op: 'measure', quantity: 'voltage', between: ['met', 'earth'] },
      { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'] },
    ];
    const samples = inputs.map((input) => observe(world, operation(input)).sample);
    const judged = judgeExpectations(openPen, papersOf(scenarioOf(wanted)), { samples });
    expect(judged.find(({ expectation }) => expectation.id === 'onto-hazard')?.finding).toBe(finding);
  });
});

describe(`W27: ${W27.input} (${W27.source})`, () => {
  /** From asking again to the contactor's closing, s. */
  function supplied(seed: number, overridden: boolean): number {
    const world = benchWith({ sheet: { startDelay: W27.delay }, seed });
    doing(world, ...PLUG_IN, ...(overridden ? [{ op: 'press', button: 'override-delay' } as const] : []));
    doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: W27.delay + W27.within });
    expect(world.plant.contactor).toBe('closed');
    doing(world, { op: 'vehicle', state: 'B' }, { op: 'wait', seconds: W27.after });
    const [asked, waited] = doing(
      world,
      { op: 'vehicle', state: 'C' },
      { op: 'wait', seconds: W27.delay + W27.within },
    );
    const closed = waited?.events.find(({ what }) => what === 'contactor closed')?.at;
    return (closed ?? Infinity) - (asked?.seen.at ?? 0);
  }
  const SEEDS = [1, 2, 3, 4, 5, 6];

  test('waits for its random delay anew, and no longer than that', () => {
    const times = SEEDS.map((seed) => supplied(seed, false));
    expect(Math.max(...times)).toBeLessThanOrEqual(W27.delay + W27.within);
    expect(times.filter((time) => time > W27.within).length).toBeGreaterThan(SEEDS.length / 2);
    expect(new Set(times.map(Math.round)).size).toBe(SEEDS.length);
  });

  test('overridden, it supplies within 3 s', () => {
    for (const seed of SEEDS) expect(supplied(seed, true)).toBeLessThanOrEqual(W27.within);
  });

  test('a verifier finds nothing wrong with either', () => {
    expect(
      verify(scenarioOf({ site: { earthing: 'TN-S' }, sheet: { startDelay: W27.delay } })).conclusion,
    ).toBe('sound');
  });
});

describe(`W28: ${W28.input} (${W28.source})`, () => {
  /** The unit's own filters leak 0.3 mA, capacitively: figures agree to half a digit of the third place. */
  const OWN = 3;
  type Leak = (typeof W28)['ramp' | 'half'][number]['leakage'];
  /** Supplying at 230 V, its device set to the pick-up, with that leakage behind it. */
  function leaking(leakage: Leak, amps: number): World {
    const world = benchWith({
      site: { voltage: 230, otherLoads: [], loopImpedance: 0.02, neutralImpedance: 0.02 },
      sheet: { residual: { type: 'A', rated: 0.03, by: 'contactor', direct: null } },
      design: { residualPickup: W28.pickup },
      parts: (parts) => ({
        ...parts,
        parts: [
          ...parts.parts,
          leakage === 'resistive'
            ? { id: 'leak', a: 'end.L1', b: 'end.PE', resistance: 230 / amps }
            : { id: 'leak', a: 'end.L1', b: 'end.PE', resistance: 1e10, susceptance: amps / 230 },
        ],
      }),
    });
    doing(world, ...CHARGE);
    return world;
  }
  function felt(world: World, amps: number): number {
    move(world, {
      test: { at: 'outlet', line: 'L1', to: 'PE', resistance: 230 / amps, direct: 0, halfWave: 0 },
    });
    return residualThrough(world.wiring, world.solution, world.installation, 'unit').alternating;
  }
  const trips = (leakage: Leak, leak: number, amps: number): boolean => {
    const world = leaking(leakage, leak);
    const { tripMs } = read(world, {
      op: 'measure',
      quantity: 'residual',
      line: 'L1',
      waveform: 'sinusoidal',
      mode: 'fixed',
      amps,
    });
    return tripMs != null;
  };

  test.each(W28.ramp)('10 mA $leakage: $reads A more is the pick-up', ({ leakage, amps, reads }) => {
    expect(felt(leaking(leakage, amps), reads)).toBeCloseTo(W28.pickup, OWN);
    expect([0.97, 1.03].map((share) => trips(leakage, amps, share * reads))).toEqual([false, true]);
  });

  test.each(W28.half)(
    '8 mA $leakage and 15 mA: $felt A, trips $trips',
    ({ leakage, amps, felt: sum, trips: does }) => {
      expect(felt(leaking(leakage, amps), 0.015)).toBeCloseTo(sum, OWN);
      expect(trips(leakage, amps, 0.015)).toBe(does);
    },
  );
});

describe(`W29: ${W29.input} (${W29.source})`, () => {
  /** A joint in the neutral, and the supply raised until it carries its amperes. */
  function jointed(): World {
    const at = (voltage: number) => {
      const world = benchWith({
        site: { voltage },
        parts: (parts) => ({
          ...parts,
          parts: [
            ...parts.parts.map((part) => (part.id === 'circuit.N' ? { ...part, b: 'joint' } : part)),
            { id: 'joint', a: 'joint', b: 'supply.N', resistance: W29.ohms },
          ],
        }),
      });
      doing(world, ...CHARGE, { op: 'vehicle', load: W29.amps });
      return world;
    };
    return at((230 * W29.amps) / carried(at(230)));
  }
  function carried({ wiring, solution }: World): number {
    const { re, im } = branchCurrent(solution.reduced, solution.planes, wiring.branchOf('joint')).mains;
    return Math.hypot(re, im);
  }

  test('cold, it loses its volts and watts', () => {
    const world = jointed();
    const volts = mainsAcross(world, 'joint', 'supply.N');
    expect(carried(world)).toBeCloseTo(W29.amps, 2);
    expect(volts).toBeCloseTo(W29.cold.volts, 3);
    expect(volts * carried(world)).toBeCloseTo(W29.cold.watts, 1);
  });

  test('warm, it settles where its watts keep it; from 124 mΩ it never does', () => {
    const warmed = (ohms: number) =>
      Array.from({ length: 2000 }).reduce<number>(
        (hot) => Math.min(1e6, ohms * fromTwenty(20 + W29.kelvinsPerWatt * W29.amps ** 2 * hot)),
        ohms,
      );
    const { kelvins, ohms, watts } = W29.settled;
    const hot = warmed(W29.ohms);
    // 0.4 % a kelvin in IEC 60228, 0.393 % in the example.
    const near = (value: number, expected: number) =>
      expect(Math.abs(value / expected - 1)).toBeLessThan(0.02);
    near(hot, ohms);
    near(W29.amps ** 2 * hot, watts);
    near(W29.kelvinsPerWatt * W29.amps ** 2 * hot, kelvins);
    expect(warmed(0.97 * W29.runsAwayFrom)).toBeLessThan(1e6);
    expect(warmed(1.02 * W29.runsAwayFrom)).toBe(1e6);
  });

  test('in the protective conductor no test finds it cold: +0.02 Ω is inside ±0.05 Ω', () => {
    const faults = [{ fault: 'pe-joint', values: { ohms: W29.ohms } }];
    expect(verify(scenarioOf({ site: { earthing: 'TN-S' }, faults })).conclusion).toBe('sound');
  });
});

describe(`W30: ${W30.input} (${W30.source})`, () => {
  const lit = () =>
    benchWith({
      site: { voltage: 230, otherLoads: [] },
      parts: (parts) => ({
        ...parts,
        parts: [...parts.parts, { id: 'lamp', a: 'busbar.L1', b: 'supply.N', resistance: W30.lamp }],
      }),
    });
  const atOrigin = ({ wiring, solution, installation }: World) =>
    residualThrough(wiring, solution, installation, 'origin').alternating;

  test('the neutral that was taken for dead is not', () => {
    const world = lit();
    doing(world, { op: 'isolate' }, { op: 'open-cover' });
    const seen = seenBy(leadsOn(world, 'supply.N', 'supply.PE'));
    expect(Math.abs(loadedVolts(seen, W30.detector) - W30.volts)).toBeLessThan(1);
    // The detector of the bench loads it less, and finds it as well.
    expect(INPUT['two-pole']).toBeGreaterThan(W30.detector);
    const [proved] = doing(world, { op: 'prove-dead', at: 'supply' });
    expect(proved?.readings.some(({ value }) => (value ?? 0) > 200)).toBe(true);
    expect(world.knowledge.provedDead.supply).toBeUndefined();
  });

  test('with the neutral joined its whole current is residual', () => {
    expect(atOrigin(lit())).toBeCloseTo(W30.residual, 3);
  });

  test.each(W30.crossing)('N–PE through $ohms Ω at $amps A: 30 mA', ({ amps, ohms }) => {
    expect((conductorResistance({ ...W30.run, class: 2 }) * amps) / W30.crosses).toBeCloseTo(ohms, 0);
    const world = benchWith({
      site: { voltage: 230, otherLoads: [], loopImpedance: 0.02, neutralImpedance: 0.02 },
      faults: [{ fault: 'neutral-pe-insulation-low', values: { ohms } }],
    });
    doing(world, ...CHARGE);
    doing(world, { op: 'vehicle', load: amps });
    // The unit's own filters leak a third of a milliampere, at right angles.
    expect(Math.abs(atOrigin(world) - W30.crosses)).toBeLessThan(0.001);
  });
});
