/**
 * Writes a drawn circuit as a netlist of the circuit simulator, one for each plane, and gives its potentials back by
 * the names of the nodes. Knows no charge point and none of the simulation's arrays.
 */
import type { Circuit } from './benchCircuit.ts';
import { freshMarker, type Plane, simulate } from './circuitSimulator.ts';

/** V against true earth by the name of the node, complex at 50 Hz. */
export type Potentials = ReadonlyMap<string, { readonly re: number; readonly im: number }>;

/** A silicon diode drops about 0.7 V at the pilot's milliamperes; the rest of a larger drop is a source. */
const SILICON_DROP = 0.7;
const SILICON = '.model silicon D(is=1e-14 n=1)';

export async function potentialsOf(circuit: Circuit, plane: Plane): Promise<Potentials> {
  const drawn = [...circuit.elements.values()];
  const names = [...new Set(['earth', ...drawn.flatMap(({ a, b }) => [a, b])])];
  const place = new Map(names.map((name, i) => [name, i === 0 ? '0' : `n${i}`]));
  const at = (name: string): string => {
    const found = place.get(name);
    if (found === undefined) throw new Error(`nothing is joined to "${name}"`);
    return found;
  };
  const isMains = plane === 'mains';
  const fresh = freshMarker();
  const lines = [`bench ${fresh} ${plane}`, `Vfresh fresh 0 dc ${fresh} ac ${fresh} 0`];

  for (const [i, { a, b, ohms, farads = 0, drive }] of drawn.entries()) {
    let from = at(a);
    if (drive !== undefined && plane !== 'halfWave') {
      if (isMains) {
        lines.push(`Vr${i} r${i} ${from} dc 0 ac ${drive.re} 0`, `Vi${i} s${i} r${i} dc 0 ac ${drive.im} 90`);
        from = `s${i}`;
      } else {
        lines.push(`Vd${i} r${i} ${from} dc ${drive[plane]}`);
        from = `r${i}`;
      }
    }
    lines.push(`R${i} ${from} ${at(b)} ${ohms}`);
    if (isMains && farads > 0) lines.push(`C${i} ${from} ${at(b)} ${farads}`);
  }
  if (!isMains)
    for (const [i, current] of circuit.currents.entries()) {
      const amps = plane === 'halfWave' ? current.halfWave : current.direct;
      lines.push(`I${i} ${at(current.from)} ${at(current.into)} dc ${amps}`);
    }
  if (plane === 'high' || plane === 'low') {
    for (const [i, { a, b, drop }] of circuit.oneWays.entries())
      lines.push(`D${i} ${at(a)} w${i} silicon`, `Vw${i} w${i} ${at(b)} dc ${drop - SILICON_DROP}`);
    lines.push(SILICON);
  }
  lines.push(isMains ? '.ac lin 1 50 50' : '.op', '.end');

  const vectors = names.map((_, i) => (i === 0 ? null : `v(n${i})`));
  const { re, im } = await simulate({ text: lines.join('\n'), fresh, vectors });
  return new Map(names.map((name, i) => [name, { re: re[i] ?? Number.NaN, im: im[i] ?? Number.NaN }]));
}
