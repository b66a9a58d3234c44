/** What a broken PEN conductor does to the earthing terminal and to line–neutral, and what each measure makes of it. */
import { describe, expect, test } from 'vitest';
import { mainsAcross, type World } from '../../src/bench/world.ts';
import { OPEN_PEN_TIME, OPEN_PEN_WINDOW, TOUCH_LIMIT } from '../../src/laws/supplyLimits.ts';
import type { OpenPenKind } from '../../src/unit/design.ts';
import { OWN_LOAD_SUMS, SIDEWAYS_SUM } from '../references/openPenSums.ts';
import { benchWith, CHARGE, doing, type Wanted } from './build.ts';

const onSite = (own: number, electrode: number | null, openPen: OpenPenKind = 'voltage-window'): Wanted => ({
  site: {
    voltage: 236,
    otherLoads: own === 0 ? [] : [{ line: 'L1', power: own }],
    metEarthResistance: electrode,
    // The line's own impedance about nothing, too: these are sums of load and electrode.
    loopImpedance: 0.02,
    neutralImpedance: 0.02,
    // The source's own electrode about nothing.
    sourceElectrodeResistance: 0.001,
  },
  sheet: { openPen },
});

const met = (world: World) => mainsAcross(world, 'met', 'earth');
const lineToNeutral = (world: World) => mainsAcross(world, 'service.L1', 'service.N');

describe('own load alone', () => {
  test.each(OWN_LOAD_SUMS)(
    '$watts W, $electrode Ω: earthing terminal $touch V, line to neutral $lineToNeutral V ($source)',
    (row) => {
      const world = benchWith(onSite(row.watts, row.electrode));
      doing(world, ...CHARGE, { op: 'supply', pen: 'open' });
      expect(Math.abs(met(world) - row.touch)).toBeLessThan(0.6);
      expect(Math.abs(lineToNeutral(world) - row.lineToNeutral)).toBeLessThan(0.8);
      doing(world, { op: 'wait', seconds: OPEN_PEN_TIME });
      expect(world.plant.earthPole).toBe(row.opens ? 'open' : 'closed');
      expect(world.plant.contactor).toBe(row.opens ? 'open' : 'closed');
    },
  );
});

test('with the PEN sound the earthing terminal stays near true earth', () => {
  const world = benchWith(onSite(1800, 5));
  doing(world, ...CHARGE);
  expect(met(world)).toBeLessThan(2);
});

describe('neighbours behind the same broken conductor', () => {
  const opened = (openPen: OpenPenKind) => {
    const world = benchWith(onSite(0, null, openPen));
    doing(world, ...CHARGE, { op: 'supply', pen: 'open', neighbours: [...SIDEWAYS_SUM.neighbours] });
    return world;
  };

  test(`may move the neutral sideways: inside the window, over 70 V to earth (${SIDEWAYS_SUM.source})`, () => {
    const world = opened('voltage-window');
    expect(Math.abs(met(world) - SIDEWAYS_SUM.touch)).toBeLessThan(0.3);
    expect(Math.abs(lineToNeutral(world) - SIDEWAYS_SUM.lineToNeutral)).toBeLessThan(0.3);
    expect(lineToNeutral(world)).toBeGreaterThan(OPEN_PEN_WINDOW.least);
    expect(lineToNeutral(world)).toBeLessThan(OPEN_PEN_WINDOW.greatest);
    expect(met(world)).toBeGreaterThan(TOUCH_LIMIT);
  });

  test.each([
    { kind: 'voltage-window', opens: false },
    { kind: 'earth-sensing', opens: true },
    { kind: 'other', opens: true },
  ] as const)('then a measure of the kind $kind opens: $opens', ({ kind, opens }) => {
    const world = opened(kind);
    doing(world, { op: 'wait', seconds: OPEN_PEN_TIME });
    expect(world.plant.contactor).toBe(opens ? 'open' : 'closed');
    expect(world.plant.earthPole).toBe(opens ? 'open' : 'closed');
  });

  test('on another line raise line to neutral above the window', () => {
    const world = benchWith(onSite(500, 20));
    doing(world, ...CHARGE, {
      op: 'supply',
      pen: 'open',
      neighbours: [
        { line: 'L2', power: 3000 },
        { line: 'L3', power: 3000 },
      ],
    });
    expect(lineToNeutral(world)).toBeGreaterThan(OPEN_PEN_WINDOW.greatest);
  });
});

/** 722.411.4.1(iv): 207 to 253 V, above as below; off load the unit sees what the source has. */
describe('the window', () => {
  test.each([
    { voltage: 206.5, opens: true },
    { voltage: 207.5, opens: false },
    { voltage: 252.5, opens: false },
    { voltage: 253.5, opens: true },
    { voltage: 265, opens: true },
  ])('$voltage V: opens: $opens', ({ voltage, opens }) => {
    const world = benchWith(onSite(0, null));
    doing(world, ...CHARGE, { op: 'supply', voltage }, { op: 'wait', seconds: OPEN_PEN_TIME });
    const position = opens ? 'open' : 'closed';
    expect(world.plant).toMatchObject({ contactor: position, earthPole: position });
  });
});

