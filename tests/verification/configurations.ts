/*
 * Sites and sheets at random from a seed, each possible and each of a sound unit: what the verification is run over.
 * A poor site may come out, a contradictory one may not.
 */
import fc from 'fast-check';
import { BREAKER_TYPES } from '../../src/laws/overcurrent.ts';
import { CABLE_CODINGS } from '../../src/laws/proximity.ts';
import type { Site } from '../../src/site/site.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { DIODE_CHECKS, OPEN_PEN_KINDS, OUTLETS } from '../../src/unit/design.ts';

export interface Configuration {
  readonly site: Site;
  readonly sheet: UnitSheet;
  readonly seed: number;
}

const pick = <const T>(...values: readonly T[]) => fc.constantFrom(...values);
const ohms = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const sites = fc
  .record({
    phases: pick(1, 3),
    earthing: pick('TN-S', 'TN-C-S', 'TN-S', 'TN-C-S', 'TT'),
    electrode: ohms(5, 160),
    voltage: fc.double({ min: 217, max: 252.5, noNaN: true }),
    loopImpedance: ohms(0.05, 0.8),
    neutralShare: ohms(0.55, 1.1),
    length: fc.double({ min: 1, max: 60, noNaN: true }),
    lineArea: pick(4, 6, 10),
    protectiveArea: pick(2.5, 4, 6, 10),
    type: pick(...BREAKER_TYPES),
    rating: pick(20, 32, 40, 63),
    neutralPole: fc.boolean(),
    upstream: fc.option(
      fc.record({
        type: pick('A', 'F', 'B'),
        rated: pick(0.03, 0.1, 0.3),
        delay: pick('general', 'S'),
      }),
    ),
    load: fc.integer({ min: 0, max: 4000 }),
    parallelEarth: fc.option(ohms(1, 100), { freq: 8 }),
  })
  .map(
    (c): Site => ({
      phases: c.phases,
      earthing: c.earthing,
      voltage: c.voltage,
      loopImpedance: c.loopImpedance,
      neutralImpedance: c.loopImpedance * c.neutralShare,
      electrodeResistance: c.earthing === 'TT' ? c.electrode : null,
      sourceElectrodeResistance: 0.5,
      metEarthResistance: null,
      circuit: {
        length: c.length,
        lineArea: c.lineArea,
        protectiveArea: Math.min(c.protectiveArea, c.lineArea),
        breaker: {
          type: c.type,
          rating: c.rating,
          breakingCapacity: 6000,
          poles: c.neutralPole ? c.phases + 1 : c.phases,
        },
        residualDevice:
          c.upstream === null
            ? null
            : {
                ...c.upstream,
                // Time-delayed devices of 30 mA are not made.
                delay: c.upstream.rated === 0.03 ? 'general' : c.upstream.delay,
                poles: c.phases + 1,
              },
        parallelEarth: c.parallelEarth,
      },
      otherLoads: c.load === 0 ? [] : [{ line: 'L1', power: c.load }],
      neighbours: [],
    }),
  );

const clearing = pick('state-A', 'reset', 'supply', 'self');
const afterTrip = pick('reset', 'supply');

const sheets = fc
  .record({
    outlet: pick(...OUTLETS),
    ratedCurrent: pick(16, 20, 32, 63),
    setShare: fc.double({ min: 0.4, max: 1, noNaN: true }),
    cableLength: fc.double({ min: 1, max: 15, noNaN: true }),
    area: pick(2.5, 4, 6, 10),
    coding: pick(...CABLE_CODINGS),
    residual: pick(
      { type: 'A', rated: 0.03, by: 'contactor', direct: 'protective' },
      { type: 'A', rated: 0.03, by: 'contactor', direct: 'monitoring' },
      { type: 'A', rated: 0.03, by: 'breaker', direct: 'protective' },
      { type: 'F', rated: 0.03, by: 'breaker', direct: 'monitoring' },
      { type: 'B', rated: 0.03, by: 'breaker', direct: null },
      { type: null, rated: null, by: null, direct: 'monitoring' },
    ),
    surgeArrester: fc.boolean(),
    ventilation: fc.boolean(),
    insulationTestVoltageMax: pick(50, 100, 250, 500),
    startUp: fc.double({ min: 0.5, max: 40, noNaN: true }),
    startDelay: pick(0, 0, 60, 600, 1800),
    permission: pick('open', 'open', 'authorise'),
    loadLimit: fc.option(fc.double({ min: 6, max: 40, noNaN: true }), { freq: 3 }),
    holdInB: fc.boolean(),
    openPen: pick(...OPEN_PEN_KINDS),
    diodeCheck: pick(...DIODE_CHECKS),
    poleBleed: fc.option(ohms(200_000, 10e6), { freq: 3 }),
    clearsBy: fc.record({
      E: clearing,
      F: clearing,
      diode: clearing,
      residual: afterTrip,
      direct: afterTrip,
      openPen: clearing,
    }),
  })
  .map(
    ({ setShare, cableLength, area, coding, ...c }): UnitSheet => ({
      ...c,
      schedule: null,
      setCurrent: Math.max(6, c.ratedCurrent * setShare),
      cable: { length: cableLength, area, coding },
    }),
  );

/**
 * Whoever leaves the a.c. device out of the unit puts one of 30 mA upstream (BS 7671 722.531.3.101), and TT has one at
 * the origin in any case (BS 7671 411.5.2).
 */
function withDevice(site: Site, sheet: UnitSheet): Site {
  const poles = site.phases + 1;
  const upstream = (residualDevice: Site['circuit']['residualDevice']): Site => ({
    ...site,
    circuit: { ...site.circuit, residualDevice },
  });
  if (sheet.residual.type === null) return upstream({ type: 'A', rated: 0.03, delay: 'general', poles });
  if (site.earthing === 'TT' && site.circuit.residualDevice === null)
    return upstream({ type: 'A', rated: 0.3, delay: 'S', poles });
  return site;
}

const configurations: fc.Arbitrary<Configuration> = fc
  .record({ site: sites, sheet: sheets, seed: fc.integer({ min: 0, max: 2_000_000 }) })
  .map(({ site, sheet, seed }) => ({
    site: withDevice(site, sheet),
    // A voltage window cannot see an open PEN on three phases.
    sheet: site.phases === 3 && sheet.openPen === 'voltage-window' ? { ...sheet, openPen: 'other' } : sheet,
    seed,
  }));

export const sampleConfigurations = (count: number, seed: number): readonly Configuration[] =>
  fc.sample(configurations, { seed, numRuns: count });
