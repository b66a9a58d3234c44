/**
 * The order in which three lines reach their peaks: 1 for L1-L2-L3 as marked, −1 for the other way round.
 */
import { difference } from '../../network/potentials.ts';
import { linesOf } from '../../site/site.ts';
import { LIVE, nodeAtPlace } from '../port.ts';
import type { Truth } from '../reading.ts';
import type { LinePlace } from '../readings/choices.ts';
import type { World } from '../world.ts';
import { mainsAcross, portOf } from '../world.ts';

export function phaseSequence(world: World, at: LinePlace): Truth {
  const details = { place: at };
  const lines = linesOf(world.installation.site);
  if (lines.length < 3) return { quantity: 'phase-sequence', refused: { id: 'one-line' }, details };
  const [a, b, c] = lines.map((line) => nodeAtPlace(world, at, line)) as [string, string, string];
  const present = [
    [a, b],
    [b, c],
    [c, a],
  ].every(([x, y]) => mainsAcross(world, x as string, y as string) > LIVE.volts);
  if (!present) return { quantity: 'phase-sequence', refused: { id: 'a-line-dead' }, details };
  const { re, im } = world.solution.planes.mains;
  const ab = portOf(world, a, b);
  const bc = portOf(world, b, c);
  // The cross product of two successive line voltages turns its sign with the order.
  const cross = difference(re, ab) * difference(im, bc) - difference(im, ab) * difference(re, bc);
  return { quantity: 'phase-sequence', value: cross < 0 ? 1 : -1, details };
}
