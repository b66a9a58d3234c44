/** Operations: what each takes, what it refuses, what resets bring back, and that the same script is the same twice. */
import { describe, expect, test } from 'vitest';
import { type OperationInput, operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { Refusal } from '../../src/bench/refusal.ts';
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
      refused: { id: 'plug-held' },
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
    expect(doing(benchWith(), { op: 'isolate' }, { op: 'reset', what: 'supply' })[1]?.refused).toEqual({
      id: 'supply-off',
    });
  });
});

describe('what the bench does not allow', () => {
  test.each([
    [{ op: 'disconnect', what: 'unit' }, 'cover-closed'],
    [{ op: 'disconnect', what: 'arrester' }, 'cover-closed'],
    [{ op: 'disconnect', what: 'electrode' }, 'no-electrode'],
    [{ op: 'link', between: ['origin.N', 'origin.PE'] }, 'no-such-link'],
    [{ op: 'link', between: ['origin.L2', 'origin.PE'] }, 'no-such-link'],
    [{ op: 'link', between: ['supply.L1', 'supply.N'] }, 'no-such-link'],
  ] as const)('%o', (input, why) => {
    const between = 'between' in input ? { between: [...input.between] as [string, string] } : {};
    const [outcome] = doing(benchWith(), { ...input, ...between } as OperationInput);
    expect(outcome?.refused).toEqual({ id: why });
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

describe('what may be done with the cover on, and what not', () => {
  const refusedBy = (input: OperationInput, wanted = {}): Refusal | null | undefined =>
    doing(benchWith(wanted), input)[0]?.refused;
  const TT = { site: { earthing: 'TT', electrodeResistance: 80 } } as const;

  test('an earth is taken off outside it', () => {
    expect(refusedBy({ op: 'disconnect', what: 'earthing-conductor' })).toBeNull();
    expect(refusedBy({ op: 'disconnect', what: 'electrode' }, TT)).toBeNull();
    expect(refusedBy({ op: 'disconnect', what: 'earthing-conductor' }, TT)).toEqual({
      id: 'no-earthing-conductor',
    });
  });

  test('the unit and its arrester behind it, where there is one', () => {
    const open = (what: 'unit' | 'arrester', surgeArrester: boolean) =>
      doing(benchWith({ sheet: { surgeArrester } }), ...MAKE_DEAD, { op: 'disconnect', what }).at(-1)
        ?.refused;
    expect([open('unit', false), open('arrester', true)]).toEqual([null, null]);
    expect(open('arrester', false)).toEqual({ id: 'no-arrester' });
  });

  test('the supply terminals are out of reach, the outlet is not', () => {
    const asked: readonly (readonly [OperationInput, boolean])[] = [
      [{ op: 'measure', quantity: 'voltage', between: ['supply.L1', 'supply.N'] }, true],
      [{ op: 'measure', quantity: 'continuity', between: ['met', ['supply.N', 'supply.PE']] }, true],
      [{ op: 'measure', quantity: 'phase-sequence', at: 'supply' }, true],
      [{ op: 'measure', quantity: 'phase-sequence', at: 'origin' }, false],
      [{ op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'] }, false],
      [{ op: 'measure', quantity: 'pilot' }, false],
    ];
    for (const [input, outOfReach] of asked) {
      const reading = read(benchWith({ site: THREE_PHASE }), input);
      expect(reading.reason?.id === 'cover-closed', JSON.stringify(input)).toBe(outOfReach);
      expect(reading.qualifier === 'unable').toBe(outOfReach);
    }
  });

  test('an inspection sees the terminals with it open alone', () => {
    const loose = { faults: [{ fault: 'terminal-loose', values: {} }] };
    const found = (...before: readonly OperationInput[]) =>
      doing(benchWith(loose), ...before, { op: 'inspect' })
        .at(-1)
        ?.found.map(({ where }) => where);
    expect(found()).toEqual([]);
    expect(found(...MAKE_DEAD)).toEqual(['terminals']);
  });
});

describe('proved dead', () => {
  const provedAt = (...script: readonly OperationInput[]) => {
    const world = benchWith();
    doing(world, ...script);
    return Object.keys(world.knowledge.provedDead);
  };

  test('counts where it was isolated first: an outlet that the contactor keeps dead shows nothing of the circuit', () => {
    expect(provedAt({ op: 'prove-dead', at: 'outlet' })).toEqual([]);
    expect(provedAt({ op: 'isolate' }, { op: 'prove-dead', at: 'outlet' })).toEqual(['outlet']);
  });

  test('not behind a cover that is on, nor by one pair that could not be read', () => {
    expect(provedAt({ op: 'isolate' }, { op: 'prove-dead', at: 'supply' })).toEqual([]);
  });

  test('is over once it is energised, or the supply came back', () => {
    expect(provedAt(...MAKE_DEAD, { op: 'energise' })).toEqual([]);
    expect(
      provedAt({ op: 'reset', what: 'supply' }, { op: 'isolate' }, { op: 'prove-dead', at: 'origin' }),
    ).toEqual(['origin']);
  });
});

describe('the tester’s fuse', () => {
  const between: [string, string] = ['outlet.L1', 'outlet.PE'];

  test('once open, nothing is read by it until instruments are checked', () => {
    const world = benchWith();
    doing(
      world,
      ...CHARGE,
      { op: 'measure', quantity: 'insulation', between, volts: 250 },
      { op: 'isolate' },
    );
    const asked: OperationInput = { op: 'measure', quantity: 'continuity', between: ['met', 'outlet.PE'] };
    expect(read(world, asked)).toMatchObject({
      qualifier: 'unable',
      reason: { id: 'fuse-open' },
      between: ['met', 'outlet.PE'],
    });
    // A voltage is read by another instrument.
    expect(read(world, { op: 'measure', quantity: 'voltage', between }).qualifier).toBeNull();
    doing(world, { op: 'check-instruments' });
    expect(read(world, asked).qualifier).toBeNull();
  });
});

test('a reading says where its leads were, joined ones together', () => {
  const world = benchWith();
  doing(world, ...MAKE_DEAD);
  const joined = read(world, {
    op: 'measure',
    quantity: 'insulation',
    between: [['outlet.L1', 'outlet.N'], 'outlet.PE'],
    volts: 250,
  });
  expect(joined).toMatchObject({ between: ['outlet.L1 + outlet.N', 'outlet.PE'], volts: 250 });
  expect(read(world, { op: 'measure', quantity: 'coding' }).between).toEqual(['outlet.PP', 'outlet.PE']);
  expect(read(world, { op: 'measure', quantity: 'pilot' }).between).toEqual(['outlet.CP', 'outlet.PE']);
});

test('what only looks, waits or names a step leaves it said when anything was last moved', () => {
  const world = benchWith();
  doing(world, { op: 'wait', seconds: 10 });
  const passive: readonly OperationInput[] = [
    { op: 'wait', seconds: 1 },
    { op: 'measure', quantity: 'pilot' },
    { op: 'check-instruments' },
    { op: 'prove-dead', at: 'outlet' },
    { op: 'null-leads' },
    { op: 'discharge' },
    { op: 'stop', why: 'enough' },
  ];
  doing(world, ...passive);
  expect(world.changedAt).toBe(0);
  doing(world, ...CHARGE.slice(0, 1));
  expect(world.changedAt).toBe(world.timeline.now);
  doing(world, ...CHARGE.slice(1));
  const before = world.timeline.now;
  doing(world, { op: 'measure', quantity: 'opening-time' });
  expect(world.changedAt).toBeGreaterThan(before);
});

describe('the lock of a socket-outlet', () => {
  const plugged = (lock: { engages: boolean; releases: boolean; feedback: 'true' | 'always held' }) => {
    const world = benchWith({ sheet: { outlet: 'socket' }, design: { lock } });
    doing(world, ...CHARGE);
    return world;
  };

  test('sound: held, and supplied', () => {
    expect(plugged({ engages: true, releases: true, feedback: 'true' }).plant).toMatchObject({
      plugLock: 'held',
      contactor: 'closed',
    });
  });

  test('that does not engage: nothing is supplied (IEC 61851-1:2017 6.3.2)', () => {
    expect(plugged({ engages: false, releases: true, feedback: 'true' }).plant).toMatchObject({
      plugLock: 'free',
      contactor: 'open',
    });
  });

  test('that does not engage and says that it has: supplied, and the plug comes out', () => {
    const world = plugged({ engages: false, releases: true, feedback: 'always held' });
    expect(world.plant).toMatchObject({ plugLock: 'free', contactor: 'closed' });
    expect(doing(world, { op: 'pull-plug' })[0]).toMatchObject({ refused: null, seen: { plug: 'out' } });
  });

  test('that does not release keeps the plug', () => {
    const world = plugged({ engages: true, releases: false, feedback: 'true' });
    const outcomes = doing(
      world,
      { op: 'vehicle', state: 'A' },
      { op: 'wait', seconds: 10 },
      { op: 'pull-plug' },
    );
    expect(outcomes.at(-1)).toMatchObject({ refused: { id: 'plug-held' }, seen: { plug: 'held' } });
  });

  test('looked at: out, free, held', () => {
    const world = benchWith({ sheet: { outlet: 'socket', holdInB: false } });
    const seen = doing(world, { op: 'wait', seconds: 0 }, ...PLUG_IN, ...CHARGE.slice(2)).map(
      (o) => o.seen.plug,
    );
    expect(seen).toEqual(['out', 'free', 'free', 'free', 'held']);
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
