/**
 * Whether the design in the papers is right, sum by sum, by the wiring rules: what a verifier works out before anything
 * is measured. Judged from the papers alone.
 */
import { K_IN_CABLE } from '../laws/adiabatic.ts';
import { TABLES } from '../laws/currentCarrying.ts';
import { greatestDemand } from '../laws/demand.ts';
import type { Amps } from '../laws/quantities.ts';
import { DIRECT, toleratedDirect } from '../laws/residualLimits.ts';
import { SUPPLY_VOLTAGE } from '../laws/supplyLimits.ts';
import { dropPerAmpereMetre, leastLeft, nominalOf } from '../laws/voltageDrop.ts';
import { adiabaticOf, cableOf, carriedBy, dropOf, loopAtUnit } from '../site/design.ts';
import { earthLoop, neutralLoop } from './actions/originLoop.ts';
import { rulesFor } from './rules/rules.ts';
import type { Source } from './sources.ts';
import type { Papers, Values } from './testAction.ts';

export interface DesignSum {
  readonly id: string;
  readonly should: boolean;
  readonly values: Values;
  readonly source: Source;
  /** What it comes to, and the most or the least that is right, both in `unit`. */
  readonly is: number;
  readonly kind: 'most' | 'least';
  readonly limit: number;
  readonly unit: string;
  /** The field of a scenario file that it hangs on most. */
  readonly field: string;
}

/** A billionth is rounding: a tabled 32 A under a breaker of 32 A is right. */
export const isRight = ({ is, kind, limit }: DesignSum): boolean =>
  kind === 'most' ? is <= limit + 1e-9 : is >= limit - 1e-9;

export const designSums = (papers: Papers): readonly DesignSum[] => [
  carries(papers),
  loses(papers),
  stands(papers),
  breaks(papers),
  ...asks(papers),
  ...faultDevice(papers),
  ...directAdds(papers),
];

/** In ≤ Iz. */
function carries(papers: Papers): DesignSum {
  const { site } = papers;
  const { breaker, method, lineArea, ...circuit } = site.circuit;
  const { tabled, ambient, grouped, insulated, amps } = carriedBy(site);
  const table = TABLES[cableOf(site.circuit)];
  const { regulation, remembered } = rulesFor(papers);
  const plain = ambient === 1 && grouped === 1 && insulated === 1;
  return {
    id: 'cable-carries',
    should: true,
    values: {
      table,
      method,
      lineArea,
      tabled,
      ambientFactor: ambient,
      ambient: circuit.ambient,
      groupedFactor: grouped,
      grouped: circuit.grouped,
      insulatedFactor: insulated,
      insulated: circuit.insulated,
      amps,
      type: breaker.type,
      rating: breaker.rating,
    },
    source: (insulated === 1 ? regulation : remembered)(`433.1.1, ${plain ? table : `${table}, Appendix 4`}`),
    is: breaker.rating,
    kind: 'most',
    limit: amps,
    unit: 'A',
    field: 'site.circuit.breaker.rating',
  };
}

/** Volt drop: up to the usual share without a further look, and beyond it as far as the unit's own least voltage is met. */
function loses(papers: Papers): DesignSum {
  const { site, sheet } = papers;
  const { phases, circuit } = site;
  const { drop } = rulesFor(papers);
  const lost = dropOf(site, sheet.setCurrent);
  const nominal = nominalOf(phases);
  const { leastVoltage } = sheet;
  const spared =
    leastVoltage === null ? 0 : ((SUPPLY_VOLTAGE.least - leastVoltage) * nominal) / SUPPLY_VOLTAGE.nominal;
  return {
    id: 'volts-lost',
    should: true,
    values: {
      perAmpereMetre: dropPerAmpereMetre(circuit.lineArea, phases),
      current: sheet.setCurrent,
      length: circuit.length,
      lost,
      share: lost / nominal,
      most: drop.greatest(phases),
      left: leastLeft(lost, phases),
      isDeclared: leastVoltage !== null,
      leastVoltage: leastVoltage ?? 0,
    },
    source: drop.source,
    is: lost,
    kind: 'most',
    limit: Math.max(drop.greatest(phases), spared),
    unit: 'V',
    field: 'site.circuit.lineArea',
  };
}

