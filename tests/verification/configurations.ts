/*
 * Sites and sheets at random from a seed, each possible and each of a sound unit: what the verification is run over.
 * A poor site may come out, a contradictory one may not.
 */
import fc from 'fast-check';
import { BREAKER_TYPES } from '../../src/laws/overcurrent.ts';
import { CABLE_CODINGS } from '../../src/laws/proximity.ts';
import { greatestDrop } from '../../src/laws/voltageDrop.ts';
import { adiabaticOf, carriedBy, dropOf } from '../../src/site/design.ts';
import type { Earthing, Site } from '../../src/site/site.ts';
import { EARTHINGS } from '../../src/site/site.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import {
  DIODE_CHECKS,
  HOURS_ENDS,
  LOST_LINES,
  OPEN_PEN_KINDS,
  OUTLETS,
  UNPOWERED_POLES,
} from '../../src/unit/design.ts';

export interface Configuration {
  readonly site: Site;
  readonly sheet: UnitSheet;
  readonly seed: number;
}

const pick = <const T>(...values: readonly T[]) => fc.constantFrom(...values);
const ohms = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** The source's voltage that leaves so much at the unit with this load on L1, no more than a supply may have, V. */
const sourceVoltage = (atTheUnit: number, loop: number, power: number): number =>
  Math.min(253, atTheUnit * (1 + (1.1 * loop * power) / (230 * 230)));

