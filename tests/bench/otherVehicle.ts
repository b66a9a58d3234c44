/**
 * A vehicle of any values on the bench, in place of the stand-in's own diode and resistors, which are nominal. Judges
 * nothing.
 */
import type { World } from '../../src/bench/world.ts';
import { type Parts, withPart } from '../../src/faults/parts.ts';
import type { OneWayPart, Part } from '../../src/site/part.ts';
import { benchWith, doing } from './build.ts';

export interface PilotCircuit {
  /** Of the vehicle between its diode and PE, Ω. */
  readonly ohms: number;
  readonly drop?: number;
  readonly open?: number;
  readonly source?: number;
}

/** A vehicle of these values in place of the stand-in's own resistors, plugged in for long enough to be supplied. */
export function withVehicle({ ohms, drop = 0.7, open = 12, source = 1000 }: PilotCircuit): World {
  const diode: OneWayPart = { id: 'other diode', a: 'end.CP', b: 'other', drop };
  const added: readonly Part[] = [
    { id: 'other diode', a: 'end.CP', b: 'other', resistance: 1e9 },
    { id: 'other resistor', a: 'other', b: 'end.PE', resistance: ohms, contact: 'cable' },
  ];
  const parts = (sound: Parts): Parts => {
    const changed = withPart(sound, 'pilot.source', (part) => ({ ...part, resistance: source }));
    return { ...changed, parts: [...changed.parts, ...added], oneWays: [...changed.oneWays, diode] };
  };
  const pilot = { positive: open, negative: -open, frequency: 1000 };
  const world = benchWith({ design: { pilot }, parts });
  doing(world, { op: 'vehicle', plugged: true }, { op: 'wait', seconds: 3 });
  return world;
}
