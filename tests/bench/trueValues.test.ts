/**
 * What ideal instruments find, by hand from the circuit: what each draws, what its current makes trip, and what it says
 * where it cannot test.
 */

import { describe, expect, test } from 'vitest';
import { voltage } from '../../src/bench/instruments/voltageTools.ts';
import { measure } from '../../src/bench/measure.ts';
import { type Measurement, type OperationInput, operation } from '../../src/bench/operation.ts';
import { leadsOn } from '../../src/bench/port.ts';
import type { Truth } from '../../src/bench/reading.ts';
import type { AnyFields } from '../../src/bench/readings/quantity.ts';
import { Unsettled } from '../../src/bench/settle.ts';
import type { World } from '../../src/bench/world.ts';
import type { Parts } from '../../src/faults/parts.ts';
import { withPart } from '../../src/faults/parts.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, PLUG_IN, read, THREE_PHASE, type Wanted } from './build.ts';

const truth = (world: World, input: OperationInput): Truth => measure(world, operation(input) as Measurement);
const beside = (found: Truth): AnyFields => found.details;
const shownBy = (found: Truth): number => ('refused' in found ? Number.NaN : found.value);
const charging = (wanted: Wanted = {}): World => {
  const world = benchWith(wanted);
  doing(world, ...CHARGE);
  return world;
};

describe('a loop test', () => {
  const loop = (to: 'PE' | 'N', current: 'low' | 'full'): OperationInput => ({
    op: 'measure',
    quantity: 'loop',
    between: ['outlet.L1', `outlet.${to}`],
    current,
  });
  const opened = (to: 'PE' | 'N', current: 'low' | 'full') =>
    doing(charging(), loop(to, current))[0]?.events.map(({ what }) => what);

  // 10 A to PE is 300 times what a device of 30 mA trips on; 10 mA is under the half that it must not trip on.
  test('by full current to PE opens the residual device in its way; by low current, or to neutral, nothing', () => {
    expect(opened('PE', 'full')).toEqual(['contactor opened']);
    expect(opened('PE', 'low')).toEqual([]);
    expect(opened('N', 'full')).toEqual([]);
    expect(opened('N', 'low')).toEqual([]);
  });

  test('by low current reads the coils in its way, up to 0.1 Ω, where there is a residual device', () => {
    const coils = (wanted: Wanted) =>
      shownBy(truth(charging(wanted), loop('PE', 'low'))) -
      shownBy(truth(charging(wanted), loop('PE', 'full')));
    const own = coils({});
    expect(own).toBeGreaterThan(0.001);
    expect(own).toBeLessThanOrEqual(0.1);
    const none = {
      sheet: { residual: { type: null, rated: null, by: null, direct: 'monitoring' } },
    } as const;
    expect(coils(none)).toBeCloseTo(0, 9);
  });

  test('with no voltage says so, as a loop test', () => {
    expect(read(benchWith(), loop('PE', 'low'))).toMatchObject({
      quantity: 'loop',
      qualifier: 'unable',
      reason: { id: 'no-voltage' },
      between: ['outlet.L1', 'outlet.PE'],
    });
  });
});

describe('the order of the lines', () => {
  const order = (swap: readonly [string, string] | null, at: 'origin' | 'incoming' = 'origin') => {
    const parts = (all: Parts): Parts => {
      if (swap === null) return all;
      const [x, y] = swap;
      const from = (id: string) => all.parts.find((part) => part.id === id)?.a ?? '';
      const [a, b] = [from(`origin.${x}`), from(`origin.${y}`)];
      return withPart(
        withPart(all, `origin.${x}`, (part) => ({ ...part, a: b })),
        `origin.${y}`,
        (part) => ({ ...part, a }),
      );
    };
    return truth(benchWith({ site: THREE_PHASE, parts }), { op: 'measure', quantity: 'phase-sequence', at });
  };

  // L1-L2-L3 is 1; whichever two are exchanged, it is the other way round.
  test('is right as wired, and turned by exchanging any two', () => {
    expect(shownBy(order(null))).toBe(1);
    for (const swap of [
      ['L1', 'L2'],
      ['L2', 'L3'],
      ['L1', 'L3'],
    ] as const) {
      expect(shownBy(order(swap)), swap.join()).toBe(-1);
      // The supply before them is not turned.
      expect(shownBy(order(swap, 'incoming'))).toBe(1);
    }
  });

  test('cannot be told on one phase, nor without supply', () => {
    const asked: OperationInput = { op: 'measure', quantity: 'phase-sequence', at: 'origin' };
    const refused = { quantity: 'phase-sequence', qualifier: 'unable' };
    expect(read(benchWith(), asked)).toMatchObject({ ...refused, reason: { id: 'one-line' } });
    const isolated = benchWith({ site: THREE_PHASE });
    doing(isolated, { op: 'isolate' });
    expect(read(isolated, asked)).toMatchObject({ ...refused, reason: { id: 'a-line-dead' } });
  });
});