const sites = fc
  .record({
    phases: pick(1, 3),
    earthing: pick(...EARTHINGS),
    atTheUnit: fc.double({ min: 216.2, max: 253, noNaN: true }),
    // Below 200 Ω as it is shown, not only as it is.
    electrode: ohms(2, 185),
    metEarth: fc.option(ohms(5, 100)),
    loopImpedance: ohms(0.05, 0.8),
    neutralShare: ohms(0.55, 1.1),
    length: fc.double({ min: 1, max: 60, noNaN: true }),
    lineArea: pick(4, 6, 10),
    method: pick('A', 'B', 'C', 'D'),
    byResidual: fc.boolean(),
    hasService: fc.boolean(),
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
      // 376 V between lines are 217.1 V to neutral: a little more than the least to neutral.
      voltage: sourceVoltage(
        c.phases === 3 ? Math.max(217.2, c.atTheUnit) : c.atTheUnit,
        c.loopImpedance,
        c.load,
      ),
      // On TT it follows from the electrodes.
      loopImpedance: c.loopImpedance,
      neutralImpedance: c.loopImpedance * c.neutralShare,
      electrodeResistance: c.earthing === 'TT' ? c.electrode : null,
      sourceElectrodeResistance: 0.5,
      metEarthResistance: c.metEarth,
      circuit: {
        length: c.length,
        lineArea: c.lineArea,
        protectiveArea: Math.min(c.protectiveArea, c.lineArea),
        method: c.method,
        ambient: 30,
        grouped: 1,
        insulated: 0,
        conditionalRating: null,
        points: 1,
        faultProtection:
          c.byResidual && c.upstream !== null && c.earthing !== 'TT' ? 'residual' : 'overcurrent',
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
        // A borrowed earth beside an electrode would be the main path: no such site is sound.
        parallelEarth: c.earthing === 'TT' ? null : c.parallelEarth,
      },
      service: c.hasService ? { rating: 100, demand: 30 } : null,
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
    authoriseBefore: fc.boolean(),
    schedule: pick(null, null, 'default-hours'),
    hoursEnd: pick(...HOURS_ENDS),
    overCode: fc.record({
      margin: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
      seconds: fc.double({ min: 0.1, max: 60, noNaN: true }),
    }),
    loadLimit: fc.option(fc.double({ min: 6, max: 40, noNaN: true }), { freq: 3 }),
    holdInB: fc.boolean(),
    openPen: pick(...OPEN_PEN_KINDS),
    openPenRidesOut: fc.boolean(),
    openPenUnpowered: pick(...UNPOWERED_POLES),
    diodeCheck: pick(...DIODE_CHECKS),
    poleBleed: fc.option(ohms(200_000, 10e6), { freq: 3 }),
    lostLine: pick(...LOST_LINES),
    hasSensor: fc.boolean(),
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
    ({ setShare, cableLength, area, coding, hasSensor, ...c }): UnitSheet => ({
      ...c,
      // What the service may carry is decided where the service is known.
      serviceLimit: hasSensor ? 0 : null,
      leastVoltage: null,
      setCurrent: Math.max(6, c.ratedCurrent * setShare),
      cable: { length: cableLength, area, coding },
    }),
  );

/**
 * Whoever leaves the a.c. device out of the unit puts one of 30 mA upstream (BS 7671 722.531.3.101); on TT there is one
 * at the origin in any case, and RA × IΔn stays within 50 V (411.5.3).
 */
const withDevice = (site: Site, sheet: UnitSheet): Site => {
  const { residualDevice } = site.circuit;
  const thirty = { type: 'A', rated: 0.03, delay: 'general', poles: site.phases + 1 } as const;
  const needed =
    sheet.residual.type === null
      ? thirty
      : site.earthing === 'TT'
        ? residualDevice !== null && residualDevice.rated * (site.electrodeResistance ?? 0) <= 48
          ? residualDevice
          : thirty
        : residualDevice;
  // Only a type B bears the d.c. of two points, each of which has its own device (531.3.3).
  const points = needed?.type === 'B' && sheet.residual.type !== null ? 2 : 1;
  return { ...site, circuit: { ...site.circuit, residualDevice: needed, points } };
};

const RATINGS = [20, 32, 40, 63] as const;

/** A circuit that is rated for what the unit is set to (BS 7671 433.1.1). */
const withRating = (site: Site, { setCurrent }: UnitSheet): Site => {
  const { breaker } = site.circuit;
  const least = RATINGS.find((rating) => rating >= setCurrent) ?? 63;
  return {
    ...site,
    circuit: { ...site.circuit, breaker: { ...breaker, rating: Math.max(breaker.rating, least) } },
  };
};

const AREAS = [4, 6, 10, 16, 25, 35] as const;

/**
 * Conductors that carry the breaker's rating as they are laid, lose no more than 5 % and stand a fault (BS 7671 433.1.1,
 * 525, 543.1): the least that do, from the area that was drawn upward; and a breaker that breaks what may flow (434.5.1).
 */
const withConductors = (site: Site, { setCurrent }: UnitSheet): Site => {
  const sized = (lineArea: number, protectiveArea: number): Site => ({
    ...site,
    circuit: { ...site.circuit, lineArea, protectiveArea, breaker },
  });
  const flows = ((site.phases === 3 ? 2 : 1) * 230) / Math.min(site.neutralImpedance, site.loopImpedance);
  const breakingCapacity = [6000, 10_000, 15_000].find((capacity) => capacity >= flows) ?? 25_000;
  const breaker = { ...site.circuit.breaker, breakingCapacity };
  const { lineArea, protectiveArea } = site.circuit;
  const line = AREAS.find((area) => {
    const one = sized(area, protectiveArea);
    return (
      area >= lineArea &&
      carriedBy(one).amps >= breaker.rating &&
      dropOf(one, setCurrent) <= greatestDrop(site.phases)
    );
  });
  const enough = [protectiveArea, ...AREAS.filter((area) => area > protectiveArea)].find((area) => {
    const { needed, withoutSum } = adiabaticOf(sized(line ?? 35, area));
    return area >= Math.min(needed, withoutSum);
  });
  return sized(line ?? 35, enough ?? 35);
};

/**
 * Inside 216.2 to 253 V at the origin (ESQCR 2002 reg. 27) on every line: what loads one line lowers it, and on three
 * phases lifts the others by up to half of that.
 */
const withinLimits = (site: Site): Site => {
  const { otherLoads, loopImpedance, neutralImpedance, earthing, phases } = site;
  const loop = earthing === 'TN-C-S' ? loopImpedance : Math.max(loopImpedance / 2, neutralImpedance);
  const drop = otherLoads.reduce((sum, { power }) => sum + (1.1 * power) / 230, 0) * loop;
  const greatest = phases === 3 ? 253 - drop / 2 : 253;
  return { ...site, voltage: Math.min(greatest, Math.max(216.2 + drop, site.voltage)) };
};

/** A maker codes a tether for what the unit may offer (IEC 61851-1:2017 Annex B). */
const ownCable = ({ outlet, setCurrent, cable }: UnitSheet): UnitSheet['cable'] =>
  outlet === 'tethered' && cable.coding < setCurrent
    ? { ...cable, coding: CABLE_CODINGS.find((coding) => coding >= setCurrent) ?? 63 }
    : cable;

/** On a PME earth there is a measure, and a voltage window cannot see an open PEN on three phases (722.411.4.1). */
const openPenFor = ({ earthing, phases }: Site, { openPen }: UnitSheet): UnitSheet['openPen'] =>
  (phases === 3 && openPen === 'voltage-window') || (earthing === 'TN-C-S' && openPen === 'none')
    ? 'other'
    : openPen;

/**
 * A sensor on the service where the service is strong enough: the load that takes all of its limit lowers the voltage
 * by 8 V at most, so that neither the unit nor its open-PEN measure minds.
 */
function serviceLimitFor(
  { otherLoads, loopImpedance, neutralImpedance }: Site,
  { serviceLimit, setCurrent }: UnitSheet,
): UnitSheet['serviceLimit'] {
  const others = otherLoads.reduce((sum, { power }) => sum + power / 230, 0);
  const limit = Math.max(10, Math.ceil(1.1 * others + setCurrent + 2));
  const drop = (1.1 * limit * Math.max(loopImpedance, neutralImpedance)) / 0.9;
  return serviceLimit !== null && drop <= 8 ? limit : null;
}

const configurations: fc.Arbitrary<Configuration> = fc
  .record({ site: sites, sheet: sheets, seed: fc.integer({ min: 0, max: 2_000_000 }) })
  .map(({ site, sheet, seed }) => ({
    site: withinLimits(withConductors(withRating(withDevice(site, sheet), sheet), sheet)),
    sheet: {
      ...sheet,
      cable: ownCable(sheet),
      openPen: openPenFor(site, sheet),
      serviceLimit: serviceLimitFor(site, sheet),
      lostLine: site.phases === 1 ? 'stops' : sheet.lostLine,
    },
    seed,
  }));

/** A circuit on an electrode of its own, at a house on PME that bonds and pipes may earth too. */
const atPmeHouse = ({ site, ...rest }: Configuration): Configuration => ({
  ...rest,
  site: { ...site, house: { metEarthResistance: site.metEarthResistance }, metEarthResistance: null },
});

/** The most that all on the service may lower its voltage by, V: neither unit nor open-PEN measure minds. */
const DROP = 8;

/**
 * A second charging point on the service, idle or in use, and a unit that gives way to it: a service strong enough for
 * house and next point with the least offer beside them, and for a load of all that it is kept to.
 */
function besideAnother(
  { site, sheet, ...rest }: Configuration,
  next: { readonly rated: number; readonly isInUse: boolean; readonly share: number },
): Configuration {
  const house = site.otherLoads.reduce((sum, { power }) => sum + power / 230, 0);
  // A PEN conductor that breaks moves the neutral, and a resistance then draws by half more: the unit may well give way.
  const drawn = 1.1 * house + (next.isInUse ? 1.6 : 1.1) * next.rated;
  const limit = Math.ceil(drawn + 8 + next.share * sheet.setCurrent);
  const loop = (0.9 * DROP) / (1.1 * limit);
  const most = Math.min(loop, site.loopImpedance);
  const draws = next.isInUse ? next.rated : 0;
  const demand = Math.max(30, Math.ceil(house));
  const shared: Site = {
    ...site,
    loopImpedance: site.earthing === 'TT' ? site.loopImpedance : most,
    neutralImpedance: Math.min(loop, site.neutralImpedance, 1.1 * most),
    // All on one line of three lifts the others by half of what it loses.
    voltage: Math.min(253 - DROP, Math.max(217.2 + DROP, site.voltage)),
    service: { rating: Math.max(limit, demand + next.rated), demand },
    nextPoint: { ratedCurrent: next.rated, draws },
  };
  return {
    ...rest,
    site: withConductors(shared, sheet),
    sheet: { ...sheet, serviceLimit: limit },
  };
}

/** Kinds of site by how the circuit is earthed, TT at a house that is not, and one service for two points. */
export type Kind = Earthing | 'island' | 'pair';

function ofKind(kind: Kind): fc.Arbitrary<Configuration> {
  if (kind === 'island') return ofKind('TT').map(atPmeHouse);
  if (kind !== 'pair') return configurations.filter(({ site }) => site.earthing === kind);
  const next = fc.record({
    rated: pick(10, 16, 32),
    isInUse: fc.boolean(),
    share: fc.double({ min: 0, max: 0.9, noNaN: true }),
  });
  return fc.tuple(configurations, next).map(([configuration, one]) => besideAnother(configuration, one));
}

/** So many of one kind of site, or of every earthing. */
export const sampleConfigurations = (count: number, seed: number, kind?: Kind): readonly Configuration[] =>
  fc.sample(kind === undefined ? configurations : ofKind(kind), { seed, numRuns: count });
