/**
 * Putting right: what was wrong is gone, what was damaged stays, and nothing on the bench tells whether anything was
 * there to be put right. Safe and refused as the same hand on a conductor is.
 */

import { describe, expect, test } from 'vitest';
import type { Operation, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import type { Outcome } from '../../src/bench/perform.ts';
import { perform } from '../../src/bench/perform.ts';
import type { Refusal } from '../../src/bench/refusal.ts';
import type { World } from '../../src/bench/world.ts';
import { CATALOGUE, cannotBePutRight } from '../../src/faults/catalogue.ts';
import { COMPONENTS } from '../../src/faults/components.ts';
import { benchOf } from '../../src/scenario/scenario.ts';
import type { InstallationName } from '../faults/installations.ts';
import { scenarioOn, settingOn } from '../faults/installations.ts';
import { TELLS } from '../faults/tells.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, read, type Wanted } from './build.ts';

const FAULTS = CATALOGUE.filter(({ kind }) => kind === 'fault');
const putRight = (what: string): Operation => operation({ op: 'put-right', what });
const continuity: OperationInput = {
  op: 'measure',
  quantity: 'continuity',
  between: ['origin.PE', 'supply.PE'],
};
const volts = (a: string, b: string): OperationInput => ({
  op: 'measure',
  quantity: 'voltage',
  between: [a, b],
});

/** By the main switch too: what the board's schedule names wrongly is dead by that alone. */
const ALL_DEAD: readonly OperationInput[] = [{ op: 'isolate', at: 'main-switch' }, ...MAKE_DEAD];

/** Dead tests, power, a charge, a trip and an unplugging: enough to show whatever is wrong. */
const LOOK: readonly OperationInput[] = [
  { op: 'inspect' },
  continuity,
  { op: 'measure', quantity: 'insulation', between: [['supply.L1', 'supply.N'], 'supply.PE'], volts: 250 },
  { op: 'close-cover' },
  { op: 'energise' },
  { op: 'wait', seconds: 12 },
  volts('outlet.L1', 'outlet.PE'),
  ...CHARGE,
  { op: 'measure', quantity: 'pilot' },
  volts('outlet.L1', 'outlet.N'),
  { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] },
  { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'fixed' },
  { op: 'vehicle', state: 'A' },
  { op: 'wait', seconds: 6 },
  { op: 'vehicle', plugged: false },
];

/** All that a hand on the site can put right: not the distributor's, and no design (tests/faults/design.test.ts). */
const possible = FAULTS.flatMap((entry) => {
  const { id, component } = entry;
  const on = TELLS[id]?.[0] as InstallationName;
  const isDesign = entry.kind === 'fault' && entry.alter !== undefined;
  return isDesign || COMPONENTS[component] === 'not here' ? [] : [{ id, on, component }];
});

function twins(on: InstallationName, fault: string): readonly [faulty: World, sound: World] {
  const scenario = scenarioOn(on, [{ fault, values: {} }]);
  return [benchOf(scenario), benchOf(scenario, [])];
}

const shownBy = ({ readings, seen, events, refused, found }: Outcome) => ({
  readings,
  seen,
  events,
  refused,
  found,
});

