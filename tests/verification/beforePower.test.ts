/**
 * The tests before and at power, on benches whose parts were altered by hand: each breaks what it should there and
 * nothing else. And what the papers alone tell.
 */
import { describe, expect, test } from 'vitest';
import { type OperationInput, operation } from '../../src/bench/operation.ts';
import type { World } from '../../src/bench/world.ts';
import type { Parts } from '../../src/faults/parts.ts';
import { withPart } from '../../src/faults/parts.ts';
import type { Part } from '../../src/site/part.ts';
import { OPEN } from '../../src/site/part.ts';
import type { Site } from '../../src/site/site.ts';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import { ACTIONS, actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations, judgeLimits } from '../../src/verification/assess.ts';
import { observe } from '../../src/verification/observed.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import type { Papers, TestAction } from '../../src/verification/testAction.ts';
import { benchWith, designOf, SHEET, siteOf, THREE_PHASE, type Wanted } from '../bench/build.ts';

type Installation = Pick<Wanted, 'site' | 'sheet'>;

const HOME = { sheet: { openPen: 'other' } } as const satisfies Installation;
const YARD = {
  site: { ...THREE_PHASE, loopImpedance: 0.2, neutralImpedance: 0.18 },
  sheet: { outlet: 'socket' },
} as const satisfies Installation;
const ROD = {
  site: {
    earthing: 'TT',
    electrodeResistance: 80,
    neutralImpedance: 0.25,
    circuit: { residualDevice: { type: 'A', rated: 0.1, delay: 'S', poles: 2 } },
  },
} as const satisfies Installation;
const ROD_THREE = {
  site: {
    ...ROD.site,
    phases: 3,
    circuit: {
      ...THREE_PHASE.circuit,
      residualDevice: { type: 'A', rated: 0.1, delay: 'S', poles: 4 },
    },
  },
} as const satisfies Installation;
const INSTALLATIONS = {
  'TN-C-S, one phase, tethered': HOME,
  'TN-C-S, three phases, socket': {
    site: { ...YARD.site, earthing: 'TN-C-S' },
    sheet: { outlet: 'socket', openPen: 'other' },
  },
  'TN-S, three phases, socket': YARD,
  'TN-S, one phase, socket': { site: { earthing: 'TN-S' }, sheet: { outlet: 'socket' } },
  'TT, one phase, tethered': ROD,
  'TT, three phases, tethered': ROD_THREE,
} as const satisfies Record<string, Installation>;

const papersOf = ({ site, sheet }: Installation): Papers => ({
  site: siteOf(site),
  sheet: { ...SHEET, ...sheet },
});

const OWN = [
  'papers',
  'instruments',
  'isolate',
  'prove-dead',
  'inspect',
  'pe-circuit',
  'pe-outlet',
  'r1r2-polarity',
  'insulation-circuit',
  'insulation-unit',
  'insulation-outlet',
  'poles-open',
  'coding',
  'electrode',
  'make-good',
  'ze',
  'pfc',
  'supply-volts',
  'energise',
  'state-a',
  'finish',
] as const;
type Own = (typeof OWN)[number];

/** Does these actions one after another, whatever they find, and names what was broken, not shown or unsafe. */
function complaints(world: World, papers: Papers, actions: readonly TestAction[]): readonly string[] {
  return actions
    .filter((action) => action.applies(papers))
    .flatMap((action) => {
      const run = carryOut(world, action, papers);
      return [
        ...judgeExpectations(action, papers, run)
          .filter(({ finding }) => finding !== 'met')
          .map(({ expectation, finding }) => `${action.id}: ${expectation.id} ${finding}`),
        ...judgeLimits(action, papers, run)
          .filter(({ pass }) => !pass)
          .map(({ limit }) => `${action.id}: ${limit.id} failed`),
        ...run.outcomes.flatMap(({ unsafe, refused }) => [
          ...unsafe.map(({ id }) => `${action.id}: unsafe ${id}`),
          ...(refused === null ? [] : [`${action.id}: refused, ${refused}`]),
        ]),
      ];
    });
}

const own = OWN.map((id) => actionNamed(id) as TestAction);
const only = (...ids: readonly Own[]) => ids.map((id) => actionNamed(id) as TestAction);

