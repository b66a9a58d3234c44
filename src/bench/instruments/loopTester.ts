/**
 * Loop impedance between a line and the conductor the leads are on, by a low current that no sound residual device
 * answers to, or by a full current that any in the way does.
 */
import type { Line } from '../../laws/conductors.ts';
import type { Amps, Ohms, Seconds } from '../../laws/quantities.ts';
import { microseconds } from '../../laws/quantities.ts';
import type { Leads } from '../port.ts';
import { LIVE, modulus, seenBy } from '../port.ts';
import type { Truth } from '../reading.ts';
import type { LoopCurrent } from '../readings/choices.ts';
import type { FieldsOf } from '../readings/quantity.ts';
import { advance, move, settle } from '../settle.ts';
import type { World } from '../world.ts';

/** A design choice: under half of 30 mA. A device of 10 mA answers to it. */
export const LOW_TEST_CURRENT: Amps = 0.01;
/** A full test draws 10 A for two periods (common practice, no source). */
const TEST: Readonly<Record<LoopCurrent, { amps: Amps; seconds: Seconds }>> = {
  low: { amps: LOW_TEST_CURRENT, seconds: 2 },
  full: { amps: 10, seconds: 0.04 },
};
/** Above this the instrument finds no way back for its current, Ω. */
const NO_RETURN: Ohms = 2000;
/** Residual coils in the way read as up to so much more by the low-current method, Ω (contract). */
const COILS: Ohms = 0.1;

export function loop(
  world: World,
  leads: Leads,
  current: LoopCurrent,
  details: FieldsOf<'loop'>,
  outlet: { line: Line; to: 'PE' | 'N' } | null,
): Truth {
  const seen = seenBy(leads);
  if (modulus(seen.open.mains) < LIVE.volts)
    return { quantity: 'loop', refused: { id: 'no-voltage' }, details };
  const impedance = modulus(seen.impedance);
  if (impedance > NO_RETURN) return { quantity: 'loop', refused: { id: 'no-return' }, details };
  if (outlet !== null) passCurrent(world, outlet, current, modulus(seen.open.mains));
  return { quantity: 'loop', value: impedance + coilShare(world, current, outlet, details), details };
}

/** The test current is a load on the outlet, and whatever it makes trip, trips. */
function passCurrent(
  world: World,
  outlet: { line: Line; to: 'PE' | 'N' },
  current: LoopCurrent,
  volts: number,
): void {
  const { amps, seconds } = TEST[current];
  move(world, { test: { at: 'outlet', ...outlet, resistance: volts / amps, direct: 0, halfWave: 0 } });
  settle(world);
  advance(world, world.timeline.now + microseconds(seconds));
  move(world, { test: null });
  settle(world);
}

/** On the live side of the origin no residual device is in the way. */
function coilShare(
  world: World,
  current: LoopCurrent,
  outlet: { to: 'PE' | 'N' } | null,
  { between = ['', ''] }: FieldsOf<'loop'>,
): Ohms {
  if (between.some((terminal) => terminal.startsWith('incoming.'))) return 0;
  const { site, design } = world.installation;
  const inTheWay =
    site.circuit.residualDevice !== null || (outlet !== null && design.sheet.residual.type !== null);
  return current === 'low' && inTheWay ? COILS * world.draw('coils') : 0;
}
