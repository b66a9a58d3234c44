/** A solution that was kept is the one that a new network would give, whichever position of the plant has changed. */
import { expect, test } from 'vitest';
import type { Plant } from '../../src/bench/plant.ts';
import { solve, wire } from '../../src/bench/wiring.ts';
import type { World } from '../../src/bench/world.ts';
import { benchWith, CHARGE, doing, THREE_PHASE } from './build.ts';

/** Another value of every position than it has while charging. */
const OTHER: Plant = {
  isolated: ['L1', 'L2', 'L3', 'N'],
  locked: true,
  breaker: 'tripped',
  upstream: 'tripped',
  unitBreaker: 'tripped',
  contactor: 'open',
  coil: false,
  plugLock: 'held',
  lockDriven: true,
  pilot: 'negative',
  duty: 0.1,
  cover: 'open',
  removed: ['arrester'],
  mainOff: ['L1', 'N'],
  mainLocked: true,
  links: ['L1-PE'],
  earthPole: 'open',
  pen: 'open',
  voltage: 216.2,
  missing: 'L2',
  neighbours: [{ line: 'L1', power: 1800 }],
  loadLimit: 10,
  siteLoad: 20,
  nextPoint: 16,
  testButton: true,
  flexed: true,
  leadsNulled: false,
  detectorLead: 'parted',
  testerFuse: 'opened',
  dried: 3,
  freed: ['unit'],
  openings: 2,
  damaged: ['pilot'],
  standIn: {
    plugged: true,
    state: 'D',
    coding: 13,
    pilot: 'open',
    diode: 'shorted',
    earth: 'open',
    load: 16,
    leakage: { ac: 0.01, dc: 0.004, line: 'L1' },
  },
  test: { at: 'outlet', line: 'L1', to: 'PE', resistance: null, direct: 0.006, halfWave: 0.01 },
};

function charging(): World {
  const world = benchWith({
    site: { ...THREE_PHASE, earthing: 'TN-C-S' },
    sheet: { openPen: 'earth-sensing', surgeArrester: true },
    faults: [{ fault: 'tether-insulation-moves', values: { ohms: 80_000 } }],
  });
  doing(world, ...CHARGE);
  return world;
}

test.each(Object.keys(OTHER) as (keyof Plant)[])('%s is felt or changes nothing', (position) => {
  const { wiring, installation, plant } = charging();
  const changed = { ...plant, [position]: OTHER[position] };
  expect(changed).not.toEqual(plant);
  const kept = solve(wiring, installation, changed);
  const anew = solve(wire(installation), installation, changed);
  expect(kept.planes).toEqual(anew.planes);
  expect(kept.reduced.values).toEqual(anew.reduced.values);
});

test('a position that comes back has the solution that it had', () => {
  const { wiring, installation, plant } = charging();
  const before = solve(wiring, installation, plant);
  const open = solve(wiring, installation, { ...plant, contactor: 'open' });
  expect(open).not.toBe(before);
  expect(solve(wiring, installation, { ...plant })).toBe(before);
});
