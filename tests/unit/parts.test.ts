/** The charge point as a circuit: what interrupts which conductor, and the figures that a verifier can check. */
import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/site/part.ts';
import { OPEN } from '../../src/site/part.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { PROXIMITY_SOURCE, unitOneWays, unitParts } from '../../src/unit/parts.ts';
import { designOf, SHEET } from '../bench/build.ts';

const partsOf = (sheet: Partial<UnitSheet> = {}, phases: 1 | 3 = 1): readonly Part[] =>
  unitParts(designOf(sheet), phases);

function part(id: string, sheet: Partial<UnitSheet> = {}, phases: 1 | 3 = 1): Part {
  const found = partsOf(sheet, phases).filter((one) => one.id === id);
  expect(found, id).toHaveLength(1);
  return found[0] as Part;
}
const has = (id: string, sheet: Partial<UnitSheet> = {}): boolean =>
  partsOf(sheet).some((one) => one.id === id);

/** The contacts on the only way through parts named so. */
const contactsOn = (ids: readonly string[], sheet: Partial<UnitSheet>, phases: 1 | 3) =>
  ids.map((id) => part(id, sheet, phases).contact ?? 'none');

const LIVES = { 1: ['L1', 'N'], 3: ['L1', 'L2', 'L3', 'N'] } as const;

describe.each([1, 3] as const)('on %d phase(s)', (phases) => {
  test.each(LIVES[phases])('%s goes through the unit’s own breaker and a pole of its contactor', (x) => {
    expect(part(`unit.${x}`, {}, phases)).toMatchObject({
      a: `supply.${x}`,
      b: `inner.${x}`,
      contact: `unit.${x}`,
    });
    expect(part(`contactor.${x}`, {}, phases)).toMatchObject({
      a: `inner.${x}`,
      b: `socket.${x}`,
      contact: `contactor.${x}`,
      openResistance: OPEN,
    });
    expect(part(`cable.${x}`, {}, phases)).toMatchObject({ a: `socket.${x}`, b: `end.${x}` });
  });

  test('and no other conductor has a pole', () => {
    const poles = partsOf({}, phases).filter(({ id }) => /^(unit|contactor)\./.test(id));
    expect(poles.map(({ id }) => id).sort()).toEqual(
      [...LIVES[phases].flatMap((x) => [`unit.${x}`, `contactor.${x}`]), 'unit.PE'].sort(),
    );
  });

  // PE is not switched (IEC 61851-1:2017 8.4), save by an open-PEN measure (BS 7671:2018+A2:2022 722.411.4.1).
  test('PE has no contact but that of the open-PEN measure', () => {
    expect(contactsOn(['unit.PE', 'outlet.PE', 'case', 'cable.PE'], {}, phases)).toEqual([
      'open-pen',
      'none',
      'none',
      'none',
    ]);
    expect(part('outlet.PE', {}, phases)).toMatchObject({ a: 'bar', b: 'socket.PE' });
    expect(part('case', {}, phases)).toMatchObject({ a: 'bar', b: 'case' });
    expect(part('cable.PE', {}, phases)).toMatchObject({ a: 'socket.PE', b: 'end.PE' });
  });

  test('every two conductors are insulated from each other, at the outlet and at the far end', () => {
    const conductors = LIVES[phases].length + 3;
    for (const [place, node] of [
      ['outlet', 'socket'],
      ['cable', 'end'],
    ]) {
      const found = partsOf({}, phases).filter(({ id }) => id.startsWith(`insulation.${place}.`));
      expect(found).toHaveLength((conductors * (conductors - 1)) / 2);
      const ends = new Set(found.flatMap(({ a, b }) => [a, b]));
      expect([...ends].sort()).toEqual(
        [...LIVES[phases], 'PE', 'CP', 'PP'].map((x) => `${node}.${x}`).sort(),
      );
      for (const one of found) {
        // 1 MΩ at least (BS 7671 Table 64), by far.
        expect(one.resistance).toBeGreaterThan(100e6);
      }
    }
  });
});

describe('leads and contacts', () => {
  // 5 m of 6 mm² class 5, 3.30 mΩ/m (IEC 60228): 16.5 mΩ, and 2 mΩ of contact.
  test('a tether’s power cores', () => {
    for (const x of ['L1', 'N', 'PE']) expect(part(`cable.${x}`).resistance).toBeCloseTo(0.0185, 6);
  });

  // 0.5 mm² class 5, 39 mΩ/m (IEC 60228): 195 mΩ, and 2 mΩ.
  test('its pilot core', () => {
    expect(part('cable.CP')).toMatchObject({ a: 'socket.CP', b: 'end.CP' });
    expect(part('cable.CP').resistance).toBeCloseTo(0.197, 6);
  });

  // What unit and contacts may add to R1 + R2 is 0.05 Ω (common practice, no source).
  test('the way through the unit adds little', () => {
    const line = ['unit.L1', 'contactor.L1'].reduce((sum, id) => sum + part(id).resistance, 0);
    const protective = ['unit.PE', 'outlet.PE'].reduce((sum, id) => sum + part(id).resistance, 0);
    expect(line + protective).toBeLessThan(0.05);
  });

  test('a customer’s cable is there as long as its plug is in, a tether always', () => {
    const cores = ['cable.L1', 'cable.N', 'cable.PE', 'cable.CP'];
    expect(contactsOn(cores, { outlet: 'socket' }, 1)).toEqual(['cable', 'cable', 'cable', 'cable']);
    expect(contactsOn(cores, {}, 1)).toEqual(['none', 'none', 'none', 'none']);
  });

  test('a bleed across an open pole is the sheet’s', () => {
    for (const x of ['L1', 'N'])
      expect(part(`contactor.${x}`, { poleBleed: 470_000 }).openResistance).toBe(470_000);
  });
});

