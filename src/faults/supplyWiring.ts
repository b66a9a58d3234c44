/**
 * Faults of the supply and of the wiring to the unit. The papers keep what was meant; ranges are trade judgement
 * (common practice, no source) where no clause is named.
 */
import type { BreakerType } from '../laws/overcurrent.ts';
import type { Volts } from '../laws/quantities.ts';
import { siteSources } from '../site/site.ts';
import type { Fault } from './fault.ts';
import {
  LINE,
  LOCK_OFF,
  lineOf,
  noSuchLine,
  openPenOnly,
  PRACTICE,
  PUT_RIGHT,
  penOnly,
  TELL_DISTRIBUTOR,
  TELL_INSTALLER,
  TELL_MAKER,
  unless,
} from './fault.ts';
import type { Parts } from './parts.ts';
import {
  withCrossed,
  withDesign,
  withMore,
  withOpen,
  withPart,
  withSite,
  withTiming,
  withVisible,
} from './parts.ts';

const family = 'supply-wiring';

/** The supply at another voltage: site and sources alike, so that the bench starts from it. */
function withVoltage(parts: Parts, volts: Volts): Parts {
  const changed = withSite(parts, { voltage: volts });
  return { ...changed, sources: siteSources(changed.site) };
}

/** The PEN conductor broken, and the ground path of the main earthing terminal that carries what it carried. */
const withBrokenPen = (parts: Parts, toEarth: number): Parts =>
  withPart(withOpen(parts, 'pen'), 'met.earth', (part) => ({
    ...part,
    resistance: Math.min(part.resistance, toEarth),
  }));

const TO_EARTH = { name: 'ohms', unit: 'Ω', min: 5, max: 100, default: 20 } as const;

const SLOWER: Readonly<Record<BreakerType, BreakerType>> = { B: 'C', C: 'D', D: 'D' };