describe('a sound installation meets all of it', () => {
  test.each(Object.entries(INSTALLATIONS))('%s', (_, installation) => {
    const world = benchWith(installation);
    expect(complaints(world, papersOf(installation), own)).toEqual([]);
    // Nothing that was moved for a test is left so.
    const { isolated, mainOff, removed, links, cover } = world.plant;
    expect({ isolated, mainOff, removed, links, cover }).toEqual({
      isolated: [],
      mainOff: [],
      removed: [],
      links: [],
      cover: 'closed',
    });
  });
});

const resistance = (id: string, ohms: number) => (parts: Parts) =>
  withPart(parts, id, (part) => ({ ...part, resistance: ohms }));
const open = (id: string) => resistance(id, OPEN);
const more = (id: string, ohms: number) => (parts: Parts) =>
  withPart(parts, id, (part) => ({ ...part, resistance: part.resistance + ohms }));
/** The far ends of two conductors change places. */
const crossed = (x: string, y: string) => (parts: Parts) => {
  const endOf = (id: string) => (parts.parts.find((part) => part.id === id) as Part).b;
  const [a, b] = [endOf(x), endOf(y)];
  return withPart(
    withPart(parts, x, (part) => ({ ...part, b })),
    y,
    (part) => ({ ...part, b: a }),
  );
};
const welded = (pole: 'L1' | 'N', sheet?: Partial<UnitSheet>): Partial<UnitDesign> => {
  const { poles } = designOf(sheet);
  return { poles: { ...poles, [pole]: { welded: true } }, weldCheck: 'none' };
};

interface Altered {
  readonly name: string;
  readonly on: Installation;
  readonly parts?: Wanted['parts'];
  readonly design?: Partial<UnitDesign>;
  /** Tests done; all that come before power if left out. */
  readonly tests?: readonly Own[];
  readonly broken: readonly string[];
}

const DEAD = OWN.slice(0, OWN.indexOf('make-good'));