/**
 * A protective conductor that is switched opens no earlier than the live conductors, and closes no later
 * (BS 7671:2018+A1:2020 543.3.3.101, from memory).
 */
describe('the PE pole opens last and closes first', () => {
  /** Every position that contactor and PE pole have been in, in order. */
  function watched(world: World) {
    const positions: { contactor: string; earthPole: string; at: number }[] = [];
    world.onlooker = {
      met: () => {},
      moved: ({ plant: { contactor, earthPole }, timeline }) => {
        const last = positions.at(-1);
        if (last?.contactor !== contactor || last.earthPole !== earthPole)
          positions.push({ contactor, earthPole, at: timeline.now });
      },
    };
    return positions;
  }

  test.each([1, 2, 3, 4, 5, 6])('seed %d: never live conductors without it', (seed) => {
    const world = benchWith({ ...onSite(0, null), seed });
    doing(world, ...CHARGE);
    const positions = watched(world);
    doing(
      world,
      { op: 'supply', voltage: 200 },
      { op: 'wait', seconds: OPEN_PEN_TIME },
      { op: 'supply', voltage: 236 },
      { op: 'wait', seconds: 5 },
      { op: 'reset', what: 'unit' },
      { op: 'wait', seconds: 10 },
    );
    expect(positions.map(({ contactor, earthPole }) => `${contactor} ${earthPole}`)).toEqual([
      'closed closed',
      'open closed',
      'open open',
      'open closed',
      'closed closed',
    ]);
  });
});

describe('what the measure does with time', () => {
  const low = { op: 'supply', voltage: 200 } as const;
  const sound = { op: 'supply', voltage: 236 } as const;

  test('rides out 3 s', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const world = benchWith({ ...onSite(0, null), seed });
      doing(world, ...CHARGE, low, { op: 'wait', seconds: 3 }, sound, { op: 'wait', seconds: 5 });
      expect(world.indicator).toBe('charging');
    }
  });

  test('opens line, neutral and PE within 5 s, PE last (BS 7671:2018+A2:2022 722.411.4.1)', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const world = benchWith({ ...onSite(0, null), seed });
      doing(world, ...CHARGE, low, { op: 'wait', seconds: OPEN_PEN_TIME });
      expect(world.plant).toMatchObject({ contactor: 'open', earthPole: 'open' });
    }
  });

  test('a volt drop alone locks a window out: 216.2 V less 5 % is 204.7 V, and a hand reset brings it back', () => {
    const world = benchWith(onSite(0, null));
    doing(world, ...CHARGE, { op: 'supply', voltage: 204.7 }, { op: 'wait', seconds: OPEN_PEN_TIME });
    expect(world.indicator).toBe('fault');
    doing(world, sound, { op: 'wait', seconds: 60 });
    expect(world.indicator).toBe('fault');
    doing(world, { op: 'reset', what: 'unit' }, { op: 'wait', seconds: 5 });
    expect(world.indicator).toBe('charging');
  });

  test('neither a reset nor a return of supply closes it onto the hazard', () => {
    const world = benchWith(onSite(0, null));
    doing(world, ...CHARGE, low, { op: 'wait', seconds: OPEN_PEN_TIME }, { op: 'reset', what: 'unit' });
    doing(world, { op: 'wait', seconds: 10 });
    expect(world.plant).toMatchObject({ contactor: 'open', earthPole: 'open' });
    const [reset, waited] = doing(world, { op: 'reset', what: 'supply' }, { op: 'wait', seconds: 20 });
    const closed = [reset, waited].flatMap((outcome) => outcome?.events ?? []);
    expect(closed.filter(({ what }) => what === 'contactor closed')).toEqual([]);
    expect(world.plant).toMatchObject({ contactor: 'open', earthPole: 'open' });
  });

  test('cleared by state A where the sheet says so', () => {
    const world = benchWith({
      ...onSite(0, null),
      sheet: {
        openPen: 'voltage-window',
        clearsBy: {
          E: 'reset',
          F: 'reset',
          diode: 'reset',
          residual: 'reset',
          direct: 'reset',
          openPen: 'state-A',
        },
      },
    });
    doing(world, ...CHARGE, low, { op: 'wait', seconds: OPEN_PEN_TIME }, sound, { op: 'wait', seconds: 5 });
    expect(world.indicator).toBe('fault');
    doing(world, { op: 'vehicle', state: 'A', plugged: false }, { op: 'wait', seconds: 1 });
    expect(world.indicator).toBe('ready');
  });
});
