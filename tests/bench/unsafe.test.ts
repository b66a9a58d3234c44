/** Every unsafe act: a script whose last operation is it, and the nearest one that must not be called so. */
import { describe, expect, test } from 'vitest';
import { learn } from '../../src/bench/deadTests.ts';
import { nothingKnown } from '../../src/bench/knowledge.ts';
import { type Measurement, type OperationInput, operation } from '../../src/bench/operation.ts';
import type { Reading } from '../../src/bench/reading.ts';
import { UNSAFE_ACTS, type UnsafeId } from '../../src/bench/unsafe.ts';
import type { World } from '../../src/bench/world.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, PLUG_IN, type Wanted } from './build.ts';

interface Pair {
  readonly id: UnsafeId;
  readonly wanted?: Wanted;
  readonly act: readonly OperationInput[];
  readonly near: readonly (readonly OperationInput[])[];
}

const insulation = (a: string | string[], b: string, volts: 250 | 500 = 250): OperationInput => ({
  op: 'measure',
  quantity: 'insulation',
  between: [a, b],
  volts,
});
const continuity = (a: string, b: string): OperationInput => ({
  op: 'measure',
  quantity: 'continuity',
  between: [a, b],
});
const loop = (a: string, b: string): OperationInput => ({ op: 'measure', quantity: 'loop', between: [a, b] });
const RAMP: OperationInput = { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'ramp' };
const BACK: readonly OperationInput[] = [
  { op: 'close-cover' },
  { op: 'energise' },
  { op: 'wait', seconds: 20 },
];
const LINK: [string, string] = ['origin.L1', 'origin.PE'];
/** Off, locked, cover off, and proved dead at one of the two places. */
const AT_ORIGIN: readonly OperationInput[] = [
  { op: 'isolate' },
  { op: 'wait', seconds: 2 },
  { op: 'open-cover' },
  { op: 'prove-dead', at: 'origin' },
];
const AT_SUPPLY: readonly OperationInput[] = [...AT_ORIGIN.slice(0, 3), { op: 'prove-dead', at: 'supply' }];
/** The unit proved by a detector that was tried before the test and not after it. */
const HALF_PROVED: readonly OperationInput[] = [
  ...AT_ORIGIN.slice(0, 3),
  { op: 'prove-dead', at: 'supply', proof: 'before' },
];
/** The whole installation off and locked, and proved dead at the board. */
const ALL_OFF: readonly OperationInput[] = [
  { op: 'isolate', at: 'main-switch' },
  { op: 'wait', seconds: 2 },
  { op: 'prove-dead', at: 'origin' },
];
const UNLOCKED: readonly OperationInput[] = [...MAKE_DEAD, { op: 'isolate', lock: false }];
/** The protective conductor shown to be continuous from the board to the outlet, and energised again. */
const SHOWN: readonly OperationInput[] = [...MAKE_DEAD, continuity('met', 'outlet.PE'), ...BACK];
const notLanded: Wanted = { faults: [{ fault: 'pe-not-landed', values: {} }] };
const joint: Wanted = { faults: [{ fault: 'pe-joint', values: { ohms: 1.8 } }] };

const ELECTRODE: Wanted['site'] = {
  earthing: 'TT',
  electrodeResistance: 80,
  circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 1 } },
};