const ALTERED: readonly Altered[] = [
  {
    name: 'line and neutral crossed at the supply terminals',
    on: HOME,
    parts: crossed('circuit.L1', 'circuit.N'),
    broken: ['r1r2-polarity: near-sum broken', 'r1r2-polarity: other-conductor broken'],
  },
  {
    name: 'two lines crossed at the supply terminals',
    on: YARD,
    parts: crossed('circuit.L2', 'circuit.L3'),
    broken: ['r1r2-polarity: near-sum broken', 'r1r2-polarity: other-conductor broken'],
  },
  {
    name: 'a line that does not arrive',
    on: YARD,
    parts: open('circuit.L3'),
    broken: ['r1r2-polarity: near-sum broken'],
  },
  {
    name: 'a poor joint in a line',
    on: HOME,
    parts: more('circuit.L1', 0.4),
    broken: ['r1r2-polarity: near-sum broken'],
  },
  {
    name: 'neutral and PE joined at the unit',
    on: HOME,
    parts: resistance('insulation.circuit.N-PE', 0.01),
    broken: [
      'r1r2-polarity: other-conductor broken',
      'insulation-circuit: lives-to-earth broken',
      'insulation-circuit: insulation failed',
      'insulation-unit: unit-to-earth broken',
      'insulation-unit: insulation failed',
    ],
  },
  {
    name: 'a PE core that parts when the tether is bent',
    on: HOME,
    parts: (parts) =>
      withPart(parts, 'cable.PE', (part) => ({ ...part, contact: 'unflexed', openResistance: OPEN })),
    tests: ['pe-outlet', 'insulation-outlet'],
    broken: [
      'pe-outlet: near-sum broken',
      'pe-outlet: open broken',
      'pe-outlet: jumps broken',
      'pe-outlet: sum failed',
    ],
  },
  {
    name: 'insulation that gives when the tether is bent',
    on: HOME,
    parts: (parts) =>
      withPart(parts, 'insulation.cable.L1-PE', (part) => ({
        ...part,
        contact: 'unflexed',
        openResistance: 50_000,
      })),
    tests: ['pe-outlet', 'insulation-outlet'],
    broken: ['insulation-outlet: outlet-to-earth broken', 'insulation-outlet: insulation failed'],
  },
  {
    name: 'a filter that leaks inside the unit',
    on: HOME,
    parts: resistance('filter.L1', 100_000),
    broken: ['insulation-unit: unit-to-earth broken', 'insulation-unit: insulation failed'],
  },
  {
    name: 'a welded neutral pole',
    on: HOME,
    design: welded('N'),
    broken: ['poles-open: over-range broken', 'poles-open: welded broken'],
  },
  {
    name: 'a tether coded for 13 A',
    on: HOME,
    parts: resistance('coding.end', 1500),
    broken: ['coding: as-marked broken', 'coding: less-than-offered broken'],
  },
  {
    name: 'an electrode in dry ground',
    on: ROD,
    parts: resistance('electrode', 600),
    broken: ['electrode: as-papers broken', 'electrode: too-high broken', 'electrode: electrode failed'],
  },
  {
    name: 'an electrode that has met a pipe',
    on: ROD,
    parts: resistance('electrode', 1),
    broken: ['electrode: as-papers broken'],
  },
  {
    name: 'something to be seen at the terminals',
    on: HOME,
    parts: (parts) => ({ ...parts, visible: [{ where: 'terminals', what: { id: 'screw-turns' } }] }),
    broken: ['inspect: terminals broken'],
  },
  {
    name: 'something to be seen at the socket',
    on: YARD,
    parts: (parts) => ({ ...parts, visible: [{ where: 'outlet', what: { id: 'lid-hangs-open' } }] }),
    broken: ['inspect: outlet broken'],
  },
  {
    name: 'a supply loop far above its papers',
    on: HOME,
    parts: more('pen', 0.5),
    tests: ['ze'],
    broken: ['ze: as-design broken', 'ze: usual failed'],
  },
  {
    name: 'an open PEN conductor, which nought between neutral and earth does not show',
    on: HOME,
    parts: open('pen'),
    tests: ['ze'],
    broken: ['ze: as-design broken', 'ze: no-earth broken'],
  },
  {
    name: 'a loose earthing conductor, which is off while Ze is measured',
    on: HOME,
    parts: more('earthing', 2),
    tests: ['ze', 'pfc', 'supply-volts'],
    broken: ['pfc: earth-way broken', 'pfc: alike broken'],
  },
  {
    name: 'a poor joint in the supply’s neutral',
    on: YARD,
    parts: more('source.N', 1),
    tests: ['ze', 'pfc'],
    broken: ['pfc: neutral-way broken'],
  },
  {
    name: 'an open neutral of the supply',
    on: { site: { earthing: 'TN-S' } },
    parts: open('source.N'),
    tests: ['pfc', 'supply-volts'],
    broken: [
      'pfc: neutral-way broken',
      'pfc: no-return broken',
      'supply-volts: line-to-neutral broken',
      'supply-volts: line-to-earth broken',
      'supply-volts: neutral-lifted broken',
    ],
  },
  {
    name: 'neutral and earth joined on a TT site',
    on: ROD,
    parts: (parts) => ({
      ...parts,
      parts: [...parts.parts, { id: 'joined', a: 'service.N', b: 'met', resistance: 0.01 }],
    }),
    tests: ['electrode', 'pfc'],
    broken: ['pfc: joined broken'],
  },
  {
    name: 'lines that rotate the other way',
    on: YARD,
    parts: crossed('source.L2', 'source.L3'),
    tests: ['supply-volts'],
    broken: ['supply-volts: rotation broken'],
  },
  {
    name: 'a missing neutral, which R1 + R2 does not show',
    on: HOME,
    parts: open('circuit.N'),
    tests: ['r1r2-polarity', 'insulation-circuit', 'poles-open', 'pfc', 'supply-volts', 'energise'],
    broken: ['energise: ready broken', 'energise: twelve-volts broken'],
  },
  {
    name: 'a welded line pole',
    on: HOME,
    design: welded('L1'),
    tests: ['energise', 'state-a', 'finish'],
    broken: ['energise: voltage broken', 'state-a: voltage broken', 'finish: voltage broken'],
  },
  {
    name: 'a pilot that gives 9 V',
    on: HOME,
    design: { pilot: { positive: 9, negative: -12, frequency: 1000 } },
    tests: ['energise'],
    broken: ['energise: offers-early broken', 'energise: ready broken', 'energise: twelve-volts broken'],
  },
];

describe('what was altered breaks where it should, and nowhere else', () => {
  test.each(ALTERED)('$name', ({ on, parts, design, tests, broken }) => {
    const world = benchWith({ ...on, ...(parts && { parts }), ...(design && { design }) });
    expect(complaints(world, papersOf(on), only(...(tests ?? DEAD)))).toEqual(broken);
  });
});

