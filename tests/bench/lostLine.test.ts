/** What a lost line does on the bench: to the unit by its sheet, to the outlet by the circuit. */
import { describe, expect, test } from 'vitest';
import type { World } from '../../src/bench/world.ts';
import type { LostLine } from '../../src/unit/design.ts';
import { LOST_LINES } from '../../src/unit/design.ts';
import { benchWith, CHARGE, doing, read, THREE_PHASE } from './build.ts';

const charging = (lostLine: LostLine): World => {
  const world = benchWith({ site: THREE_PHASE, sheet: { outlet: 'socket', lostLine } });
  doing(world, ...CHARGE);
  expect(world.indicator).toBe('charging');
  return world;
};

const volts = (world: World, line: string, to: 'N' | 'PE'): number =>
  read(world, { op: 'measure', quantity: 'voltage', between: [`outlet.${line}`, `outlet.${to}`] }).value ?? 0;

describe.each(LOST_LINES)('a unit whose sheet says that it %s', (lostLine) => {
  test.each(['L2', 'L3'] as const)('without %s', (missing) => {
    const world = charging(lostLine);
    doing(world, { op: 'supply', missing }, { op: 'wait', seconds: 0.1 });
    const goesOn = lostLine === 'goes-on';
    expect(world.indicator).toBe(goesOn ? 'charging' : 'waiting');
    expect(world.plant.contactor).toBe(goesOn ? 'closed' : 'open');
    for (const line of ['L1', 'L2', 'L3'])
      expect(volts(world, line, 'N') > 200, line).toBe(goesOn && line !== missing);
    // Nothing feeds the lost line: to PE it has nothing in either case.
    expect(volts(world, missing, 'PE')).toBeLessThan(5);
  });

  test('without the line that feeds its electronics: dark, no pilot, a dead outlet', () => {
    const world = charging(lostLine);
    doing(world, { op: 'supply', missing: 'L1' }, { op: 'wait', seconds: 0.1 });
    expect(world.indicator).toBe('dark');
    expect(world.plant.contactor).toBe('open');
    expect(read(world, { op: 'measure', quantity: 'pilot' }).high).toBeCloseTo(0, 1);
    for (const line of ['L1', 'L2', 'L3']) expect(volts(world, line, 'PE')).toBeLessThan(5);
  });

  test('and back: supplied on three lines again, after the pause of 3 s where the offer was withdrawn', () => {
    const world = charging(lostLine);
    const [, , , after] = doing(
      world,
      { op: 'supply', missing: 'L3' },
      { op: 'wait', seconds: 1 },
      { op: 'supply', missing: null },
      { op: 'wait', seconds: 5 },
    );
    const closed = after?.events.find(({ what }) => what === 'contactor closed');
    if (lostLine === 'goes-on') expect(closed).toBeUndefined();
    else expect((closed?.at ?? 0) - ((after?.seen.at ?? 0) - 6)).toBeGreaterThan(3);
    for (const line of ['L1', 'L2', 'L3']) expect(volts(world, line, 'N')).toBeGreaterThan(200);
  });
});

test('a load on the lost line brings its end to the neutral, not to the other lines', () => {
  const world = charging('goes-on');
  doing(world, { op: 'vehicle', load: 10 }, { op: 'supply', missing: 'L2' });
  // 230 V / 10 A = 23 Ω to the neutral and nothing that feeds it.
  expect(volts(world, 'L2', 'N')).toBeLessThan(5);
  expect(volts(world, 'L1', 'N')).toBeGreaterThan(200);
});
