/**
 * What the conductors of this installation ought to read, from lengths and areas: the sums against which dead and
 * loop readings are held. Written from the design data alone; nothing here looks at the simulated network.
 */
import { conductorResistance } from '../laws/conductor.ts';
import type { Metres, Ohms, SquareMillimetres } from '../laws/quantities.ts';
import type { Circuit, Site } from './site.ts';

/** What of a site these sums need. */
type Run = { readonly circuit: Pick<Circuit, 'length' | 'lineArea' | 'protectiveArea' | 'parallelEarth'> };

export interface Cable {
  readonly length: Metres;
  readonly area: SquareMillimetres;
}

/** Length × mΩ/m of the circuit's protective conductor, Ω at 20 °C (IEC 60228 class 2). */
export const expectedCircuitProtective = ({ circuit }: Run): Ohms =>
  conductorResistance({ length: circuit.length, area: circuit.protectiveArea, class: 2 });

/** The same with the declared steelwork in parallel, Ω: the least that the path may read. */
export function leastCircuitProtective(site: Run): Ohms {
  const alone = expectedCircuitProtective(site);
  const { parallelEarth } = site.circuit;
  return parallelEarth === null ? alone : (alone * parallelEarth) / (alone + parallelEarth);
}

/** Length × mΩ/m of one line conductor of the circuit, Ω at 20 °C (IEC 60228 class 2). */
export const expectedCircuitLine = ({ circuit }: Run): Ohms =>
  conductorResistance({ length: circuit.length, area: circuit.lineArea, class: 2 });

/** One conductor of a tether or a customer's cable, Ω at 20 °C (IEC 60228 class 5), contacts not counted. */
export const expectedCable = ({ length, area }: Cable): Ohms =>
  conductorResistance({ length, area, class: 5 });

/** What terminals, poles and plugs may add to a conductor's sum, Ω. Common practice, no source. */
export const CONTACT_ALLOWANCE: Ohms = 0.05;

/** Soil dries and freezes: half to half as much again of what the papers say of an electrode. Common practice, no source. */
export const ELECTRODE_SHARE = { least: 0.5, greatest: 1.5 } as const;

/** Least resistance between an earth of its own and the house's, which meet in the ground alone, Ω. */
export const leastApart = ({ electrodeResistance }: Pick<Site, 'electrodeResistance'>): Ohms =>
  ELECTRODE_SHARE.least * (electrodeResistance ?? 0);
