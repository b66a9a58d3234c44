/**
 * A second bench that stands as this one does. From there on each goes its own way, and neither feels what the other
 * does: what changes on a bench is replaced, never changed in place, but for its clock and its counts, which the fork
 * has of its own. All that follows from the installation alone, from the wiring to positions solved before, serves both.
 */
import type { World } from './world.ts';

/** Between two operations. Whoever looks on at the one is not told of the other. */
export const fork = (world: World): World => ({
  ...world,
  timeline: world.timeline.copy(),
  counts: { ...world.counts },
  onlooker: null,
});
