/** What follows from a run is worked out once: a run never changes, and marks, feedback and debrief ask for the same. */
import type { Run } from './run.ts';

/**
 * The same work, done once for a run and whatever else it is asked about, which `keyOf` tells apart: where it is left
 * out, the first thing asked about does by itself, a test by its id or a sitting as the object that it is. Not for what
 * looks at the run's bench: that goes on.
 */
export function oncePerRun<About extends readonly unknown[], T>(
  work: (run: Run, ...about: About) => T,
  keyOf?: (...about: About) => unknown,
): (run: Run, ...about: About) => T {
  const known = new WeakMap<Run, Map<unknown, { readonly result: T }>>();
  return (run, ...about) => {
    let ofRun = known.get(run);
    if (ofRun === undefined) {
      ofRun = new Map();
      known.set(run, ofRun);
    }
    const key = keyOf === undefined ? about[0] : keyOf(...about);
    const before = ofRun.get(key);
    if (before !== undefined) return before.result;
    const result = work(run, ...about);
    ofRun.set(key, { result });
    return result;
  };
}
