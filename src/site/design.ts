/**
 * The sums by which a circuit's design is judged, from its papers alone: what its cable carries, the volts it loses,
 * the copper its protective conductor needs, the loop that its lengths and areas make. Nothing here looks at the
 * simulated network, and no sum says yet whether it is enough.
 */
import { CURVE_ENDS, classEnergy, leastForEnergy, protectiveWithoutSum } from '../laws/adiabatic.ts';
import type { CableKind, Carried, Laid } from '../laws/currentCarrying.ts';
import { currentCarrying, usualCable } from '../laws/currentCarrying.ts';
import { prospectiveCurrent } from '../laws/loop.ts';
import { instantaneousMultiple } from '../laws/overcurrent.ts';
import type { Amps, Ohms, SquareMillimetres, Volts } from '../laws/quantities.ts';
import { breakTimeLimit } from '../laws/residualLimits.ts';
import { voltageDrop } from '../laws/voltageDrop.ts';
import { expectedCircuitLine, expectedCircuitProtective } from './expected.ts';
import type { Breaker, Circuit, Site } from './site.ts';

/** What of a site these sums need: of a file's as of the papers. */
export type Designed = Pick<Site, 'phases' | 'earthing'> & {
  readonly loopImpedance?: Ohms | undefined;
  /** Where a file leaves the loop out, on TT, it is the electrode’s and a little more. */
  readonly electrodeResistance: Ohms | null;
  readonly circuit: Omit<Circuit, 'breaker'> & {
    readonly breaker: Pick<Breaker, 'type' | 'rating' | 'breakingCapacity'>;
  };
};

export const cableOf = ({ cable, method }: Pick<Circuit, 'cable' | 'method'>): CableKind =>
  cable ?? usualCable(method);

export const laidAs = ({ phases, circuit }: Designed): Laid => ({
  cable: cableOf(circuit),
  method: circuit.method,
  area: circuit.lineArea,
  loaded: phases === 3 ? 3 : 2,
  ambient: circuit.ambient,
  grouped: circuit.grouped,
  insulated: circuit.insulated,
});

/** Iz: what the cable carries as it is laid, A. */
export const carriedBy = (site: Designed): Carried => currentCarrying(laidAs(site));

/** Volts lost from the origin to the unit's supply terminals at this current, line to line on three phases. */
export const dropOf = ({ phases, circuit }: Designed, amps: Amps): Volts =>
  voltageDrop({ area: circuit.lineArea, phases, amps, length: circuit.length });

/** Earth fault loop at the unit's supply terminals by the papers, Ω at 20 °C. */
export const loopAtUnit = (site: Designed): Ohms =>
  (site.loopImpedance ?? site.electrodeResistance ?? 0) +
  expectedCircuitLine(site) +
  expectedCircuitProtective(site);

/** The longest that a TN circuit may take to clear an earth fault, s (BS 7671 411.3.2.3). */
const LONGEST = 5;

export interface Adiabatic {
  /** Table 54.7: as much needs no sum, mm². */
  readonly withoutSum: SquareMillimetres;
  /** The current of an earth fault at the unit's supply terminals, A. */
  readonly current: Amps;
  /** What the device lets through by its curve or its time, A²s, and the time, s. */
  readonly energy: number;
  readonly time: number;
  /** The most that its energy class lets through, A²s, where that is less; else null. */
  readonly classEnergy: number | null;
  /** Copper that is needed by the lesser of the two, mm². */
  readonly needed: SquareMillimetres;
}

/**
 * What the protective conductor has to stand. From the current at which the breaker is sure to open at once the curve’s
 * end counts, and the energy class where it lets through less; a residual device at the origin clears it in its own
 * time; without either nothing is sure before the longest time allowed.
 */
export function adiabaticOf(site: Designed): Adiabatic {
  const { breaker, residualDevice, lineArea } = site.circuit;
  const current = prospectiveCurrent(loopAtUnit(site));
  const atOnce = current >= instantaneousMultiple(breaker.type) * breaker.rating;
  const residual =
    residualDevice === null
      ? LONGEST
      : Math.min(LONGEST, breakTimeLimit(residualDevice.delay, current / residualDevice.rated));
  const time = Math.min(atOnce ? CURVE_ENDS : LONGEST, residual);
  const energy = current * current * time;
  const byClass = atOnce ? classEnergy(breaker.type, breaker.rating, breaker.breakingCapacity) : null;
  const classed = byClass !== null && byClass < energy ? byClass : null;
  return {
    withoutSum: protectiveWithoutSum(lineArea),
    current,
    energy,
    time,
    classEnergy: classed,
    needed: leastForEnergy(classed ?? energy),
  };
}
