/**
 * Resistance of the installation's own electrode to true earth, by auxiliary stakes: taken off the main earthing
 * terminal, else every path in parallel is measured with it.
 */
import { seenFrom } from '../../network/port.ts';
import type { Truth } from '../reading.ts';
import type { World } from '../world.ts';
import { portOf } from '../world.ts';

export function electrode(world: World): Truth {
  if (world.installation.site.earthing !== 'TT')
    return { quantity: 'electrode', refused: { id: 'no-electrode' }, details: {} };
  const { reduced, planes } = world.solution;
  // The stakes are far out: the port is the electrode's clamp against true earth.
  const { resistance } = seenFrom(reduced, planes, portOf(world, 'clamp', 'earth'));
  return { quantity: 'electrode', value: resistance, details: {} };
}
