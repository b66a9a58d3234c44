/**
 * Faults of the supply and of the wiring to the unit. The papers keep what was meant; ranges are trade judgement
 * (common practice, no source) where no clause is named.
 */
import type { BreakerType } from '../laws/overcurrent.ts';
import { BREAKER_TYPES, measuredLoopLimit } from '../laws/overcurrent.ts';
import type { Volts } from '../laws/quantities.ts';
import type { Designed } from '../site/design.ts';
import { loopAtUnit } from '../site/design.ts';
import { siteSources } from '../site/site.ts';
import type { Fault } from './fault.ts';
import {
  LINE,
  LOCK_OFF,
  lineOf,
  noSuchLine,
  PRACTICE,
  PUT_RIGHT,
  TELL_INSTALLER,
  TELL_MAKER,
  unless,
} from './fault.ts';
import type { Parts } from './parts.ts';
import { withCrossed, withDesign, withMore, withOpen, withPart, withSite, withVisible } from './parts.ts';
import { ofSupply } from './penFaults.ts';

const family = 'supply-wiring';
const inCircuit = {
  kind: 'fault',
  family,
  component: 'circuit',
  source: PRACTICE,
  next: PUT_RIGHT,
  tell: TELL_INSTALLER,
} as const;
/** The supply at another voltage: site and sources alike, so that the bench starts from it. */
function withVoltage(parts: Parts, volts: Volts): Parts {
  const changed = withSite(parts, { voltage: volts });
  return { ...changed, sources: siteSources(changed.site) };
}

/**
 * The least slow of the slower types that the circuit's loop does not open in time; null where a residual device does
 * it, or where the loop is good enough for any: then another type is no fault, and only the papers are to be mended.
 */
function tooSlow(site: Designed): BreakerType | null {
  const { breaker, faultProtection } = site.circuit;
  if (site.earthing === 'TT' || faultProtection === 'residual') return null;
  const slower = BREAKER_TYPES.slice(BREAKER_TYPES.indexOf(breaker.type) + 1);
  return slower.find((type) => loopAtUnit(site) > measuredLoopLimit(type, breaker.rating)) ?? null;
}

