/** The site as parts, and the sums that its papers give: against pencil figures. */
import { describe, expect, test } from 'vitest';
import {
  expectedCable,
  expectedCircuitLine,
  expectedCircuitProtective,
  leastCircuitProtective,
} from '../../src/site/expected.ts';
import { pairsOf } from '../../src/site/part.ts';
import { linesOf, livesOf, loadResistance, siteParts, siteSources } from '../../src/site/site.ts';
import { SITE, siteOf, THREE_PHASE } from '../bench/build.ts';

const ohmsOf = (site: ReturnType<typeof siteOf>, id: string): number =>
  siteParts(site).find((part) => part.id === id)?.resistance ?? Number.NaN;

describe('sums from length and area', () => {
  // Maxima at 20 °C: class 2 1.83 (10 mm²), 3.08 (6 mm²), 7.41 (2.5 mm²), class 5 3.30 mΩ/m (6 mm²).
  test.each([
    ['18 m of 6 mm², protective', expectedCircuitProtective(SITE), 0.05544],
    [
      '24 m of 2.5 mm², protective',
      expectedCircuitProtective(siteOf({ circuit: { length: 24, protectiveArea: 2.5 } })),
      0.17784,
    ],
    ['32 m of 10 mm², line', expectedCircuitLine(siteOf({ circuit: { length: 32, lineArea: 10 } })), 0.05856],
    ['tether, 5 m of 6 mm²', expectedCable({ length: 5, area: 6 }), 0.0165],
  ])('%s (IEC 60228 Tables 2 and 3)', (_, sum, ohms) => {
    expect(sum).toBeCloseTo(ohms, 9);
  });

  test('steelwork in parallel: 0.0554 Ω beside 0.0554 Ω is half of it', () => {
    expect(leastCircuitProtective(SITE)).toBe(expectedCircuitProtective(SITE));
    expect(leastCircuitProtective(siteOf({ circuit: { parallelEarth: 0.05544 } }))).toBeCloseTo(0.02772, 9);
  });

  test('a load of 1500 W at 230 V is 35.3 Ω', () => {
    expect(loadResistance(1500)).toBeCloseTo(35.267, 3);
  });
});

describe('the supply', () => {
  test('three phases are equal and add up to nothing', () => {
    const emfs = siteSources(siteOf(THREE_PHASE)).map(({ mains }) => mains);
    expect(emfs).toHaveLength(3);
    for (const { re, im } of emfs) expect(Math.hypot(re, im)).toBeCloseTo(236, 9);
    expect(emfs.reduce((sum, { re }) => sum + re, 0)).toBeCloseTo(0, 9);
    expect(emfs.reduce((sum, { im }) => sum + im, 0)).toBeCloseTo(0, 9);
    // L2 lags L1 by a third of a turn.
    expect((emfs[1]?.im ?? 0) < 0).toBe(true);
  });

  test('half of the loop is in the line, half in the return', () => {
    const site = siteOf({ earthing: 'TN-S', neutralImpedance: 0.3 });
    expect(ohmsOf(site, 'source.L1')).toBeCloseTo(0.11, 9);
    expect(ohmsOf(site, 'source.PE')).toBeCloseTo(0.11, 9);
    expect(ohmsOf(site, 'source.N')).toBeCloseTo(0.19, 9);
  });

  test('TN-C-S has one PEN, that carries both; TT has an electrode', () => {
    const ids = (site: ReturnType<typeof siteOf>) => siteParts(site).map(({ id }) => id);
    expect(ids(SITE)).toContain('pen');
    expect(ids(SITE)).not.toContain('source.N');
    const tt = siteOf({ earthing: 'TT', electrodeResistance: 80 });
    expect(ids(tt)).toContain('electrode');
    expect(ids(tt)).not.toContain('source.PE');
    expect(ohmsOf(tt, 'electrode')).toBe(80);
  });
});

describe('the parts', () => {
  test.each([
    ['TN-S, one phase', siteOf({ earthing: 'TN-S' })],
    ['TN-C-S, one phase', SITE],
    ['TT, three phases', siteOf({ ...THREE_PHASE, earthing: 'TT', electrodeResistance: 80 })],
  ])('%s: named once each, between two nodes, and at least 0.1 mΩ', (_, site) => {
    const parts = siteParts(site);
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
    for (const { id, a, b, resistance } of parts) {
      expect(a, id).not.toBe(b);
      expect(resistance, id).toBeGreaterThanOrEqual(1e-4);
    }
  });

  test('every pair of circuit conductors has insulation of its own', () => {
    const names = siteParts(siteOf(THREE_PHASE)).map(({ id }) => id);
    for (const [x, y] of pairsOf(['L1', 'L2', 'L3', 'N', 'PE']))
      expect(names).toContain(`insulation.circuit.${x}-${y}`);
  });

  test('lines and lives', () => {
    expect(linesOf(SITE)).toEqual(['L1']);
    expect(livesOf(siteOf(THREE_PHASE))).toEqual(['L1', 'L2', 'L3', 'N']);
  });
});