describe('a fault that is put right', () => {
  test.each(possible)('$id on $on: nothing tells that it was there, and it is gone', ({ id, on }) => {
    const [faulty, sound] = twins(on, id);
    for (const world of [faulty, sound]) doing(world, ...ALL_DEAD);
    const [repaired, replaced] = [perform(faulty, putRight(id)), perform(sound, putRight(id))];
    expect(repaired).toEqual(replaced);
    expect(repaired).toMatchObject({ refused: null, unsafe: [], readings: [], events: [], found: [] });
    expect(faulty.faults).toEqual([]);
    expect(doing(faulty, ...LOOK).map(shownBy)).toEqual(doing(sound, ...LOOK).map(shownBy));
  });

  test('a sound part in the place of a sound one is no more than the time it took', () => {
    const onePerComponent = Object.keys(COMPONENTS).flatMap(
      (part) => possible.find(({ component }) => component === part) ?? [],
    );
    expect(onePerComponent.length).toBeGreaterThan(10);
    for (const { id, on } of onePerComponent) {
      const [, replaced] = twins(on, id);
      const [, waited] = twins(on, id);
      doing(replaced, ...MAKE_DEAD, putRight(id));
      doing(waited, ...MAKE_DEAD, { op: 'wait', seconds: 900 });
      expect(replaced.timeline.now).toBe(waited.timeline.now);
      const { installation, wiring, upstreamPickup } = replaced;
      expect({ ...installation, design: null }).toEqual({ ...waited.installation, design: null });
      expect(wiring.parts).toEqual(waited.wiring.parts);
      expect(upstreamPickup).toBe(waited.upstreamPickup);
      expect(replaced.plant).toEqual(waited.plant);
    }
  });

  test('another cause is not put right by it', () => {
    const wanted: Wanted = { faults: [{ fault: 'pe-joint', values: { ohms: 1.8 } }] };
    const [worked, waited] = [benchWith(wanted), benchWith(wanted)];
    const readAfter = (world: World, step: OperationInput) =>
      doing(world, ...MAKE_DEAD, step, continuity).at(-1)?.readings;
    const waiting: OperationInput = { op: 'wait', seconds: 900 };
    expect(readAfter(worked, putRight('pilot-damp'))).toEqual(readAfter(waited, waiting));
    expect(worked.faults).toHaveLength(1);
  });

  test('of two faults the other one stays', () => {
    const world = benchWith({
      faults: [
        { fault: 'pe-joint', values: { ohms: 1.8 } },
        { fault: 'pilot-frequency', values: { hertz: 950 } },
      ],
    });
    doing(world, ...MAKE_DEAD, putRight('pe-joint'), { op: 'close-cover' }, { op: 'energise' });
    doing(world, { op: 'wait', seconds: 12 }, ...CHARGE);
    expect(read(world, { op: 'measure', quantity: 'pilot' }).frequency).toBeCloseTo(950, -1);
  });
});

describe('what stays as it was', () => {
  test('what a wrong test destroyed', () => {
    const world = benchWith({ faults: [{ fault: 'pilot-steady', values: {} }] });
    doing(world, ...MAKE_DEAD, {
      op: 'measure',
      quantity: 'insulation',
      between: [['supply.L1', 'supply.N'], 'supply.PE'],
      volts: 500,
    });
    expect(world.plant.damaged).toEqual(['electronics']);
    perform(world, putRight('pilot-steady'));
    expect(world.plant.damaged).toEqual(['electronics']);
    doing(world, { op: 'close-cover' }, { op: 'energise' }, { op: 'wait', seconds: 12 });
    expect(world.indicator).toBe('dark');
  });

  test('a fuse that a live part opened, leads that were nulled, and what is off', () => {
    const world = benchWith();
    doing(world, { op: 'measure', quantity: 'continuity', between: ['incoming.L1', 'met'] });
    doing(world, ...MAKE_DEAD, { op: 'null-leads', on: false }, { op: 'disconnect', what: 'unit' });
    const before = world.plant;
    expect(before).toMatchObject({ testerFuse: 'opened', leadsNulled: false, removed: ['unit'] });
    perform(world, putRight('pe-joint'));
    expect(world.plant).toEqual(before);
  });

  test('a device that has tripped', () => {
    const breaker: Wanted = {
      sheet: { residual: { type: 'A', rated: 0.03, by: 'breaker', direct: 'monitoring' } },
      faults: [{ fault: 'residual-slow', values: { seconds: 0.45 } }],
    };
    const world = benchWith(breaker);
    doing(world, ...CHARGE, {
      op: 'measure',
      quantity: 'residual',
      waveform: 'sinusoidal',
      mode: 'fixed',
      seconds: 2,
    });
    expect(world.plant.unitBreaker).toBe('tripped');
    doing(world, { op: 'vehicle', state: 'A' }, { op: 'vehicle', plugged: false }, ...MAKE_DEAD);
    perform(world, putRight('residual-slow'));
    doing(world, { op: 'close-cover' }, { op: 'energise' }, { op: 'wait', seconds: 12 });
    expect(world.plant.unitBreaker).toBe('tripped');
    expect(world.indicator).toBe('dark');
    doing(world, { op: 'reset', what: 'unit' }, { op: 'wait', seconds: 12 });
    expect(world.indicator).toBe('ready');
  });

  test('a failed dead test, until it is repeated', () => {
    const world = benchWith({ faults: [{ fault: 'pe-joint', values: { ohms: 1.8 } }] });
    const path: OperationInput = {
      op: 'measure',
      quantity: 'continuity',
      between: ['met', 'supply.PE'],
    };
    doing(world, ...MAKE_DEAD, path, putRight('pe-joint'), { op: 'close-cover' });
    const [energised] = doing(world, { op: 'energise' });
    expect(energised?.unsafe.map(({ id }) => id)).toEqual(['energised-failed-test']);
    const repeated = benchWith({ faults: [{ fault: 'pe-joint', values: { ohms: 1.8 } }] });
    doing(repeated, ...MAKE_DEAD, path, putRight('pe-joint'), path, { op: 'close-cover' });
    expect(doing(repeated, { op: 'energise' })[0]?.unsafe).toEqual([]);
  });

  test('a trapped plug, until the mended lock has power again', () => {
    const world = benchWith({
      sheet: { outlet: 'socket' },
      faults: [{ fault: 'lock-will-not-release', values: {} }],
    });
    const away: readonly OperationInput[] = [
      { op: 'vehicle', state: 'A' },
      { op: 'wait', seconds: 6 },
    ];
    doing(world, ...CHARGE, ...away, ...MAKE_DEAD);
    expect(perform(world, putRight('lock-will-not-release')).seen.plug).toBe('held');
    const back = doing(world, { op: 'close-cover' }, { op: 'energise' }, { op: 'wait', seconds: 12 });
    expect(back.at(-1)?.seen.plug).toBe('free');
  });
});