const PAIRS: readonly Pair[] = [
  {
    id: 'neutral-not-isolated',
    wanted: { site: ELECTRODE },
    act: [{ op: 'isolate', poles: 'line' }],
    near: [[{ op: 'isolate' }]],
  },
  {
    id: 'insulation-live',
    act: [insulation('outlet.L1', 'outlet.N'), ...CHARGE, insulation('outlet.L1', 'outlet.PE')],
    // Nothing plugged in: the contactor keeps the outlet dead. And isolated: all of it is.
    near: [[insulation('outlet.L1', 'outlet.PE')], [...MAKE_DEAD, insulation('supply.L1', 'supply.PE')]],
  },
  {
    id: 'continuity-live',
    act: [{ op: 'open-cover' }, continuity('supply.L1', 'supply.PE')],
    // The protective conductor is at no voltage; and with the cover on nobody reaches the terminals.
    near: [[{ op: 'open-cover' }, continuity('met', 'supply.PE')], [continuity('supply.L1', 'supply.PE')]],
  },
  {
    // HSG85 and EAWR regs 12 to 14: off, locked, then open it, then prove the terminals behind it.
    id: 'cover-circuit-on',
    act: [{ op: 'prove-dead', at: 'origin' }, { op: 'open-cover' }],
    near: [
      [{ op: 'isolate' }, { op: 'open-cover' }],
      [{ op: 'isolate', lock: false }, { op: 'open-cover' }],
      [...MAKE_DEAD, { op: 'close-cover' }, { op: 'open-cover' }],
    ],
  },
  {
    id: 'cover-without-lock',
    act: [{ op: 'isolate', lock: false }, { op: 'open-cover' }],
    near: [
      [{ op: 'isolate' }, { op: 'open-cover' }],
      [{ op: 'isolate', lock: false }, { op: 'isolate' }, { op: 'open-cover' }],
    ],
  },
  {
    id: 'conductor-not-proved-dead',
    act: [{ op: 'isolate' }, { op: 'open-cover' }, { op: 'disconnect', what: 'unit' }],
    near: [
      [...MAKE_DEAD, { op: 'disconnect', what: 'unit' }],
      [...AT_SUPPLY, { op: 'disconnect', what: 'unit' }],
      [...AT_ORIGIN, { op: 'link', between: LINK }],
    ],
  },
  {
    // GS38: a detector is tried again after the test, since it may have failed in it.
    id: 'conductor-half-proved',
    act: [...HALF_PROVED, { op: 'disconnect', what: 'unit' }],
    near: [
      [...HALF_PROVED, { op: 'prove-dead', at: 'supply' }, { op: 'disconnect', what: 'unit' }],
      // A poorer proof takes nothing from the better one before it.
      [
        ...MAKE_DEAD,
        { op: 'prove-dead', at: 'supply', proof: 'before' },
        { op: 'prove-dead', at: 'supply', proof: 'none' },
        { op: 'disconnect', what: 'unit' },
      ],
    ],
  },
  {
    id: 'earth-off-supply-on',
    act: [...MAKE_DEAD, { op: 'disconnect', what: 'earthing-conductor' }],
    near: [
      [...ALL_OFF, { op: 'disconnect', what: 'earthing-conductor' }],
      [...MAKE_DEAD, { op: 'disconnect', what: 'unit' }],
    ],
  },
  {
    id: 'energised-with-link',
    act: [...MAKE_DEAD, { op: 'link', between: LINK }, { op: 'close-cover' }, { op: 'energise' }],
    near: [
      [...MAKE_DEAD, { op: 'link', between: LINK }, { op: 'unlink', between: LINK }, ...BACK.slice(0, 2)],
    ],
  },
  {
    id: 'energised-earth-off',
    act: [...MAKE_DEAD, { op: 'disconnect', what: 'earthing-conductor' }, ...BACK.slice(0, 2)],
    near: [
      [
        ...MAKE_DEAD,
        { op: 'disconnect', what: 'earthing-conductor' },
        { op: 'reconnect', what: 'earthing-conductor' },
        ...BACK.slice(0, 2),
      ],
    ],
  },
  {
    id: 'energised-failed-test',
    wanted: joint,
    act: [...MAKE_DEAD, continuity('met', 'supply.PE'), ...BACK.slice(0, 2)],
    // A good test of something else, or none at all: a missing test is for the marks, not for this.
    near: [
      [...MAKE_DEAD, continuity('supply.PE', 'outlet.PE'), ...BACK.slice(0, 2)],
      [...MAKE_DEAD, ...BACK.slice(0, 2)],
    ],
  },
  {
    id: 'loop-earth-open',
    wanted: notLanded,
    act: [...MAKE_DEAD, continuity('met', 'supply.PE'), ...BACK, ...CHARGE, loop('outlet.L1', 'outlet.PE')],
    // Between line and neutral no current goes to earth; and what nobody has measured nobody knows.
    near: [
      [...MAKE_DEAD, continuity('met', 'supply.PE'), ...BACK, ...CHARGE, loop('outlet.L1', 'outlet.N')],
      [...CHARGE, loop('outlet.L1', 'outlet.PE')],
    ],
  },
  {
    id: 'residual-earth-open',
    wanted: notLanded,
    act: [...MAKE_DEAD, continuity('met', 'supply.PE'), ...BACK, ...CHARGE, RAMP],
    near: [[...CHARGE, RAMP]],
  },
  {
    id: 'proved-with-meter',
    act: [{ op: 'isolate' }, { op: 'prove-dead', at: 'origin', tool: 'meter' }],
    near: [[{ op: 'isolate' }, { op: 'prove-dead', at: 'origin' }]],
  },
  {
    id: 'detector-not-proved',
    act: [{ op: 'isolate' }, { op: 'prove-dead', at: 'origin', proof: 'before' }],
    near: [[{ op: 'isolate' }, { op: 'prove-dead', at: 'origin' }]],
  },
  {
    id: 'detector-failed',
    wanted: { faults: [{ fault: 'detector-lead-parts', values: {} }] },
    act: [{ op: 'isolate' }, { op: 'prove-dead', at: 'origin' }, { op: 'prove-dead', at: 'origin' }],
    near: [
      [{ op: 'isolate' }, { op: 'prove-dead', at: 'origin' }],
      [
        { op: 'isolate' },
        { op: 'prove-dead', at: 'origin' },
        { op: 'put-right', what: 'detector-lead-parts' },
        { op: 'prove-dead', at: 'origin' },
      ],
    ],
  },
  {
    id: 'isolated-without-lock',
    act: [{ op: 'isolate', lock: false }],
    near: [[{ op: 'isolate' }]],
  },
  {
    id: 'energised-cover-open',
    act: [...MAKE_DEAD, { op: 'energise' }],
    near: [[...MAKE_DEAD, { op: 'close-cover' }, { op: 'energise' }]],
  },
  {
    // EAWR reg. 12; BS 7671 537.2: an isolator is not made to break a load.
    id: 'isolated-under-load',
    act: [...CHARGE, { op: 'vehicle', load: 16 }, { op: 'wait', seconds: 1 }, { op: 'isolate' }],
    near: [
      [...CHARGE, { op: 'isolate' }],
      [
        ...CHARGE,
        { op: 'vehicle', load: 16 },
        { op: 'vehicle', state: 'B' },
        { op: 'wait', seconds: 1 },
        { op: 'isolate' },
      ],
    ],
  },
  {
    id: 'energised-unit-off',
    act: [...MAKE_DEAD, { op: 'disconnect', what: 'unit' }, ...BACK.slice(0, 2)],
    near: [
      [
        ...MAKE_DEAD,
        { op: 'disconnect', what: 'unit' },
        { op: 'reconnect', what: 'unit' },
        ...BACK.slice(0, 2),
      ],
    ],
  },
  {
    // EAWR reg. 12(2): isolated from every source.
    id: 'vehicle-left-plugged',
    act: [...PLUG_IN, ...MAKE_DEAD, insulation(['supply.L1', 'supply.N'], 'supply.PE')],
    near: [
      // In state A it is a lead to measure through, and continuity is not work on a conductor.
      [
        ...PLUG_IN,
        { op: 'vehicle', state: 'A' },
        ...MAKE_DEAD,
        insulation(['supply.L1', 'supply.N'], 'supply.PE'),
      ],
      [...PLUG_IN, ...MAKE_DEAD, continuity('met', 'outlet.PE')],
    ],
  },
  {
    // BS 7671 643.1 and 643.2: continuity comes first.
    id: 'loop-earth-not-shown',
    act: [...CHARGE, loop('outlet.L1', 'outlet.PE')],
    near: [
      [...CHARGE, loop('outlet.L1', 'outlet.N')],
      [...SHOWN, ...CHARGE, loop('outlet.L1', 'outlet.PE')],
      [loop('incoming.L1', 'met')],
    ],
  },
  {
    id: 'residual-earth-not-shown',
    act: [...MAKE_DEAD, continuity('met', 'supply.PE'), ...BACK, ...CHARGE, RAMP],
    near: [[...SHOWN, ...CHARGE, RAMP]],
  },
  {
    // BS 7671 643.3.3.
    id: 'insulation-through-electronics',
    act: [...MAKE_DEAD, insulation('supply.L1', 'supply.N')],
    near: [
      [...MAKE_DEAD, insulation(['supply.L1', 'supply.N'], 'supply.PE')],
      [...MAKE_DEAD, { op: 'disconnect', what: 'unit' }, insulation('supply.L1', 'supply.N')],
      [...MAKE_DEAD, insulation('outlet.L1', 'outlet.N')],
    ],
  },
  {
    id: 'insulation-over-sheet',
    act: [...MAKE_DEAD, insulation('supply.L1', 'supply.PE', 500)],
    near: [
      [...MAKE_DEAD, insulation('supply.L1', 'supply.PE', 250)],
      [...MAKE_DEAD, { op: 'disconnect', what: 'unit' }, insulation('supply.L1', 'supply.PE', 500)],
    ],
  },
  {
    id: 'insulation-on-pilot',
    act: [...MAKE_DEAD, insulation('outlet.CP', 'outlet.PE')],
    near: [[...MAKE_DEAD, insulation(['outlet.L1', 'outlet.N'], 'outlet.PE')]],
  },
];

