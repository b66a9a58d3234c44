/**
 * What was read, seen and heard during one test, each with the set-up it was observed in. Judgements look at this
 * and at nothing else, whether a faultless trainee made it or a person did.
 */

import type { Operation } from '../bench/operation.ts';
import type { Outcome, Seen } from '../bench/perform.ts';
import { perform } from '../bench/perform.ts';
import type { Link, Removable } from '../bench/plant.ts';
import { isIsolated, isNeutralOpened } from '../bench/plant.ts';
import type { Reading } from '../bench/reading.ts';
import type { StandIn } from '../bench/standIn.ts';
import type { World } from '../bench/world.ts';
import type { Amps, Seconds } from '../laws/quantities.ts';
import { seconds } from '../laws/quantities.ts';
import type { Load } from '../site/site.ts';

/** The positions that the person had set when the reading was taken: all of them known without a measurement. */
export interface SetUp {
  readonly supply: 'on' | 'off';
  readonly unitConnected: boolean;
  /** Whether the neutral was opened with the lines, at the origin or the main switch. */
  readonly neutral: 'open' | 'joined';
  /** What was taken off, and the temporary links at the origin. */
  readonly removed: readonly Removable[];
  readonly links: readonly Link[];
  readonly cover: 'closed' | 'open';
  readonly leadsNulled: boolean;
  readonly flexed: boolean;
  readonly standIn: StandIn;
  /** What the site's load management leaves for the unit, A; null: no limit. */
  readonly loadLimit: Amps | null;
  /** A known load switched on at the origin, A per line at 230 V. */
  readonly siteLoad: Amps;
  /** What the vehicle at the next point draws, A per line at 230 V. */
  readonly nextPoint: Amps;
  /** The supply is not as the papers say: its voltage, its PEN conductor, its lines or the neighbours were changed. */
  readonly disturbed: boolean;
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
  /** What was seen and read before, in whichever test. */
  readonly before?: readonly Sample[];
}

const sameLoads = (a: readonly Load[], b: readonly Load[]): boolean =>
  a.length === b.length && a.every(({ line, power }, i) => line === b[i]?.line && power === b[i]?.power);

export const setUpOf = ({ plant, installation, timeline, changedAt }: World): SetUp => ({
  supply: isIsolated(plant) ? 'off' : 'on',
  unitConnected: !plant.removed.includes('unit'),
  neutral: isNeutralOpened(plant) ? 'open' : 'joined',
  removed: plant.removed,
  links: plant.links,
  cover: plant.cover,
  leadsNulled: plant.leadsNulled,
  flexed: plant.flexed,
  standIn: plant.standIn,
  loadLimit: plant.loadLimit,
  siteLoad: plant.siteLoad,
  nextPoint: plant.nextPoint,
  disturbed:
    plant.pen === 'open' ||
    plant.missing !== null ||
    plant.voltage !== installation.site.voltage ||
    !sameLoads(plant.neighbours, installation.site.neighbours),
  settled: seconds(timeline.now - changedAt),
});

/** Performs an operation and keeps what it showed. A measurement that changes the set-up is filed under the one it began in. */
export function observe(world: World, operation: Operation): { outcome: Outcome; sample: Sample } {
  const before = operation.op === 'measure' || operation.op === 'prove-dead' ? setUpOf(world) : null;
  const outcome = perform(world, operation);
  const { readings, seen, events, found } = outcome;
  const setUp = before ?? setUpOf(world);
  return { outcome, sample: { operation, setUp, readings, seen, events, found } };
}
