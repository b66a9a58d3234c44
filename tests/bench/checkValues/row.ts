/**
 * What a check value looks like on the bench, and how the rows read it: by instruments without an error of their own,
 * so that printed figures can be compared to the last place.
 */
import { measure } from '../../../src/bench/measure.ts';
import type { Measurement, OperationInput } from '../../../src/bench/operation.ts';
import { operation } from '../../../src/bench/operation.ts';
import { type AnyReading, shown } from '../../../src/bench/reading.ts';
import type { World } from '../../../src/bench/world.ts';
import { benchWith, CHARGE, doing, type Wanted } from '../build.ts';

export interface BenchRow {
  readonly behaviour: string;
  readonly behaves: () => void;
}
export type BenchRows = Readonly<Record<string, BenchRow>>;

/** What an instrument in the middle of its error shows. */
export const exact = (world: World, input: OperationInput): AnyReading =>
  shown(measure(world, operation(input) as Measurement), 'exact', 0, () => 0.5);

/** The value itself, before an instrument rounds it. */
export function truth(world: World, input: OperationInput): number {
  const found = measure(world, operation(input) as Measurement);
  if ('refused' in found) throw new Error(found.refused.id);
  return found.value;
}

/** A pilot that nothing was drawn for. */
export const NOMINAL_PILOT = { positive: 12, negative: -12, frequency: 1000 } as const;
export const PILOT: OperationInput = { op: 'measure', quantity: 'pilot' };

export function charging(wanted: Wanted = {}): World {
  const world = benchWith(wanted);
  doing(world, ...CHARGE);
  if (world.indicator !== 'charging') throw new Error(`it does not charge: ${world.indicator}`);
  return world;
}

export const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8] as const;

/** Seconds of bench time. */
export const now = (world: World): number => world.timeline.now / 1e6;
