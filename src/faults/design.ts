/**
 * Wrong designs: built as the papers say, and the papers are wrong. The correct twin has a right design in their place.
 * What each makes of a site is chosen by the laws that a right one is reckoned with; to alter a design is the
 * designer's business, so that none can be put right at the bench.
 */
import { CONDUCTOR_AREAS } from '../laws/conductor.ts';
import { isTabled } from '../laws/currentCarrying.ts';
import { greatestDemand } from '../laws/demand.ts';
import { BREAKER_RATINGS as RATINGS } from '../laws/overcurrent.ts';
import type { Amps } from '../laws/quantities.ts';
import { greatestDrop } from '../laws/voltageDrop.ts';
import { adiabaticOf, carriedBy, dropOf, laidAs } from '../site/design.ts';
import type { Circuit, Service, Site } from '../site/site.ts';
import { siteParts } from '../site/site.ts';
import type { UnitSheet } from '../unit/design.ts';
import type { Fault, Setting, Values } from './fault.ts';
import { LOCK_OFF, sensorOnly, TELL_DISTRIBUTOR, TELL_INSTALLER } from './fault.ts';
import type { Impossible } from './impossible.ts';
import type { Parts } from './parts.ts';

const FALLING = [...CONDUCTOR_AREAS].reverse();
/** The fuse of most houses' services, A. Common practice, no source. */
const USUAL_SERVICE: Amps = 60;

/** What a wrong design makes of the papers. */
interface Wrong {
  readonly circuit?: Partial<Pick<Circuit, 'lineArea' | 'protectiveArea' | 'insulated'>>;
  readonly rating?: Amps;
  readonly service?: Service;
  /** What the unit keeps the service to. */
  readonly serviceLimit?: Amps;
}

function altered(site: Site, { circuit, rating, service }: Wrong): Site {
  const { breaker } = site.circuit;
  return {
    ...site,
    service: service ?? site.service,
    circuit: { ...site.circuit, ...circuit, breaker: { ...breaker, rating: rating ?? breaker.rating } },
  };
}

/** The same installation built to other papers; each part keeps what else is wrong with it. */
function built(parts: Parts, site: Site): Parts {
  const resistances = (of: Site) => new Map(siteParts(of).map(({ id, resistance }) => [id, resistance]));
  const [was, is] = [resistances(parts.site), resistances(site)];
  return {
    ...parts,
    site,
    parts: parts.parts.map((part) => {
      const [before, after] = [was.get(part.id), is.get(part.id)];
      // A load that is not there has no resistance to speak of, on either.
      return before === undefined || after === undefined || before === after
        ? part
        : { ...part, resistance: part.resistance + after - before };
    }),
  };
}

/** An entry from what it makes of a site; null where a site cannot be wrong in this way, with the reason. */
const wrongly = (
  wrong: (on: Setting, values: Values) => Wrong | null,
  why: Impossible,
): Pick<Fault, 'impossible' | 'alter' | 'change'> => ({
  impossible: (on, values) => (wrong(on, values) === null ? why : null),
  alter: ({ site, sheet }, values) => {
    const made = wrong({ site, sheet }, values) ?? {};
    return { site: altered(site, made), sheet: set(sheet, made) };
  },
  change: (parts, values) => {
    const { site, design } = parts;
    const made = wrong({ site, sheet: design.sheet }, values) ?? {};
    return { ...built(parts, altered(site, made)), design: { ...design, sheet: set(design.sheet, made) } };
  },
});

const set = (sheet: UnitSheet, { serviceLimit }: Wrong): UnitSheet =>
  serviceLimit === undefined ? sheet : { ...sheet, serviceLimit };

/** The unit keeps the service to more than it is rated for, where all together may ask as much. */
const limitAboveRating = wrongly(({ site, sheet }, { over = 0 }) => {
  const next = site.nextPoint?.ratedCurrent ?? 0;
  const point = Math.min(setTo({ site, sheet }), sheet.loadLimit ?? Infinity);
  const service = site.service ?? {
    rating: USUAL_SERVICE,
    demand: Math.max(0, USUAL_SERVICE + over - next - point),
  };
  const serviceLimit = service.rating + over;
  const asked = greatestDemand({ house: service.demand + next, point, curtailedTo: serviceLimit });
  return sheet.serviceLimit === null || asked <= service.rating ? null : { service, serviceLimit };
}, 'service-kept-within');

