/** Operations: what each takes, what it refuses, what resets bring back, and that the same script is the same twice. */
import { describe, expect, test } from 'vitest';
import { type OperationInput, operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { CableCoding } from '../../src/laws/proximity.ts';
import { seconds } from '../../src/laws/quantities.ts';
import { benchOf } from '../../src/scenario/scenario.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, PLUG_IN, read, SHEET, THREE_PHASE } from './build.ts';

const RAMP: OperationInput = { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'ramp' };
const L_N: [string, string] = ['outlet.L1', 'outlet.N'];

describe('only some operations pass time, each its documented duration', () => {
  const DURATIONS: readonly (readonly [OperationInput, number])[] = [
    [{ op: 'measure', quantity: 'pilot' }, 5],
    [{ op: 'measure', quantity: 'voltage', between: L_N }, 5],
    [{ op: 'measure', quantity: 'continuity', between: ['met', 'outlet.PE'] }, 5],
    [{ op: 'prove-dead', at: 'outlet' }, 30],
    [{ op: 'check-instruments' }, 60],
    [{ op: 'press', button: 'authorise' }, 1],
    [{ op: 'reset', what: 'unit' }, 2],
    [{ op: 'reset', what: 'upstream' }, 1],
    [{ op: 'reset', what: 'supply' }, 10],
    [{ op: 'wait', seconds: 12.5 }, 12.5],
    [{ op: 'isolate' }, 0],
    [{ op: 'energise' }, 0],
    [{ op: 'open-cover' }, 0],
    [{ op: 'close-cover' }, 0],
    [{ op: 'discharge' }, 0],
    [{ op: 'null-leads' }, 0],
    [{ op: 'disconnect', what: 'earthing-conductor' }, 0],
    [{ op: 'link', between: ['origin.L1', 'origin.PE'] }, 0],
    [{ op: 'vehicle', plugged: true, state: 'B' }, 0],
    [{ op: 'pull-plug' }, 0],
    [{ op: 'stop', why: 'enough' }, 0],
  ];
  test.each(DURATIONS)('%o: %d s', (input, duration) => {
    const world = benchWith();
    const [{ seen } = { seen: { at: -1 } }] = doing(world, input);
    expect(seen.at).toBe(duration);
  });
});

describe('the plug', () => {
  test('held: pulling moves nothing, and the refusal says so', () => {
    const world = benchWith({ sheet: { outlet: 'socket' } });
    doing(world, ...CHARGE);
    const [outcome] = doing(world, { op: 'pull-plug' });
    expect(outcome).toMatchObject({
      refused: 'the plug is held',
      seen: { plug: 'held', indicator: 'charging' },
    });
    expect(read(world, { op: 'measure', quantity: 'voltage', between: L_N }).value).toBeGreaterThan(225);
  });

  test('free once the vehicle has let go: within 5 s of state A (IEC 61851-1:2017 Table A.6, 2.1)', () => {
    const world = benchWith({ sheet: { outlet: 'socket' } });
    const outcomes = doing(
      world,
      ...CHARGE,
      { op: 'vehicle', state: 'A' },
      { op: 'wait', seconds: 5 },
      { op: 'pull-plug' },
    );
    expect(outcomes.at(-1)).toMatchObject({ refused: null, seen: { plug: 'out', indicator: 'ready' } });
    expect(outcomes.flatMap(({ events }) => events.map(({ what }) => what))).toEqual([
      'plug locked',
      'contactor closed',
      'contactor opened',
      'plug released',
    ]);
  });

  test('a tether has no lock of its own: it comes out, and the outlet is dead at once', () => {
    const world = benchWith();
    doing(world, ...CHARGE);
    expect(doing(world, { op: 'pull-plug' })[0]).toMatchObject({ refused: null, seen: { plug: 'out' } });
    doing(world, { op: 'wait', seconds: 0.1 });
    expect(world.plant.contactor).toBe('open');
  });
});

describe('a socket’s unit offers by the coding it sees', () => {
  const offer = (coding: CableCoding | null, sheet = {}): number | null => {
    const world = benchWith({ sheet: { outlet: 'socket', ...sheet } });
    doing(world, { op: 'vehicle', coding }, ...PLUG_IN);
    const { amps, frequency } = read(world, { op: 'measure', quantity: 'pilot' });
    return frequency === null ? null : Math.round(amps ?? 0);
  };

  test.each([
    [13, 13],
    [20, 20],
    [32, 32],
    [63, 32],
  ] as const)('coded %d A, unit rated 32 A: %d A', (coding, amps) => {
    expect(offer(coding)).toBe(amps);
  });

  test('the setting and the load limit count as well', () => {
    expect(offer(63, { ratedCurrent: 63, setCurrent: 63 })).toBe(63);
    expect(offer(63, { ratedCurrent: 63, setCurrent: 40 })).toBe(40);
    expect(offer(32, { loadLimit: 10 })).toBe(10);
  });

  test('no coding, or less than 6 A left: no offer, and no supply when asked', () => {
    expect(offer(null)).toBeNull();
    expect(offer(32, { loadLimit: 5 })).toBeNull();
    const world = benchWith({ sheet: { outlet: 'socket' } });
    doing(world, { op: 'vehicle', coding: null }, ...CHARGE);
    expect(world.plant.contactor).toBe('open');
  });

  test('a coding changes nothing on a tethered unit', () => {
    const world = benchWith();
    doing(world, { op: 'vehicle', coding: 13 }, ...PLUG_IN);
    expect(world.plant.duty).toBeCloseTo(32 / 60, 9);
  });
});

describe('resets', () => {
  const upstream = { residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: 2 } } as const;

  test('unit, by contactor: tripped until reset, then it charges again', () => {
    const world = benchWith();
    doing(world, ...CHARGE);
    expect(read(world, RAMP).trippedWhat).toBe('unit');
    doing(world, { op: 'wait', seconds: 60 });
    expect([world.indicator, world.plant.contactor]).toEqual(['tripped', 'open']);
    doing(world, { op: 'reset', what: 'unit' }, { op: 'wait', seconds: 5 });
    expect(world.indicator).toBe('charging');
  });

  test('unit, by its own breaker: dark until reset, then it starts up', () => {
    const world = benchWith({ sheet: { residual: { ...SHEET.residual, by: 'breaker' } } });
    doing(world, ...CHARGE);
    expect(read(world, RAMP).trippedWhat).toBe('unit');
    expect(world.indicator).toBe('dark');
    doing(world, { op: 'reset', what: 'unit' });
    expect(world.indicator).toBe('starting');
    doing(world, { op: 'wait', seconds: SHEET.startUp + 5 });
    expect(world.indicator).toBe('charging');
  });

  test('upstream: what is off at the board stays off until it is reset there', () => {
    const residual = { type: null, rated: null, by: null, direct: 'monitoring' } as const;
    const world = benchWith({ site: { circuit: upstream }, sheet: { residual } });
    doing(world, ...CHARGE);
    expect(read(world, RAMP).trippedWhat).toBe('upstream');
    doing(world, { op: 'reset', what: 'unit' }, { op: 'wait', seconds: 60 });
    expect(world.indicator).toBe('dark');
    doing(world, { op: 'reset', what: 'upstream' }, { op: 'wait', seconds: SHEET.startUp + 5 });
    expect(world.indicator).toBe('charging');
  });

  test('supply: off 10 s, on again, returns at switch-on', () => {
    const world = benchWith();
    doing(world, ...CHARGE);
    const [outcome] = doing(world, { op: 'reset', what: 'supply' });
    expect(outcome?.events.map(({ what }) => what)).toEqual(['contactor opened']);
    expect(world.indicator).toBe('starting');
    expect(world.plant.isolated).toEqual([]);
    expect(world.knowledge.provedDead).toEqual({});
  });

  test('supply, while isolated: refused', () => {
    expect(doing(benchWith(), { op: 'isolate' }, { op: 'reset', what: 'supply' })[1]?.refused).toBe(
      'the supply is off',
    );
  });
});

