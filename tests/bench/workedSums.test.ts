/** Worked sums of textbooks and handbooks on the bench: the same circuits, made of an installation's own parts. */
import { expect, test } from 'vitest';
import { move } from '../../src/bench/settle.ts';
import type { World } from '../../src/bench/world.ts';
import { mainsAcross } from '../../src/bench/world.ts';
import { branchCurrent } from '../../src/network/potentials.ts';
import { ELECTRODE_EXAMPLE, WORKED_CIRCUITS } from '../references/workedCircuits.ts';
import { benchWith, CHARGE, doing, type Wanted } from './build.ts';

const wholeStar = WORKED_CIRCUITS.find(({ source }) => source.includes('parts 1 and 2'))?.source;
const openStar = WORKED_CIRCUITS.find(({ source }) => source.includes('part 3'))?.source;

/** 440 V between lines, and next to nothing between the source and a load of 10 Ω on each line. */
const STAR: Wanted = {
  site: {
    phases: 3,
    earthing: 'TN-S',
    voltage: 440 / Math.sqrt(3),
    loopImpedance: 0.0004,
    neutralImpedance: 0.0004,
    otherLoads: [],
    circuit: {
      length: 0.5,
      lineArea: 16,
      protectiveArea: 16,
      breaker: { type: 'C', rating: 40, breakingCapacity: 10_000, poles: 4 },
    },
  },
  sheet: { outlet: 'socket', cable: { length: 0.5, area: 16, coding: 63 } },
};

/** The stand-in's loads are told by what they would draw at 230 V. */
const TEN_OHMS = 23;

function amps({ wiring, solution }: World, part: string): number {
  const { re, im } = branchCurrent(solution.reduced, solution.planes, wiring.branchOf(part)).mains;
  return Math.hypot(re, im);
}

test(`three loads of 10 Ω: 254 V and 25.4 A each (${wholeStar})`, () => {
  const world = benchWith(STAR);
  doing(world, ...CHARGE, { op: 'vehicle', load: TEN_OHMS });
  for (const line of ['L1', 'L2', 'L3']) {
    expect(Math.abs(mainsAcross(world, `end.${line}`, 'end.N') - 254)).toBeLessThan(0.5);
    expect(Math.abs(amps(world, `standin.load.${line}`) - 25.4)).toBeLessThan(0.05);
  }
});

test(`the neutral lost and one line too: 22 A in series, the star point half-way (${openStar})`, () => {
  const world = benchWith({
    ...STAR,
    faults: [
      { fault: 'neutral-pole-stuck-open', values: {} },
      { fault: 'line-pole-stuck-open', values: { line: 2 } },
    ],
  });
  doing(world, ...CHARGE, { op: 'vehicle', load: TEN_OHMS });
  expect(Math.abs(amps(world, 'standin.load.L1') - 22)).toBeLessThan(0.05);
  expect(Math.abs(amps(world, 'standin.load.L3') - 22)).toBeLessThan(0.05);
  expect(amps(world, 'standin.load.L2')).toBeLessThan(0.01);
  for (const line of ['L1', 'L3'])
    expect(Math.abs(mainsAcross(world, `end.${line}`, 'end.N') - 220)).toBeLessThan(0.5);
});

test(`an electrode of 200 Ω and 250 mA: 50 V (${ELECTRODE_EXAMPLE.source})`, () => {
  const { electrode, amps: fault, volts } = ELECTRODE_EXAMPLE;
  const world = benchWith({
    site: {
      earthing: 'TT',
      voltage: 230,
      neutralImpedance: 0.02,
      electrodeResistance: electrode,
      sourceElectrodeResistance: 0.01,
      otherLoads: [],
    },
  });
  doing(world, ...CHARGE);
  const resistance = 230 / fault - electrode;
  move(world, { test: { at: 'outlet', line: 'L1', to: 'PE', resistance, direct: 0, halfWave: 0 } });
  expect(Math.abs(mainsAcross(world, 'met', 'earth') - volts)).toBeLessThan(0.1);
});