const lastUnsafe = (wanted: Wanted | undefined, script: readonly OperationInput[]) =>
  doing(benchWith(wanted), ...script).at(-1)?.unsafe ?? [];

test('the table holds every unsafe act once', () => {
  expect(PAIRS.map(({ id }) => id).sort()).toEqual(Object.keys(UNSAFE_ACTS).sort());
});

describe.each(PAIRS)('$id', ({ id, wanted, act, near }) => {
  test('is found', () => {
    const found = lastUnsafe(wanted, act);
    expect(found.map((unsafe) => unsafe.id)).toContain(id);
    expect(found.find((unsafe) => unsafe.id === id)).toMatchObject(UNSAFE_ACTS[id]);
  });

  test.each(near.map((script) => [script] as const))('is not found in what is near it', (script) => {
    expect(lastUnsafe(wanted, script).map((unsafe) => unsafe.id)).not.toContain(id);
  });
});

const whyFailed = (world: World) => world.knowledge.failedTests.map(({ why }) => why);

describe('an earth off is whichever was taken off, the distributor’s or the site’s own electrode', () => {
  const energised = (wanted: Wanted, ...between: readonly OperationInput[]) =>
    lastUnsafe(wanted, [...MAKE_DEAD, ...between, ...BACK.slice(0, 2)]).map(({ id }) => id);
  const off = (what: 'electrode' | 'earthing-conductor' | 'unit'): OperationInput => ({
    op: 'disconnect',
    what,
  });
  const on = (what: 'electrode'): OperationInput => ({ op: 'reconnect', what });

  test('the electrode of a TT site', () => {
    expect(energised({ site: ELECTRODE }, off('electrode'))).toEqual(['energised-earth-off']);
    expect(energised({ site: ELECTRODE }, off('electrode'), on('electrode'))).toEqual([]);
  });

  test('the distributor’s earth of a TN site', () => {
    expect(energised({ site: { earthing: 'TN-S' } }, off('earthing-conductor'))).toEqual([
      'energised-earth-off',
    ]);
  });

  test('anything else taken off is no earth', () => {
    expect(energised({}, off('unit'))).toEqual(['energised-unit-off']);
  });
});