describe('as the same hand on a conductor', () => {
  interface Row {
    readonly case: string;
    readonly first: readonly OperationInput[];
    readonly what: string;
    readonly refused: Refusal | null;
    readonly unsafe: readonly string[];
    readonly wanted?: Wanted;
  }
  const UNPROVED = 'conductor-not-proved-dead';
  const rows: readonly Row[] = [
    { case: 'live', first: [], what: 'pe-joint', refused: { id: 'cover-closed' }, unsafe: [UNPROVED] },
    {
      case: 'live, cover off',
      first: [{ op: 'open-cover' }],
      what: 'pe-joint',
      refused: { id: 'not-isolated' },
      unsafe: [UNPROVED],
    },
    {
      case: 'isolated, not proved dead',
      first: [{ op: 'isolate' }, { op: 'open-cover' }],
      what: 'pe-joint',
      refused: null,
      unsafe: [UNPROVED],
    },
    {
      case: 'proved dead before it was last energised',
      first: [...MAKE_DEAD, { op: 'energise' }, { op: 'isolate' }, { op: 'wait', seconds: 2 }],
      what: 'pe-joint',
      refused: null,
      unsafe: [UNPROVED],
    },
    { case: 'dead', first: MAKE_DEAD, what: 'pe-joint', refused: null, unsafe: [] },
    {
      case: 'dead, at the board alone: what has to be proved tells nothing of where the cause is',
      first: [{ op: 'isolate' }, { op: 'prove-dead', at: 'origin' }],
      what: 'breaker-too-slow',
      refused: null,
      unsafe: [UNPROVED],
    },
    {
      case: 'a label, with the supply on',
      first: [],
      what: 'labels-missing',
      refused: { id: 'not-isolated' },
      unsafe: [UNPROVED],
    },
    {
      case: 'the distributor’s',
      first: MAKE_DEAD,
      what: 'supply-loop-high',
      refused: { id: 'never-put-right', why: 'distributors' },
      unsafe: [],
    },
    {
      case: 'what this unit does not have',
      first: MAKE_DEAD,
      what: 'lock-not-home',
      refused: { id: 'never-put-right', why: 'no-socket' },
      unsafe: [],
    },
  ];
  test.each(rows)('$case', ({ first, what, refused, unsafe }) => {
    // The same with the fault and without it, so that neither tells of it.
    for (const faults of [[], [{ fault: 'pe-joint', values: { ohms: 1.8 } }]]) {
      const world = benchWith({ faults });
      doing(world, ...first);
      const outcome = perform(world, putRight(what));
      expect(outcome.refused).toEqual(refused);
      expect(outcome.unsafe.map(({ id }) => id)).toEqual(unsafe);
      if (refused !== null) expect(world.faults).toEqual(faults);
    }
  });

  test('what cannot be put right here follows from the papers, whatever is wrong', () => {
    for (const entry of CATALOGUE) {
      const setting = settingOn('home');
      const why = cannotBePutRight(entry, setting);
      const world = benchOf(scenarioOn('home', [{ fault: 'breaker-too-slow', values: {} }]));
      doing(world, ...MAKE_DEAD);
      expect(perform(world, putRight(entry.id)).refused, entry.id).toEqual(
        why === null ? null : { id: 'never-put-right', why },
      );
    }
  });
});