export const supplyWiringFaults: readonly Fault[] = [
  {
    ...inCircuit,
    id: 'line-neutral-crossed',
    title: 'Line and neutral crossed at the unit',
    parameters: [],
    where: 'the unit’s supply terminals',
    cause: 'The cores were mixed up.',
    hazard: 'The neutral is live behind everything that opens the line alone.',
    impossible: unless(({ site }) => site.phases === 1, 'on three phases it would destroy the unit at once'),
    change: (parts) => withCrossed(parts, 'circuit.L1', 'circuit.N'),
  },
  {
    ...inCircuit,
    id: 'lines-crossed',
    title: 'Two lines crossed at the unit',
    parameters: [],
    where: 'the unit’s supply terminals, L2 and L3',
    cause: 'The cores were landed in the order in which they came.',
    hazard: 'Lines are loaded other than planned, and the record of the site is wrong.',
    impossible: unless(({ site }) => site.phases === 3, 'this site has one line'),
    change: (parts) => withCrossed(parts, 'circuit.L2', 'circuit.L3'),
  },
  {
    ...inCircuit,
    id: 'line-missing',
    title: 'A line does not reach the unit',
    parameters: [LINE],
    where: 'the line core between board and unit',
    cause: 'A loose link, or a core broken in the run.',
    hazard: 'The unit is out of use, or runs on fewer lines than it seems to.',
    impossible: noSuchLine,
    change: (parts, values) => withOpen(parts, `circuit.${lineOf(values)}`),
  },
  {
    id: 'line-loss-unnoticed',
    kind: 'fault',
    title: 'Does not notice that a line is lost',
    component: 'pilot',
    family,
    parameters: [],
    where: 'the unit’s sensing of L2 and L3',
    cause: 'The sensing wires of the other lines are off.',
    hazard: 'A vehicle is supplied on fewer lines than it counts on.',
    source: PRACTICE,
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: unless(
      ({ site, sheet }) => site.phases === 3 && sheet.lostLine === 'stops',
      'this unit has one line, or goes on without another',
    ),
    change: (parts) => withDesign(parts, { watchedLines: 'own' }),
  },
  {
    ...inCircuit,
    id: 'neutral-missing',
    title: 'The neutral does not reach the unit',
    parameters: [],
    where: 'the neutral core between board and unit',
    cause: 'The core is broken, or was not landed.',
    hazard: 'A unit that seems dead is live inside.',
    change: (parts) => withOpen(parts, 'circuit.N'),
  },
  {
    ...inCircuit,
    id: 'neutral-joint',
    title: 'Poor joint in the neutral',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.4, max: 5, default: 1 }],
    where: 'the neutral core between board and unit',
    cause: 'A terminal was not tightened.',
    hazard: 'Heat, and fire in time.',
    change: (parts, { ohms = 0 }) => withMore(parts, 'circuit.N', ohms),
  },
  {
    ...inCircuit,
    id: 'neutral-earth-joined',
    title: 'Neutral joined to PE at the unit',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.001, max: 2, default: 0.01 }],
    where: 'a link between N and PE at the unit’s supply terminals',
    cause: 'A well-meant link: the earthing of the site was misread.',
    hazard: 'Load current runs in the protective conductor, and residual devices are blinded.',
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.N-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    kind: 'fault',
    family,
    component: 'breaker',
    id: 'breaker-too-slow',
    title: 'Breaker of a slower type than designed',
    parameters: [],
    where: 'the circuit’s breaker at the board',
    cause: 'It was what lay in the van.',
    hazard: 'An earth fault that the design would clear at once may stay on for seconds.',
    source: 'BS 7671:2018+A2:2022 411.4.4',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: ({ site }) =>
      tooSlow(site) === null ? 'here every slower type still opens in time, or a residual device does' : null,
    change: (parts) => {
      const { circuit } = parts.site;
      const type = tooSlow(parts.site) ?? circuit.breaker.type;
      return withVisible(
        withSite(parts, { circuit: { ...circuit, breaker: { ...circuit.breaker, type } } }),
        'protective devices',
        `the breaker is marked ${type}${circuit.breaker.rating}, not ${circuit.breaker.type}${circuit.breaker.rating}`,
      );
    },
  },
  {
    ...ofSupply,
    id: 'supply-loop-high',
    title: 'Loop impedance of the supply far above what was declared',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.5, max: 5, default: 1.2 }],
    where: 'the supply’s return conductor, before the origin',
    cause: 'A long run, or a poor joint in the distributor’s cable.',
    hazard: 'A breaker may not open in time on an earth fault.',
    source: 'BS 7671:2018+A2:2022 411.4.4',
    impossible: unless(({ site }) => site.earthing !== 'TT', 'on TT the electrode decides'),
    change: (parts, { ohms = 0 }) =>
      withMore(parts, parts.site.earthing === 'TN-S' ? 'source.PE' : 'pen', ohms),
  },
  {
    ...ofSupply,
    id: 'voltage-high',
    title: 'Supply voltage above its limit',
    parameters: [{ name: 'volts', unit: 'V', min: 258, max: 265, default: 260 }],
    where: 'the supply',
    cause: 'Local generation, or a transformer tapped too high.',
    hazard: 'Equipment wears early or fails; a unit may lock out, and rightly so.',
    source: 'ESQCR 2002 reg. 27: 253 V at most',
    change: (parts, { volts = 0 }) => withVoltage(parts, volts),
  },
  {
    ...ofSupply,
    id: 'voltage-low',
    title: 'Supply voltage below its limit',
    parameters: [{ name: 'volts', unit: 'V', min: 185, max: 205, default: 200 }],
    where: 'the supply',
    cause: 'A weak network, or a long shared service.',
    hazard: 'Equipment misbehaves; a unit may lock out, and rightly so.',
    source: 'ESQCR 2002 reg. 27: 216.2 V at least',
    change: (parts, { volts = 0 }) => withVoltage(parts, volts),
  },
];
