/**
 * What was read, seen and heard during one test, each with the set-up it was observed in. Judgements look at this
 * and at nothing else, whether a faultless trainee made it or a person did.
 */

import type { Operation } from '../bench/operation.ts';
import type { Outcome, Seen } from '../bench/perform.ts';
import { perform } from '../bench/perform.ts';
import type { Reading } from '../bench/reading.ts';
import type { StandIn } from '../bench/standIn.ts';
import type { World } from '../bench/world.ts';
import type { Seconds } from '../laws/quantities.ts';
import { seconds } from '../laws/quantities.ts';

/** The positions that the person had set when the reading was taken: all of them known without a measurement. */
export interface SetUp {
  readonly supply: 'on' | 'off';
  readonly unitConnected: boolean;
  readonly standIn: StandIn;
  /** How long nothing had been changed when the reading was taken, s. */
  readonly settled: Seconds;
}

export interface Sample {
  readonly operation: Operation;
  readonly setUp: SetUp;
  readonly readings: readonly Reading[];
  readonly seen: Seen;
  readonly events: Outcome['events'];
  readonly found: Outcome['found'];
}

export interface Observed {
  readonly samples: readonly Sample[];
}

export const setUpOf = ({ plant, timeline, changedAt }: World): SetUp => ({
  supply: plant.isolated.length > 0 ? 'off' : 'on',
  unitConnected: !plant.removed.includes('unit'),
  standIn: plant.standIn,
  settled: seconds(timeline.now - changedAt),
});

/** Performs an operation and keeps what it showed. A measurement that changes the set-up is filed under the one it began in. */
export function observe(world: World, operation: Operation): { outcome: Outcome; sample: Sample } {
  const before = setUpOf(world);
  const outcome = perform(world, operation);
  const { readings, seen, events, found } = outcome;
  const setUp = operation.op === 'measure' || operation.op === 'prove-dead' ? before : setUpOf(world);
  return { outcome, sample: { operation, setUp, readings, seen, events, found } };
}