export const supplyWiringFaults: readonly Fault[] = [
  {
    id: 'line-neutral-crossed',
    kind: 'fault',
    title: 'Line and neutral crossed at the unit',
    family,
    parameters: [],
    where: 'the unit’s supply terminals',
    cause: 'The cores were mixed up.',
    hazard: 'The neutral is live behind everything that opens the line alone.',
    source: PRACTICE,
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: unless(({ site }) => site.phases === 1, 'on three phases it would destroy the unit at once'),
    change: (parts) => withCrossed(parts, 'circuit.L1', 'circuit.N'),
  },
  {
    id: 'lines-crossed',
    kind: 'fault',
    title: 'Two lines crossed at the unit',
    family,
    parameters: [],
    where: 'the unit’s supply terminals, L2 and L3',
    cause: 'The cores were landed in the order in which they came.',
    hazard: 'Lines are loaded other than planned, and the record of the site is wrong.',
    source: PRACTICE,
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: unless(({ site }) => site.phases === 3, 'this site has one line'),
    change: (parts) => withCrossed(parts, 'circuit.L2', 'circuit.L3'),
  },
  {
    id: 'line-missing',
    kind: 'fault',
    title: 'A line does not reach the unit',
    family,
    parameters: [LINE],
    where: 'the line core between board and unit',
    cause: 'A loose link, or a core broken in the run.',
    hazard: 'The unit is out of use, or runs on fewer lines than it seems to.',
    source: PRACTICE,
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: noSuchLine,
    change: (parts, values) => withOpen(parts, `circuit.${lineOf(values)}`),
  },
  {
    id: 'neutral-missing',
    kind: 'fault',
    title: 'The neutral does not reach the unit',
    family,
    parameters: [],
    where: 'the neutral core between board and unit',
    cause: 'The core is broken, or was not landed.',
    hazard: 'A unit that seems dead is live inside.',
    source: PRACTICE,
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts) => withOpen(parts, 'circuit.N'),
  },
  {
    id: 'neutral-joint',
    kind: 'fault',
    title: 'Poor joint in the neutral',
    family,
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.4, max: 5, default: 1 }],
    where: 'the neutral core between board and unit',
    cause: 'A terminal was not tightened.',
    hazard: 'Heat, and fire in time.',
    source: PRACTICE,
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) => withMore(parts, 'circuit.N', ohms),
  },
  {
    id: 'neutral-earth-joined',
    kind: 'fault',
    title: 'Neutral joined to PE at the unit',
    family,
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.001, max: 2, default: 0.01 }],
    where: 'a link between N and PE at the unit’s supply terminals',
    cause: 'A well-meant link: the earthing of the site was misread.',
    hazard: 'Load current runs in the protective conductor, and residual devices are blinded.',
    source: PRACTICE,
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.N-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    id: 'breaker-too-slow',
    kind: 'fault',
    title: 'Breaker of a slower type than designed',
    family,
    parameters: [],
    where: 'the circuit’s breaker at the board',
    cause: 'It was what lay in the van.',
    hazard: 'An earth fault that the design would clear at once may stay on for seconds.',
    source: 'BS 7671:2018+A2:2022 411.4.4',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: ({ site }) =>
      site.circuit.breaker.type === 'D' ? 'the breaker is of the slowest type already' : null,
    change: (parts) => {
      const { circuit } = parts.site;
      const type = SLOWER[circuit.breaker.type];
      return withVisible(
        withSite(parts, { circuit: { ...circuit, breaker: { ...circuit.breaker, type } } }),
        'protective devices',
        `the breaker is marked ${type}${circuit.breaker.rating}, not ${circuit.breaker.type}${circuit.breaker.rating}`,
      );
    },
  },
  {
    id: 'supply-loop-high',
    kind: 'fault',
    title: 'Loop impedance of the supply far above what was declared',
    family,
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.5, max: 5, default: 1.2 }],
    where: 'the supply’s return conductor, before the origin',
    cause: 'A long run, or a poor joint in the distributor’s cable.',
    hazard: 'A breaker may not open in time on an earth fault.',
    source: 'BS 7671:2018+A2:2022 411.4.4',
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    impossible: unless(({ site }) => site.earthing !== 'TT', 'on TT the electrode decides'),
    change: (parts, { ohms = 0 }) =>
      withMore(parts, parts.site.earthing === 'TN-S' ? 'source.PE' : 'pen', ohms),
  },
  {
    id: 'voltage-high',
    kind: 'fault',
    title: 'Supply voltage above its limit',
    family,
    parameters: [{ name: 'volts', unit: 'V', min: 258, max: 265, default: 260 }],
    where: 'the supply',
    cause: 'Local generation, or a transformer tapped too high.',
    hazard: 'Equipment wears early or fails; a unit may lock out, and rightly so.',
    source: 'ESQCR 2002 reg. 27: 253 V at most',
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    change: (parts, { volts = 0 }) => withVoltage(parts, volts),
  },
  {
    id: 'voltage-low',
    kind: 'fault',
    title: 'Supply voltage below its limit',
    family,
    parameters: [{ name: 'volts', unit: 'V', min: 185, max: 205, default: 200 }],
    where: 'the supply',
    cause: 'A weak network, or a long shared service.',
    hazard: 'Equipment misbehaves; a unit may lock out, and rightly so.',
    source: 'ESQCR 2002 reg. 27: 216.2 V at least',
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    change: (parts, { volts = 0 }) => withVoltage(parts, volts),
  },
  {
    id: 'pen-open',
    kind: 'fault',
    title: 'The service’s PEN conductor is open',
    family,
    parameters: [TO_EARTH],
    where: 'the joint of the service cable; the parameter is the ground path of the main earthing terminal',
    cause: 'A corroded joint has parted.',
    hazard: 'Every earthed part, the vehicle among them, stands at a dangerous voltage.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    impossible: penOnly,
    change: (parts, { ohms = 0 }) => withBrokenPen(parts, ohms),
  },
  {
    id: 'pen-open-in-street',
    kind: 'fault',
    title: 'The PEN conductor is open in the street, with neighbours on it',
    family,
    parameters: [{ name: 'watts', unit: 'W', min: 3000, max: 12_000, default: 6000 }],
    where: 'the distributor’s main, beyond the neighbours; the parameter is their load on each other line',
    cause: 'A broken main.',
    hazard: 'Voltage rises until things burn, and every earthed part is live.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    impossible: penOnly,
    change: (parts, { watts = 0 }) =>
      withSite(withBrokenPen(parts, TO_EARTH.max), {
        neighbours: [...parts.site.neighbours, { line: 'L2', power: watts }, { line: 'L3', power: watts }],
      }),
  },
  {
    id: 'open-pen-blind',
    kind: 'fault',
    title: 'Open-PEN measure does not act',
    family,
    parameters: [],
    where: 'the measure’s sensing inside the unit',
    cause: 'Its sensing has failed, or its electrode was never connected.',
    hazard: 'With the supply’s PEN broken the vehicle’s body is live.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: openPenOnly,
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, senses: false } }),
  },
  {
    id: 'open-pen-late',
    kind: 'fault',
    title: 'Open-PEN measure acts too late',
    family,
    parameters: [{ name: 'seconds', unit: 's', min: 6, max: 20, default: 9 }],
    where: 'the measure’s timer inside the unit',
    cause: 'A fault of its programme.',
    hazard: 'A long shock from the vehicle’s body.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1: within 5 s',
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: openPenOnly,
    change: (parts, { seconds = 0 }) => withTiming(parts, { openPen: seconds }),
  },
  {
    id: 'open-pen-leaves-earth',
    kind: 'fault',
    title: 'Open-PEN measure leaves the protective conductor closed',
    family,
    parameters: [],
    where: 'the measure’s PE pole inside the unit',
    cause: 'A device that opens line and neutral alone was fitted, or its PE pole is stuck.',
    hazard: 'The vehicle’s body stays joined to a broken earth.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: openPenOnly,
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, opensEarth: false } }),
  },
];