describe('what stands until it is put right', () => {
  test('a failed test, until the same one passes', () => {
    const world = benchWith(joint);
    doing(world, ...MAKE_DEAD, continuity('supply.PE', 'met'));
    expect(whyFailed(world)).toEqual(['protective-above-sum']);
    doing(world, continuity('supply.PE', 'outlet.PE'));
    expect(whyFailed(world)).toHaveLength(1);
    // Put right by hand, and measured the other way round.
    const mended = benchWith();
    mended.knowledge = { ...world.knowledge };
    doing(mended, ...MAKE_DEAD, continuity('met', 'supply.PE'));
    expect(whyFailed(mended)).toEqual([]);
  });

  // The contract’s rule; each of the first three was called critical though it had been put right.
  test.each<[string, readonly OperationInput[], readonly OperationInput[], readonly string[]]>([
    [
      'line to PE, then line and neutral joined',
      [insulation('supply.L1', 'supply.PE')],
      [insulation(['supply.L1', 'supply.N'], 'supply.PE')],
      [],
    ],
    [
      'line and neutral joined, then each by itself, at the other end',
      [insulation(['supply.L1', 'supply.N'], 'supply.PE')],
      [insulation('origin.L1', 'met'), insulation('origin.N', 'origin.PE')],
      [],
    ],
    [
      'line and neutral joined, then the line alone',
      [insulation(['supply.L1', 'supply.N'], 'supply.PE')],
      [insulation('supply.L1', 'supply.PE')],
      ['insulation-low'],
    ],
    [
      'at 500 V with the unit off, then at 250 V',
      [{ op: 'disconnect', what: 'unit' }, insulation('supply.L1', 'supply.PE', 500)],
      [insulation('supply.L1', 'supply.PE', 250)],
      ['insulation-low'],
    ],
    [
      'with the unit joined, then without it',
      [insulation('supply.L1', 'supply.PE')],
      [{ op: 'disconnect', what: 'unit' }, insulation('supply.L1', 'supply.PE')],
      ['insulation-low'],
    ],
    [
      'the circuit, then the outlet',
      [insulation('supply.L1', 'supply.PE')],
      [insulation('outlet.L1', 'outlet.PE')],
      ['insulation-low'],
    ],
  ])('insulation: %s', (_, failing, passing, left) => {
    const leaky = benchWith({ faults: [{ fault: 'line-pe-insulation-low', values: { ohms: 200_000 } }] });
    doing(leaky, ...MAKE_DEAD, ...failing);
    expect(whyFailed(leaky)).not.toEqual([]);
    const mended = benchWith();
    mended.knowledge = leaky.knowledge;
    doing(mended, ...MAKE_DEAD, ...passing);
    expect(whyFailed(mended)).toEqual(left);
  });

  test('a protective conductor read with its leads not nulled, then nulled, along another of its paths', () => {
    const world = benchWith({ faults: [{ fault: 'pe-joint', values: { ohms: 0.2 } }] });
    doing(world, ...MAKE_DEAD, continuity('met', 'outlet.PE'));
    expect(whyFailed(world)).toEqual(['protective-above-sum']);
    const mended = benchWith();
    mended.knowledge = world.knowledge;
    doing(mended, ...MAKE_DEAD, continuity('met', 'supply.PE'));
    expect(whyFailed(mended)).toHaveLength(1);
    doing(mended, { op: 'null-leads' }, continuity('outlet.PE', 'supply.PE'));
    expect(whyFailed(mended)).toEqual([]);
  });

  test('neutral to PE with the neutral joined at the origin is no failed test, and no passed one', () => {
    const world = benchWith({
      site: { circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 1 } } },
    });
    doing(world, { op: 'isolate', poles: 'line' }, { op: 'wait', seconds: 2 }, { op: 'open-cover' });
    const [reading] = doing(world, insulation('supply.N', 'supply.PE'));
    expect(reading?.readings[0]?.value).toBeLessThan(20_000);
    expect(whyFailed(world)).toEqual([]);
  });

  test.each([
    ['the unit, proved at the board alone', AT_ORIGIN, { op: 'disconnect', what: 'unit' }],
    ['the unit back again, proved at the board alone', AT_ORIGIN, { op: 'reconnect', what: 'unit' }],
    ['an arrester, proved at the board alone', AT_ORIGIN, { op: 'disconnect', what: 'arrester' }],
    ['a link, proved at the unit alone', AT_SUPPLY, { op: 'link', between: LINK }],
    ['a link out again, proved at the unit alone', AT_SUPPLY, { op: 'unlink', between: LINK }],
    ['the earth, proved at the unit alone', AT_SUPPLY, { op: 'disconnect', what: 'earthing-conductor' }],
    ['the unit, proved and not locked', UNLOCKED, { op: 'disconnect', what: 'unit' }],
    ['a repair, proved at the board alone', AT_ORIGIN, { op: 'put-right', what: 'pe-joint' }],
    [
      'a repair at the board, proved at the unit alone',
      AT_SUPPLY,
      { op: 'put-right', what: 'breaker-too-slow' },
    ],
  ] as const)('dead where the work is, and locked: %s', (_, first, handled) => {
    expect(lastUnsafe(undefined, [...first, handled as OperationInput]).map(({ id }) => id)).toContain(
      'conductor-not-proved-dead',
    );
  });

  test('what was found live stays so: whoever opens the cover then opens it on a live circuit', () => {
    // The line is crossed with another circuit's: the named one is off, and the terminals are not dead.
    const world = benchWith();
    world.plant = { ...world.plant, isolated: ['N'], locked: true };
    const [found, cover] = doing(world, { op: 'prove-dead', at: 'origin' }, { op: 'open-cover' });
    expect(found?.readings.some(({ value }) => (value ?? 0) > 200)).toBe(true);
    expect(cover?.unsafe.map(({ id }) => id)).toEqual(['cover-circuit-on']);
    const [, , again] = doing(
      world,
      { op: 'isolate' },
      { op: 'prove-dead', at: 'origin' },
      { op: 'close-cover' },
    );
    expect(again?.unsafe).toEqual([]);
    expect(doing(world, { op: 'open-cover' })[0]?.unsafe).toEqual([]);
  });

  test('dead, until it is energised', () => {
    const world = benchWith();
    doing(world, ...MAKE_DEAD);
    expect(Object.keys(world.knowledge.provedDead)).toEqual(['origin', 'supply']);
    const [off] = doing(
      world,
      ...BACK,
      { op: 'isolate' },
      { op: 'open-cover' },
      { op: 'disconnect', what: 'unit' },
    ).slice(-1);
    expect(off?.unsafe.map(({ id }) => id)).toEqual(['conductor-not-proved-dead']);
  });

  test('a meter or a live terminal proves nothing', () => {
    const world = benchWith();
    doing(
      world,
      { op: 'prove-dead', at: 'origin' },
      { op: 'isolate' },
      { op: 'prove-dead', at: 'origin', tool: 'meter' },
    );
    expect(world.knowledge.provedDead).toEqual({});
  });
});

