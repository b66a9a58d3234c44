/** What two leads see: the two voltage tools, joined terminals, and terminals that are out of reach. */
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { leadsOn, seenBy } from '../../src/bench/port.ts';
import { terminalsOf } from '../../src/bench/terminals.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, read, THREE_PHASE } from './build.ts';

describe('a ghost voltage', () => {
  // A pole bled by 2 MΩ: 10 MΩ of a meter leave nearly all of it, the detector's load nearly nothing.
  const bled = () => benchWith({ sheet: { poleBleed: 2e6 } });
  const between: [string, string] = ['outlet.L1', 'outlet.PE'];

  test('stands on a meter of 10 MΩ', () => {
    const reading = read(bled(), { op: 'measure', quantity: 'voltage', tool: 'meter', between });
    expect(reading.value).toBeGreaterThan(150);
  });

  test('is gone on the two-pole detector', () => {
    const reading = read(bled(), { op: 'measure', quantity: 'voltage', tool: 'two-pole', between });
    expect(reading.value).toBeLessThan(10);
  });

  test('is a real voltage where both show it', () => {
    const world = bled();
    doing(world, ...CHARGE);
    const shown = (['meter', 'two-pole'] as const).map(
      (tool) => read(world, { op: 'measure', quantity: 'voltage', tool, between }).value ?? 0,
    );
    for (const value of shown) expect(value).toBeGreaterThan(225);
  });
});

describe('joined terminals', () => {
  const insulation = (a: string | string[]): OperationInput => ({
    op: 'measure',
    quantity: 'insulation',
    volts: 250,
    between: [a, 'supply.PE'],
  });

  test('read as their insulations in parallel: joined line and neutral, a fault on either', () => {
    const world = benchWith({ faults: [{ fault: 'line-pe-insulation-low', values: { ohms: 300_000 } }] });
    doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
    const [joined, line] = [insulation(['supply.N', 'supply.L1']), insulation('supply.L1')].map((one) =>
      read(world, one),
    );
    expect(Math.abs((joined?.value ?? 0) - (line?.value ?? 1))).toBeLessThanOrEqual(40_000);
    expect(joined?.between).toEqual(['supply.N + supply.L1', 'supply.PE']);
  });

  test('leave no trace: the network and its count of solves are as before', () => {
    const world = benchWith({ site: THREE_PHASE });
    doing(world, ...MAKE_DEAD);
    const before = { nodes: world.wiring.topology.nodes.length, solves: world.counts.solves };
    read(world, insulation(['supply.L1', 'supply.L2', 'supply.L3', 'supply.N']));
    expect({ nodes: world.wiring.topology.nodes.length, solves: world.counts.solves }).toEqual(before);
  });

  test('one terminal in a list is that terminal', () => {
    const world = benchWith();
    expect(seenBy(leadsOn(world, ['origin.L1'], 'origin.N'))).toEqual(
      seenBy(leadsOn(world, 'origin.L1', 'origin.N')),
    );
  });
});

describe('reach', () => {
  test('with the cover on, the supply terminals cannot be touched: unable, and nothing unsafe', () => {
    const world = benchWith();
    for (const quantity of ['voltage', 'continuity', 'loop'] as const) {
      const [outcome] = doing(world, { op: 'measure', quantity, between: ['supply.L1', 'supply.PE'] });
      expect(outcome?.readings[0]).toMatchObject({
        qualifier: 'unable',
        reason: { id: 'cover-closed' },
        value: null,
      });
      expect(outcome?.unsafe).toEqual([]);
    }
  });

  test.each([
    [1, ['L1', 'N', 'PE']],
    [3, ['L1', 'L2', 'L3', 'N', 'PE']],
  ] as const)('%d phase: every terminal of the site has its node', (phases, conductors) => {
    const world = benchWith(phases === 3 ? { site: THREE_PHASE } : {});
    const terminals = terminalsOf(world.installation.site);
    for (const place of ['origin', 'supply', 'outlet'])
      for (const x of conductors) expect(terminals).toContain(`${place}.${x}`);
    expect(terminals).toContain('outlet.CP');
    for (const terminal of terminals) expect(() => leadsOn(world, terminal, 'earth')).not.toThrow();
  });

  test('a socket’s outlet is its contacts while unplugged and the cable’s vehicle end while plugged', () => {
    const world = benchWith({ sheet: { outlet: 'socket' } });
    const node = () => world.wiring.topology.nodes[leadsOn(world, 'outlet.PE', 'met').port.a];
    expect(node()).toBe('socket.PE');
    doing(world, { op: 'vehicle', plugged: true });
    expect(node()).toBe('end.PE');
  });
});

describe('an instrument refuses', () => {
  test.each([
    ['loop', { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] }, { id: 'no-voltage' }],
    [
      'residual',
      { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'ramp' },
      { id: 'not-live', place: 'outlet' },
    ],
    ['opening time', { op: 'measure', quantity: 'opening-time' }, { id: 'not-live', place: 'outlet' }],
  ] as const)('%s on a dead outlet', (_, input, reason) => {
    expect(read(benchWith(), { ...input } as Parameters<typeof read>[1])).toMatchObject({
      qualifier: 'unable',
      reason,
    });
  });

  test.each(['sinusoidal', 'smooth-dc-positive', 'half-wave-negative'] as const)(
    'a residual test current (%s) that finds no way back',
    (waveform) => {
      const world = benchWith({ faults: [{ fault: 'pe-not-landed', values: {} }] });
      doing(world, ...CHARGE);
      expect(read(world, { op: 'measure', quantity: 'residual', waveform, mode: 'ramp' })).toMatchObject({
        qualifier: 'unable',
        reason: { id: 'no-return' },
      });
      expect(world.indicator).toBe('charging');
    },
  );

  test('timing an unplugging that the lock forbids', () => {
    const world = benchWith({ sheet: { outlet: 'socket' } });
    doing(world, ...CHARGE);
    expect(read(world, { op: 'measure', quantity: 'opening-time', of: 'unplug' })).toMatchObject({
      qualifier: 'unable',
      reason: { id: 'plug-held' },
    });
    expect(world.indicator).toBe('charging');
  });
});