describe('pilot and proximity', () => {
  // 1 kΩ (IEC 61851-1:2017 Table A.2), referred to PE.
  test('the pilot’s source', () => {
    expect(part('pilot.source')).toMatchObject({ a: 'bar', b: 'pilot', resistance: 1000 });
    expect(part('pilot.conductor')).toMatchObject({ a: 'pilot', b: 'socket.CP' });
  });

  // Table B.2: 1500, 680, 220 and 100 Ω.
  test.each([
    [13, 1500],
    [20, 680],
    [32, 220],
    [63, 100],
  ] as const)('a cable of %d A is coded %d Ω at each plug', (coding, ohms) => {
    const sheet = { outlet: 'socket', cable: { ...SHEET.cable, coding } } as const;
    expect(part('coding.plug', sheet)).toMatchObject({
      a: 'socket.PP',
      b: 'socket.PE',
      resistance: ohms,
      contact: 'coding',
    });
    expect(part('coding.end', sheet)).toMatchObject({ a: 'end.PP', b: 'end.PE', resistance: ohms });
  });

  test('only a socket-outlet reads one; the contact does not run through the cable', () => {
    expect(part('proximity.source', { outlet: 'socket' })).toMatchObject({
      a: 'bar',
      b: 'socket.PP',
      resistance: PROXIMITY_SOURCE.resistance,
    });
    expect([has('proximity.source'), has('coding.plug'), has('coding.end')]).toEqual([false, false, true]);
    for (const outlet of ['socket', 'tethered'] as const) expect(has('cable.PP', { outlet })).toBe(false);
  });
});

describe('what flows with nothing plugged in', () => {
  // 2π · 50 Hz · 4.7 nF = 1.4765 µS: 0.34 mA at 230 V, three lines at most 1.02 mA; 3.5 mA are allowed (IEC 61851-1:2017 12.6).
  test('the filter’s leakage, from behind the unit’s breaker to its PE bar', () => {
    for (const x of ['L1', 'L2', 'L3', 'N']) {
      const filter = part(`filter.${x}`, {}, 3);
      expect(filter).toMatchObject({ a: `inner.${x}`, b: 'bar' });
      const amps = 230 * Math.hypot(filter.susceptance ?? 0, 1 / filter.resistance);
      expect(amps).toBeCloseTo(0.00034, 5);
    }
  });

  test('the electronics, on L1 alone', () => {
    const { a, b, resistance } = part('electronics', {}, 3);
    expect([a, b]).toEqual(['inner.L1', 'inner.N']);
    expect(230 ** 2 / resistance).toBeCloseTo(5.3, 1);
  });
});

describe('the test button', () => {
  // From behind the sensor to before it, 2 to 3 times the rating (common practice, no source).
  test.each([
    { rated: 0.03, amps: 0.075 },
    { rated: 0.1, amps: 0.25 },
  ])('draws $amps A past a sensor of $rated A', ({ rated, amps }) => {
    const button = part('test-button', { residual: { ...SHEET.residual, rated } });
    expect(button).toMatchObject({ a: 'inner.L1', b: 'supply.N', contact: 'test-button' });
    expect(230 / button.resistance).toBeCloseTo(amps, 9);
  });

  test('is there only where the unit has a device of its own', () => {
    expect(
      has('test-button', { residual: { type: null, rated: null, by: null, direct: 'monitoring' } }),
    ).toBe(false);
  });
});

describe('an electrode of the measure’s own', () => {
  test.each([
    ['none', false],
    ['voltage-window', false],
    ['earth-sensing', true],
    ['other', true],
  ] as const)('%s: %s (BS 7671:2018+A2:2022 722.411.4.1)', (openPen, own) => {
    expect(has('sensing.electrode', { openPen })).toBe(own);
  });

  test('stands in true earth, apart from PE', () => {
    expect(part('sensing.electrode', { openPen: 'earth-sensing' })).toMatchObject({
      a: 'earth',
      b: 'sensing',
    });
  });
});

describe('the arrester', () => {
  test('none where the sheet has none', () => {
    expect(unitOneWays(designOf(), 3)).toEqual([]);
  });

  // Above the peak of 253 V, 358 V, so that the mains never opens it; below the 500 V of an insulation test.
  test.each([1, 3] as const)('on %d phase(s), from each live conductor to PE and back', (phases) => {
    const oneWays = unitOneWays(designOf({ surgeArrester: true }), phases);
    const ends = oneWays.map(({ a, b }) => `${a} ${b}`);
    const lives = LIVES[phases];
    expect(ends.sort()).toEqual(lives.flatMap((x) => [`supply.${x} bar`, `bar supply.${x}`]).sort());
    expect(new Set(oneWays.map(({ id }) => id)).size).toBe(2 * lives.length);
    for (const { drop } of oneWays) {
      expect(drop).toBeGreaterThan(253 * Math.SQRT2);
      expect(drop).toBeLessThan(500);
    }
  });
});