test('a welded neutral pole shows in no other test of the whole sequence', () => {
  const world = benchWith({ ...HOME, design: welded('N') });
  const found = complaints(world, papersOf(HOME), ACTIONS).filter((line) => !line.startsWith('poles-open'));
  expect(found).toEqual([]);
});

describe('papers', () => {
  const residual = SHEET.residual;
  const cases: readonly (readonly [string, Installation, readonly string[]])[] = [
    ['set above its breaker', { ...HOME, sheet: { ...HOME.sheet, setCurrent: 45 } }, ['over-rating']],
    [
      'no 30 mA device anywhere',
      { sheet: { ...HOME.sheet, residual: { type: null, rated: null, by: null, direct: 'monitoring' } } },
      ['additional'],
    ],
    [
      '100 mA in the unit',
      { sheet: { ...HOME.sheet, residual: { ...residual, rated: 0.1 } } },
      ['additional'],
    ],
    ['no d.c. detector', { sheet: { ...HOME.sheet, residual: { ...residual, direct: null } } }, ['direct']],
    [
      'type AC in the unit',
      { sheet: { ...HOME.sheet, residual: { ...residual, type: 'AC' } } },
      ['additional', 'type-ac'],
    ],
    ['PME with no measure', { sheet: { openPen: 'none' } }, ['open-pen']],
    [
      'a voltage window on three phases',
      { site: { ...THREE_PHASE, earthing: 'TN-C-S' }, sheet: { openPen: 'voltage-window' } },
      ['window'],
    ],
    [
      'TT with nothing at the origin',
      { site: { ...ROD.site, circuit: { residualDevice: null } } },
      ['at-origin'],
    ],
    ['TT, RA × IΔn above 50 V', { site: { ...ROD.site, electrodeResistance: 600 } }, ['touch-voltage']],
    [
      'a device upstream that leaves the neutral closed',
      {
        site: { circuit: { residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: 1 } } },
        sheet: { ...HOME.sheet, residual: { type: null, rated: null, by: null, direct: 'monitoring' } },
      },
      ['additional'],
    ],
    [
      'type B needs no detector',
      { sheet: { ...HOME.sheet, residual: { ...residual, type: 'B', direct: null } } },
      [],
    ],
  ];
  test.each(cases)('%s', (_, on, broken) => {
    expect(complaints(benchWith(on), papersOf(on), only('papers'))).toEqual(
      broken.map((id) => `papers: ${id} broken`),
    );
  });

  test('not read, nothing is shown', () => {
    const papers = papersOf(HOME);
    const action = actionNamed('papers') as TestAction;
    const found = judgeExpectations(action, papers, { samples: [] });
    expect(new Set(found.map(({ finding }) => finding))).toEqual(new Set(['not shown']));
  });
});

test('lines at the least that each may have are not too low between each other', () => {
  const on: Installation = { ...YARD, site: { ...YARD.site, voltage: 216.3, otherLoads: [] } };
  for (const seed of [1, 2, 3, 4, 5, 6, 7, 8])
    expect(complaints(benchWith({ ...on, seed }), papersOf(on), only('supply-volts'))).toEqual([]);
});

describe('limits at the origin', () => {
  /** Line–neutral loop, phases, kA → whether the device breaks it (230 V ÷ Z, twice that on three phases). */
  const rows = [
    { phases: 1, loop: 0.2, capacity: 6000, passes: true, source: '230 ÷ 0.20 = 1.15 kA' },
    { phases: 3, loop: 0.2, capacity: 6000, passes: true, source: '2 × 1.15 = 2.30 kA' },
    { phases: 3, loop: 0.05, capacity: 6000, passes: false, source: '2 × 4.6 = 9.2 kA' },
    { phases: 3, loop: 0.12, capacity: 3000, passes: false, source: '2 × 1.92 = 3.83 kA' },
    { phases: 3, loop: 0.12, capacity: 10_000, passes: true, source: '2 × 1.92 = 3.83 kA' },
  ] as const;
  test.each(rows)('$source with $capacity A: $passes', ({ phases, loop, capacity, passes }) => {
    const usual = phases === 3 ? (THREE_PHASE.circuit?.breaker as Site['circuit']['breaker']) : undefined;
    const breaker = { ...siteOf().circuit.breaker, ...usual, breakingCapacity: capacity };
    const on: Installation = {
      site: {
        phases,
        earthing: 'TN-S',
        loopImpedance: loop,
        neutralImpedance: loop,
        otherLoads: [],
        circuit: { breaker },
      },
    };
    const failed = complaints(benchWith(on), papersOf(on), only('pfc')).filter((line) =>
      line.includes('capacity-neutral'),
    );
    expect(failed.length === 0).toBe(passes);
  });
});