describe('what the bench does not allow', () => {
  test.each([
    [{ op: 'disconnect', what: 'unit' }, 'cover closed'],
    [{ op: 'disconnect', what: 'arrester' }, 'cover closed'],
    [{ op: 'disconnect', what: 'electrode' }, 'this site has no electrode of its own'],
    [{ op: 'link', between: ['origin.L1', 'origin.N'] }, 'a link goes from a line to PE at the origin'],
    [{ op: 'link', between: ['origin.L2', 'origin.PE'] }, 'a link goes from a line to PE at the origin'],
  ] as const)('%o', (input, why) => {
    const between = 'between' in input ? { between: [...input.between] as [string, string] } : {};
    const [outcome] = doing(benchWith(), { ...input, ...between } as OperationInput);
    expect(outcome?.refused).toContain(why);
  });

  test('isolating by the line poles alone leaves the neutral, except where the device opens it too', () => {
    const opened = (poles: number) => {
      const world = benchWith({
        site: { circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles } } },
      });
      doing(world, { op: 'isolate', poles: 'line' });
      return world.plant.isolated;
    };
    expect([opened(1), opened(2)]).toEqual([['L1'], ['L1', 'N']]);
  });
});

describe('the same scenario, script and seed give the same output, byte for byte', () => {
  const SCRIPT: readonly OperationInput[] = [
    { op: 'measure', quantity: 'pilot' },
    ...CHARGE,
    { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] },
    RAMP,
    { op: 'reset', what: 'unit' },
    { op: 'wait', seconds: 20 },
    { op: 'measure', quantity: 'opening-time' },
    { op: 'pull-plug' },
    ...MAKE_DEAD,
    { op: 'measure', quantity: 'continuity', between: ['met', 'supply.PE'] },
    { op: 'measure', quantity: 'insulation', volts: 250, between: [['supply.L1', 'supply.N'], 'supply.PE'] },
  ];
  const run = (id: string, seed: number): string => {
    const world = benchOf({ ...scenarioNamed(id).scenario, seed });
    return JSON.stringify(SCRIPT.map((input) => perform(world, operation(input))));
  };

  test.each(scenarioIds)('%s', (id) => {
    expect(run(id, 7)).toBe(run(id, 7));
    expect(run(id, 7)).not.toBe(run(id, 8));
  });
});

test('a bench begins powered for a minute, unplugged, in A, everything closed', () => {
  const world = benchWith({ site: THREE_PHASE });
  expect(seconds(world.timeline.now)).toBe(0);
  expect(world.indicator).toBe('ready');
  expect(world.plant).toMatchObject({
    cover: 'closed',
    isolated: [],
    contactor: 'open',
    standIn: { plugged: false, state: 'A' },
  });
  expect(world.happenings).toEqual([]);
});