test('a tester on live parts opens its fuse, which is heard, and refuses', () => {
  const world = benchWith();
  const outcome = doing(world, ...CHARGE, insulation('outlet.L1', 'outlet.PE')).at(-1);
  expect(outcome?.events.map(({ what }) => what)).toEqual(['instrument fuse opened']);
  expect(outcome?.readings[0]).toMatchObject({ qualifier: 'unable', value: null });
});

/**
 * What a reading teaches. One phase, 18 m of 6 mm², 3.08 mΩ/m: 0.055 Ω; tether 5 m of 6 mm², 3.30 mΩ/m: 0.017 Ω
 * (IEC 60228); contacts may add 0.05 Ω (common practice, no source). Insulation 1 MΩ at least (BS 7671 Table 64).
 */
describe('what a dead test has shown', () => {
  const taught = (
    input: OperationInput,
    value: number | null,
    more: Partial<Reading> = {},
    wanted: Wanted = {},
  ) => {
    const world = benchWith(wanted);
    doing(world, { op: 'isolate' });
    return learn(world, operation(input) as Measurement, {
      quantity: 'continuity',
      value,
      unit: 'Ω',
      uncertainty: 0,
      qualifier: null,
      at: 0,
      ...more,
    });
  };
  const failures = (...asked: Parameters<typeof taught>) =>
    taught(...asked).failedTests.map(({ why }) => why);
  const ABOVE = 'protective-above-sum';
  const OPEN = 'protective-open';

  test.each([
    { between: ['met', 'origin.PE'], least: 0.05 },
    { between: ['met', 'supply.PE'], least: 0.105 },
    { between: ['met', 'case'], least: 0.105 },
    { between: ['met', 'outlet.PE'], least: 0.121 },
    { between: ['outlet.PE', 'supply.PE'], least: 0.066 },
    { between: ['case', 'origin.PE'], least: 0.105 },
  ] as const)('$between may read $least Ω', ({ between: [a, b], least }) => {
    expect(failures(continuity(a, b), least - 0.001)).toEqual([]);
    expect(failures(continuity(a, b), least + 0.001)).toEqual([ABOVE]);
    // In doubt it has not failed.
    expect(failures(continuity(a, b), least + 0.01, { uncertainty: 0.02 })).toEqual([]);
    expect(failures(continuity(a, b), 99)).toEqual([ABOVE]);
    expect(failures(continuity(a, b), 100)).toEqual([OPEN]);
    expect(failures(continuity(a, b), null, { qualifier: '>' })).toEqual([OPEN]);
  });

  test('a socket’s contacts come before the customer’s cable', () => {
    const socket: Wanted = { sheet: { outlet: 'socket' } };
    expect(failures(continuity('met', 'outlet.PE'), 0.11, {}, socket)).toEqual([ABOVE]);
    expect(failures(continuity('met', 'outlet.PE'), 0.104, {}, socket)).toEqual([]);
  });

  test('a lead that is not on a protective conductor shows nothing of one', () => {
    expect(failures(continuity('origin.L1', 'supply.L1'), 500)).toEqual([]);
    expect(failures(continuity('met', 'supply.N'), 500)).toEqual([]);
    expect(failures(continuity('met', 'met'), 500)).toEqual([]);
  });

  test.each([
    { between: ['supply.L1', 'supply.PE'], fails: true },
    { between: ['origin.N', 'met'], fails: true },
    { between: ['supply.L1', 'case'], fails: true },
    // Through the unit's electronics a low reading is no fault (BS 7671 643.3.3); behind the open contactor there are none.
    { between: ['supply.L1', 'supply.N'], fails: false },
    { between: ['outlet.L1', 'outlet.N'], fails: true },
    { between: ['outlet.CP', 'outlet.PE'], fails: false },
  ] as const)('$between under 1 MΩ fails: $fails', ({ between: [a, b], fails }) => {
    const failed = fails ? ['insulation-low'] : [];
    expect(failures(insulation(a, b), 0.99e6)).toEqual(failed);
    expect(failures(insulation(a, b), 1e6)).toEqual([]);
    expect(failures(insulation(a, b), null, { qualifier: '>' })).toEqual([]);
  });

  test('a declared bleed brings the electronics to the outlet; with the unit off there are none', () => {
    const low = insulation('outlet.L1', 'outlet.N');
    expect(failures(low, 0.5e6, {}, { sheet: { poleBleed: 470_000 } })).toEqual([]);
    const world = benchWith();
    doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
    const measurement = operation(insulation('supply.L1', 'supply.N')) as Measurement;
    const reading: Reading = {
      quantity: 'insulation',
      value: 0.5e6,
      unit: 'Ω',
      uncertainty: 0,
      qualifier: null,
      at: 0,
    };
    expect(learn(world, measurement, reading).failedTests.map(({ why }) => why)).toEqual(['insulation-low']);
  });

  test('a refused test, and any other quantity, teach nothing', () => {
    expect(taught(continuity('met', 'supply.PE'), null, { qualifier: 'unable' })).toEqual(nothingKnown());
    expect(taught(loop('outlet.L1', 'outlet.PE'), 500)).toEqual(nothingKnown());
  });

  test('a failure stands by the paths that it joined, and each is taken away by a pass of its own', () => {
    const world = benchWith();
    const learned = (a: string, b: string, value: number) => {
      const reading: Reading = {
        quantity: 'continuity',
        value,
        unit: 'Ω',
        uncertainty: 0,
        qualifier: null,
        at: 0,
      };
      world.knowledge = learn(world, operation(continuity(a, b)) as Measurement, reading);
      return world.knowledge;
    };
    learned('met', 'supply.PE', 500);
    const [BOARD, CIRCUIT, CABLE] = ['PE of the board', 'PE of the circuit', 'PE of the cable'];
    // Above its sum is not open.
    expect(learned('outlet.PE', 'met', 0.5).failedTests).toEqual([
      { why: OPEN, isOpen: true, volts: 0, left: [BOARD, CIRCUIT] },
      { why: ABOVE, isOpen: false, volts: 0, left: [BOARD, CIRCUIT, CABLE] },
    ]);
    expect(learned('supply.PE', 'met', 0.06)).toMatchObject({
      failedTests: [{ why: ABOVE, isOpen: false, volts: 0, left: [CABLE] }],
      earthShown: [BOARD, CIRCUIT],
    });
    expect(learned('met', 'outlet.PE', 0.07).failedTests).toEqual([]);
  });
});