/** The protective conductor against the heat of a fault. */
function stands(papers: Papers): DesignSum {
  const { site } = papers;
  const { protectiveArea, lineArea } = site.circuit;
  const { withoutSum, current, time, classEnergy, needed } = adiabaticOf(site);
  const { regulation, remembered } = rulesFor(papers);
  const tabled = protectiveArea >= withoutSum;
  return {
    id: 'stands-fault',
    should: true,
    values: {
      tabled,
      withoutSum,
      lineArea,
      protectiveArea,
      loop: loopAtUnit(site),
      current,
      time,
      byClass: classEnergy !== null,
      classEnergy: classEnergy ?? 0,
      k: K_IN_CABLE,
      needed,
    },
    source: tabled
      ? regulation('543.1.4, Table 54.7')
      : (classEnergy === null ? regulation : remembered)('543.1.3, Table 54.3'),
    is: protectiveArea,
    kind: 'least',
    limit: Math.min(needed, withoutSum),
    unit: 'mm²',
    field: 'site.circuit.protectiveArea',
  };
}

/** What flows at the origin by the papers, and what the breaker breaks, by itself or in a declared consumer unit. */
function breaks(papers: Papers): DesignSum {
  const { site } = papers;
  const { breaker, conditionalRating } = site.circuit;
  const { voltage, threePhase, source, conditionalSource } = rulesFor(papers).prospective;
  const toNeutral = ((site.phases === 3 ? threePhase : 1) * voltage) / neutralLoop(site);
  const flows = Math.max(toNeutral, voltage / earthLoop(site));
  const capacity = Math.max(breaker.breakingCapacity, conditionalRating ?? 0);
  const isDeclared = capacity > breaker.breakingCapacity;
  return {
    id: 'breaks-current',
    should: true,
    values: { flows, breakingCapacity: breaker.breakingCapacity, capacity, isDeclared },
    source: isDeclared ? conditionalSource : source,
    is: capacity,
    kind: 'least',
    limit: flows,
    unit: 'A',
    field: 'site.circuit.breaker.breakingCapacity',
  };
}

/** What the point may take for hours: what it is set to, and no more than a fixed limit leaves it. */
const taken = ({ sheet }: Papers): Amps => Math.min(sheet.setCurrent, sheet.loadLimit ?? Infinity);

function asks(papers: Papers): readonly DesignSum[] {
  const { service } = papers.site;
  if (service === null) return [];
  const { rating, demand: house } = service;
  const curtailedTo = papers.sheet.serviceLimit;
  const point = taken(papers);
  const next = papers.site.nextPoint?.ratedCurrent ?? 0;
  const asked = greatestDemand({ house: house + next, point, curtailedTo });
  return [
    {
      id: 'service-carries',
      should: true,
      values: {
        house,
        point,
        next,
        isCurtailed: curtailedTo !== null,
        curtailedTo: curtailedTo ?? 0,
        asked,
        rating,
      },
      source: rulesFor(papers).regulation('722.311'),
      is: asked,
      kind: 'most',
      limit: rating,
      unit: 'A',
      field: 'site.service',
    },
  ];
}

/** On TN, where the papers rest fault protection on a residual device: one at the origin. */
function faultDevice(papers: Papers): readonly DesignSum[] {
  const { earthing, circuit } = papers.site;
  if (earthing === 'TT' || circuit.faultProtection !== 'residual') return [];
  return [
    {
      id: 'fault-device',
      should: true,
      values: {},
      source: rulesFor(papers).remembered('411.4.5'),
      is: circuit.residualDevice === null ? 0 : 1,
      kind: 'least',
      limit: 1,
      unit: 'residual device at the origin',
      field: 'site.circuit.faultProtection',
    },
  ];
}

/** More than one point behind the device at the origin. */
function directAdds(papers: Papers): readonly DesignSum[] {
  const { residualDevice, points } = papers.site.circuit;
  if (residualDevice === null || points === 1) return [];
  const { type, rated } = residualDevice;
  const each = DIRECT.operating;
  return [
    {
      id: 'direct-adds',
      should: false,
      values: { points, each, type, bears: toleratedDirect(type, rated) },
      source: rulesFor(papers).regulation('531.3.3'),
      is: points * each,
      kind: 'most',
      limit: toleratedDirect(type, rated),
      unit: 'A d.c.',
      field: 'site.circuit.points',
    },
  ];
}
