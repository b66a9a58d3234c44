/** What follows from a run is worked out once: a run never changes, and marks, feedback and debrief ask for the same. */
import type { Run } from './run.ts';

/**
 * The same work, done once for a run and whatever else it is asked about, which `keyOf` tells apart. Not for what looks
 * at the run's bench: that goes on.
 */
export function oncePerRun<About extends readonly unknown[], T>(
  work: (run: Run, ...about: About) => T,
  keyOf: (...about: About) => string,
): (run: Run, ...about: About) => T {
  const known = new WeakMap<Run, Map<string, { readonly result: T }>>();
  return (run, ...about) => {
    const ofRun = known.get(run) ?? new Map<string, { readonly result: T }>();
    known.set(run, ofRun);
    const key = keyOf(...about);
    const before = ofRun.get(key);
    if (before !== undefined) return before.result;
    const result = work(run, ...about);
    ofRun.set(key, { result });
    return result;
  };
}