describe('what an instrument draws', () => {
  // 10 MΩ across a source of 1 kΩ: a ten-thousandth less than open. In the low half the diode carries nothing.
  test('the pilot meter’s 10 MΩ lower the pilot by a ten-thousandth', () => {
    const world = benchWith();
    doing(world, ...PLUG_IN);
    const { low = Number.NaN } = beside(truth(world, { op: 'measure', quantity: 'pilot' }));
    const open = world.installation.design.pilot.negative;
    expect(low).toBeCloseTo(open * (1 - 1e-4), 4);
  });

  // Two open poles, 470 kΩ across each: 236 V · 40 / (940 + 40) and 236 V · 10 / (0.94 + 10).
  test.each([
    { tool: 'two-pole', volts: 9.6, within: 0.2 },
    // The unit's filter and insulation take a little more.
    { tool: 'meter', volts: 215.7, within: 2 },
  ] as const)('across two bleeds of 470 kΩ the $tool reads $volts V', ({ tool, volts, within }) => {
    const world = benchWith({ sheet: { poleBleed: 470_000 } });
    const found = voltage(leadsOn(world, 'outlet.L1', 'outlet.N'), tool, 0, {});
    expect(Math.abs(shownBy(found) - volts)).toBeLessThan(within);
  });

  // 5 V behind 1 kΩ in the unit (a design choice), and none without power.
  test('the proximity contact has its voltage while the unit has power', () => {
    const world = benchWith({ sheet: { outlet: 'socket' } });
    const direct = () =>
      beside(
        truth(world, {
          op: 'measure',
          quantity: 'voltage',
          between: ['outlet.PP', 'outlet.PE'],
          tool: 'meter',
        }),
      ).dc;
    expect(direct()).toBeCloseTo(5, 2);
    doing(world, { op: 'isolate' }, { op: 'wait', seconds: 1 });
    expect(direct()).toBeCloseTo(0, 6);
  });
});

describe('a residual test', () => {
  /** Nothing acts, so that the current is held as long as it may be. */
  const deaf: Wanted = { design: { residualPickup: Infinity, directPickup: Infinity } };
  const residual = (more: object): OperationInput =>
    ({
      op: 'measure',
      quantity: 'residual',
      waveform: 'sinusoidal',
      mode: 'fixed',
      ...more,
    }) as OperationInput;
  const held = (more: object): number => {
    const world = charging(deaf);
    const began = world.timeline.now;
    doing(world, residual(more));
    return (world.timeline.now - began) / 1e6;
  };

  // Smooth d.c. may take its 10 s (IEC 62955:2018 Table 2).
  test.each([
    [{}, 0.5],
    [{ amps: 0.015 }, 0.5],
    [{ amps: 0.149 }, 0.5],
    [{ amps: 0.15 }, 10],
    [{ waveform: 'smooth-dc-positive', amps: 0.006 }, 10],
    [{ amps: 0.015, seconds: 2 }, 2],
  ] as const)('%o is held %d s', (more, seconds) => {
    expect(held(more)).toBeCloseTo(seconds, 3);
  });

  test('says where it was made, unless at the outlet', () => {
    expect(read(charging(deaf), residual({})).place).toBeUndefined();
    expect(read(charging(deaf), residual({ at: 'origin' })).place).toBe('origin');
  });
});

describe('isolating', () => {
  const isolated = (poles: 'all' | 'line') => {
    const world = benchWith({
      site: { circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 1 } } },
    });
    doing(world, { op: 'isolate', poles });
    return world.plant.isolated;
  };

  test('all poles opens the neutral too, whatever the device', () => {
    expect([isolated('all'), isolated('line')]).toEqual([['L1', 'N'], ['L1']]);
  });
});

/** Dark is not dead: what has no supply at the moment may get it back at any (EAWR reg. 13). */
describe('nothing is put right on a circuit that is merely without supply', () => {
  test.each([
    ['a line lost', { op: 'supply', missing: 'L1' }],
    ['a supply too low for it', { op: 'supply', voltage: 100 }],
  ] as const)('%s', (_, dark) => {
    const world = benchWith();
    const [, , refused] = doing(
      world,
      dark,
      { op: 'open-cover' },
      { op: 'put-right', what: 'pe-not-landed' },
    );
    expect(world.powered).toBe(false);
    expect(refused?.refused).toEqual({ id: 'not-isolated' });
    expect(doing(world, ...MAKE_DEAD, { op: 'put-right', what: 'pe-not-landed' }).at(-1)?.refused).toBeNull();
  });
});

describe('what cannot be is said where it is', () => {
  test('a part on a contact that there is none of', () => {
    const wrong = () =>
      benchWith({ parts: (all) => withPart(all, 'case', (part) => ({ ...part, contact: 'nowhere' })) });
    expect(wrong).toThrow('no contact "nowhere" for part "case"');
  });

  test('plant and control that do not come to rest', () => {
    expect(new Unsettled(1_500_000).message).toContain('did not settle in 8 rounds at 1500000 µs');
  });
});