const setTo = ({ sheet }: Setting): Amps => sheet.setCurrent ?? sheet.ratedCurrent;

const frame = {
  kind: 'fault',
  family: 'design',
  next: LOCK_OFF,
  tell: TELL_INSTALLER,
} as const;

export const designFaults: readonly Fault[] = [
  {
    ...frame,
    // BS 7671:2018+A2:2022 433.1.1.
    id: 'breaker-over-cable',
    component: 'breaker',
    parameters: [],
    ...wrongly((on) => {
      if (!isTabled(laidAs(on.site))) return null;
      const rating = RATINGS.find((one) => one > carriedBy(on.site).amps && one >= setTo(on));
      return rating === undefined ? null : { rating };
    }, 'no-breaker-too-large'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 433.1.1.
    id: 'set-above-breaker',
    component: 'breaker',
    parameters: [],
    ...wrongly((on) => {
      const rating = RATINGS.findLast((one) => one < setTo(on));
      return rating === undefined ? null : { rating };
    }, 'no-breaker-too-small'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 433.1.1, Appendix 4.
    id: 'set-above-cable',
    component: 'circuit',
    parameters: [],
    ...wrongly((on) => {
      const lineArea = FALLING.find((area) => {
        const site = { ...on.site, circuit: { ...on.site.circuit, lineArea: area } };
        return isTabled(laidAs(site)) && carriedBy(site).amps < setTo(on);
      });
      if (lineArea === undefined) return null;
      return { circuit: { lineArea, protectiveArea: Math.min(lineArea, on.site.circuit.protectiveArea) } };
    }, 'cable-carries-more'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 525.202, Appendix 4.
    id: 'conductors-too-small-for-run',
    component: 'circuit',
    parameters: [],
    ...wrongly((on) => {
      const lineArea = FALLING.find((area) => {
        const site = { ...on.site, circuit: { ...on.site.circuit, lineArea: area } };
        return isTabled(laidAs(site)) && dropOf(site, setTo(on)) > greatestDrop(site.phases);
      });
      if (lineArea === undefined || on.sheet.leastVoltage !== null) return null;
      return { circuit: { lineArea, protectiveArea: Math.min(lineArea, on.site.circuit.protectiveArea) } };
    }, 'no-conductor-too-small'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 523.9 (from memory), 433.1.1.
    id: 'insulation-not-counted',
    component: 'circuit',
    parameters: [{ name: 'millimetres', unit: 'mm', min: 201, max: 1000, default: 500 }],
    ...wrongly(({ site }, { millimetres = 0 }) => {
      const { circuit } = site;
      if (!isTabled(laidAs(site))) return null;
      const laid = { ...site, circuit: { ...circuit, insulated: millimetres } };
      return circuit.breaker.rating > carriedBy(laid).amps ? { circuit: { insulated: millimetres } } : null;
    }, 'cable-carries-in-insulation'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 543.1.3.
    id: 'protective-too-small',
    component: 'circuit',
    parameters: [],
    ...wrongly((on) => {
      const protectiveArea = FALLING.find((area) => {
        const circuit = { ...on.site.circuit, protectiveArea: area };
        const { withoutSum, needed } = adiabaticOf({ ...on.site, circuit });
        return area < withoutSum && area < needed;
      });
      return protectiveArea === undefined ? null : { circuit: { protectiveArea } };
    }, 'protective-stands-fault'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.311.
    id: 'service-overloaded',
    component: 'supply',
    parameters: [{ name: 'over', unit: 'A', min: 4, max: 30, default: 12 }],
    tell: TELL_DISTRIBUTOR,
    ...wrongly((on, { over = 0 }) => {
      const { serviceLimit, loadLimit } = on.sheet;
      const rating = on.site.service?.rating ?? USUAL_SERVICE;
      const demand = rating + over - Math.min(setTo(on), loadLimit ?? Infinity);
      return serviceLimit !== null || demand < 0 ? null : { service: { rating, demand } };
    }, 'service-kept-within'),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.311.201.
    id: 'service-limit-above-rating',
    component: 'supply',
    parameters: [{ name: 'over', unit: 'A', min: 4, max: 40, default: 20 }],
    ...limitAboveRating,
    impossible: (on, values) => sensorOnly(on) ?? limitAboveRating.impossible?.(on, values) ?? null,
  },
];
