/**
 * Whether the design in the papers is right, sum by sum, by the wiring rules: what a verifier works out before anything
 * is measured. Judged from the papers alone.
 */
import { K_IN_CABLE } from '../laws/adiabatic.ts';
import { TABLES } from '../laws/currentCarrying.ts';
import { greatestDemand } from '../laws/demand.ts';
import type { Amps } from '../laws/quantities.ts';
import { bearsDirectOf } from '../laws/residualProtection.ts';
import { dropPerAmpereMetre, leastLeft, nominalOf } from '../laws/voltageDrop.ts';
import { adiabaticOf, cableOf, carriedBy, dropOf, loopAtUnit } from '../site/design.ts';
import { earthLoop, neutralLoop } from './actions/originLoop.ts';
import { rulesFor } from './rules/rules.ts';
import type { Source } from './sources.ts';
import type { Papers } from './testAction.ts';

export interface DesignSum {
  readonly id: string;
  readonly should: boolean;
  /** Completes "A sound circuit …". */
  readonly text: string;
  /** Why it matters, and the sum. */
  readonly why: string;
  readonly sum: string;
  readonly source: Source;
  readonly isRight: boolean;
  /** The field of a scenario file that it hangs on most. */
  readonly field: string;
}

export const designSums = (papers: Papers): readonly DesignSum[] => [
  carries(papers),
  drops(papers),
  stands(papers),
  breaks(papers),
  ...demands(papers),
  ...residualFaultProtection(papers),
  ...shared(papers),
];

const amperes = (amps: Amps): string => `${Number(amps.toFixed(1))} A`;

/** In ≤ Iz. */
function carries(papers: Papers): DesignSum {
  const { site } = papers;
  const { circuit } = site;
  const { tabled, ambient, grouped, insulated, amps } = carriedBy(site);
  const factors = [
    [ambient, `in ${circuit.ambient} °C`],
    [grouped, `${circuit.grouped} circuits bunched`],
    [insulated, `${circuit.insulated} mm in insulation`],
  ] as const;
  const listed = factors.filter(([factor]) => factor !== 1);
  const table = TABLES[cableOf(circuit)];
  const product = listed.map(([factor, what]) => ` × ${factor} (${what})`).join('');
  const { type, rating } = circuit.breaker;
  const sum = `${table}, method ${circuit.method}, ${circuit.lineArea} mm²: ${tabled} A${product}${listed.length === 0 ? '' : ` = ${amperes(amps)}`}; the breaker is ${type}${rating}`;
  const { regulation, remembered } = rulesFor(papers);
  const clauses = `433.1.1, ${table}${listed.length === 0 ? '' : ', Appendix 4'}`;
  return {
    id: 'cable-carries',
    should: true,
    text: 'has a breaker rated no higher than its cable carries as it is laid',
    why: `A breaker above that lets the cable overheat and never opens. ${sum}.`,
    sum,
    source: (insulated === 1 ? regulation : remembered)(clauses),
    // A tabled 32.0 A under a breaker of 32 A is right.
    isRight: rating <= amps + 1e-9,
    field: 'site.circuit.breaker.rating',
  };
}