describe('what a person did, judged by the set-up', () => {
  const judged = (id: Own, installation: Installation, ...inputs: readonly OperationInput[]) => {
    const world = benchWith(installation);
    const papers = papersOf(installation);
    const samples = inputs.map((input) => observe(world, operation(input)).sample);
    return Object.fromEntries(
      judgeExpectations(actionNamed(id) as TestAction, papers, { samples }).map(
        ({ expectation, finding }) => [expectation.id, finding],
      ),
    );
  };
  const DEAD_COVER_OFF: readonly OperationInput[] = [
    { op: 'isolate' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'open-cover' },
    { op: 'prove-dead', at: 'supply' },
  ];

  test('a link left in, a conductor left off, the cover left open', () => {
    expect(
      judged(
        'make-good',
        HOME,
        ...DEAD_COVER_OFF,
        { op: 'link', between: ['origin.L1', 'origin.PE'] },
        { op: 'disconnect', what: 'earthing-conductor' },
        { op: 'guard' },
      ),
    ).toEqual({ 'link-in': 'broken', 'conductors-back': 'broken', 'cover-on': 'broken' });
  });

  test('an inspection with the cover on shows nothing of the inside', () => {
    const findings = judged('inspect', HOME, { op: 'inspect' });
    expect(findings).toMatchObject({
      terminals: 'not shown',
      'protective-devices': 'not shown',
      outlet: 'met',
    });
  });

  test('Ze with the earthing conductor on, an electrode with its conductor on: neither is shown', () => {
    const loop: OperationInput = { op: 'measure', quantity: 'loop', between: ['incoming.L1', 'earthing'] };
    expect(judged('ze', HOME, { op: 'isolate' }, loop)).toEqual({
      'as-design': 'not shown',
      'no-earth': 'not shown',
    });
    expect(judged('electrode', ROD, { op: 'isolate' }, { op: 'measure', quantity: 'electrode' })).toEqual({
      'as-papers': 'not shown',
      'too-high': 'not shown',
    });
  });

  test('neutral to PE with the neutral joined at the origin says nothing of the cable', () => {
    expect(
      judged(
        'r1r2-polarity',
        { site: { circuit: { breaker: { ...siteOf().circuit.breaker, poles: 1 } } } },
        { op: 'isolate', poles: 'line' },
        { op: 'prove-dead', at: 'origin' },
        { op: 'open-cover' },
        { op: 'measure', quantity: 'continuity', between: ['supply.N', 'supply.PE'] },
      ),
    ).toMatchObject({ 'other-conductor': 'not shown' });
  });

  test('leads that were not nulled are no fault of anything', () => {
    expect(
      judged(
        'instruments',
        HOME,
        { op: 'null-leads', on: false },
        { op: 'measure', quantity: 'continuity', between: ['met', 'met'] },
      ),
    ).toMatchObject({ nulled: 'not shown' });
  });
});

/** The usual orders of work on the three kinds of site, as far as dead tests and power go; IEC and BS 7671 642 and 643.1, then common practice. */
const ORDERS = {
  'TN-C-S, one phase, tethered': OWN.filter((id) => id !== 'electrode'),
  'TN-S, three phases, socket': OWN.filter((id) => id !== 'electrode' && id !== 'coding'),
  'TT, one phase, tethered': OWN.filter((id) => id !== 'ze'),
} as const;

test.each(Object.entries(ORDERS))('in the usual order: %s', (name, order) => {
  const papers = papersOf(INSTALLATIONS[name as keyof typeof INSTALLATIONS]);
  const ids = ACTIONS.filter((action) => action.applies(papers)).map(({ id }) => id);
  expect(ids.filter((id) => (OWN as readonly string[]).includes(id))).toEqual(order);
  expect(ids.at(-1)).toBe('finish');
});