/** Volt drop: deemed right up to the usual share, and beyond it where the unit's own least voltage is shown to be met. */
function drops(papers: Papers): DesignSum {
  const { site, sheet } = papers;
  const { lineArea, length } = site.circuit;
  const { drop } = rulesFor(papers);
  const lost = dropOf(site, sheet.setCurrent);
  const most = drop.greatest(site.phases);
  const left = leastLeft(lost, site.phases);
  const { leastVoltage } = sheet;
  const share = ((100 * lost) / nominalOf(site.phases)).toFixed(1);
  const sum = `${dropPerAmpereMetre(lineArea, site.phases)} mV/A/m × ${amperes(sheet.setCurrent)} × ${length} m = ${lost.toFixed(2)} V, ${share} % (${most} V at most)${leastVoltage === null ? '' : `; of 216.2 V there are ${left.toFixed(1)} V left, and the unit needs ${leastVoltage} V`}`;
  return {
    id: 'volts-lost',
    should: true,
    text: 'loses no more of its voltage along the cable than its unit can spare',
    why: `A long thin cable turns volts into heat before they reach the unit. ${sum}.`,
    sum,
    source: drop.source,
    isRight: lost <= most + 1e-9 || (leastVoltage !== null && left >= leastVoltage),
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
  const energy =
    classEnergy === null
      ? `(${current.toFixed(0)} A)² × ${time} s`
      : `${classEnergy} A²s by its energy class`;
  const sum = tabled
    ? `Table 54.7: ${withoutSum} mm² beside lines of ${lineArea} mm² needs no sum; it has ${protectiveArea} mm²`
    : `230 V ÷ ${loopAtUnit(site).toFixed(2)} Ω = ${current.toFixed(0)} A; √(${energy}) ÷ ${K_IN_CABLE} = ${needed.toFixed(2)} mm²; it has ${protectiveArea} mm²`;
  return {
    id: 'stands-fault',
    should: true,
    text: 'has a protective conductor that stands the heat of an earth fault until it is cleared',
    why: `A conductor too small burns open in the fault, and the case stays live. ${sum}.`,
    sum,
    source: tabled
      ? regulation('543.1.4, Table 54.7')
      : (classEnergy === null ? regulation : remembered)('543.1.3, Table 54.3'),
    isRight: tabled || protectiveArea >= needed,
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
  const declared = capacity > breaker.breakingCapacity;
  const kiloamperes = (amps: Amps): string => `${(amps / 1000).toFixed(1)} kA`;
  const sum = `${kiloamperes(flows)} may flow at the origin; the breaker breaks ${kiloamperes(breaker.breakingCapacity)}${declared ? `, and its consumer unit is declared for ${kiloamperes(capacity)} with it` : ''}`;
  return {
    id: 'breaks-current',
    should: true,
    text: 'has a breaker that breaks the greatest current its supply can drive',
    why: `A breaker that cannot quench the arc of a short circuit bursts. ${sum}.`,
    sum,
    source: declared ? conditionalSource : source,
    isRight: flows <= capacity,
    field: 'site.circuit.breaker.breakingCapacity',
  };
}

/** What the point may take for hours: what it is set to, and no more than a fixed limit leaves it. */
const taken = ({ sheet }: Papers): Amps => Math.min(sheet.setCurrent, sheet.loadLimit ?? Infinity);

function demands(papers: Papers): readonly DesignSum[] {
  const { service } = papers.site;
  if (service === null) return [];
  const { rating, demand: house } = service;
  const curtailedTo = papers.sheet.serviceLimit;
  const point = taken(papers);
  const asked = greatestDemand({ house, point, curtailedTo });
  const curtailed = curtailedTo === null ? '' : `, kept to ${curtailedTo} A by the unit`;
  const sum = `house ${amperes(house)} + unit ${amperes(point)}${curtailed} = ${amperes(asked)} on a service of ${rating} A`;
  return [
    {
      id: 'service-carries',
      should: true,
      text: 'asks no more of its service than the service is rated for',
      why: `A unit takes its full current for hours, so that it gets no diversity. The service’s fuse and tails overheat: ${sum}.`,
      sum,
      source: rulesFor(papers).regulation('722.311'),
      isRight: asked <= rating + 1e-9,
      field: 'site.service',
    },
  ];
}

function residualFaultProtection(papers: Papers): readonly DesignSum[] {
  const { earthing, circuit } = papers.site;
  if (earthing === 'TT' || circuit.faultProtection !== 'residual') return [];
  const sum = `residual device at the origin: ${circuit.residualDevice === null ? 'none' : `${1000 * circuit.residualDevice.rated} mA`}`;
  return [
    {
      id: 'fault-device',
      should: true,
      text: 'has the residual device at its origin on which its fault protection rests',
      why: 'The unit’s own device sees only what lies beyond it: a fault in the cable that feeds the unit would not be cleared.',
      sum,
      source: rulesFor(papers).remembered('411.4.5'),
      isRight: circuit.residualDevice !== null,
      field: 'site.circuit.faultProtection',
    },
  ];
}

/** More than one point behind the device at the origin. */
function shared(papers: Papers): readonly DesignSum[] {
  const { residualDevice, points } = papers.site.circuit;
  if (residualDevice === null || points === 1) return [];
  const { type, rated } = residualDevice;
  const sum = `${points} × 6 mA = ${6 * points} mA of smooth d.c. behind a type ${type} device`;
  return [
    {
      id: 'direct-adds',
      should: false,
      text: 'lets more smooth d.c. stand behind the shared residual device than that device bears',
      why: `Each unit lets up to 6 mA stand, and they add up until the device no longer trips. ${sum}.`,
      sum,
      source: rulesFor(papers).regulation('531.3.3'),
      isRight: bearsDirectOf(points, type, rated),
      field: 'site.circuit.points',
    },
  ];
}
