/**
 * Work that takes long, done in slices of some milliseconds between which the page stays in hand. The work itself is a
 * generator from the floors below.
 */

/** Longest slice, ms: short beside the 50 ms from which a press feels late, on a device four times slower too. */
const SLICE = 8;
/** How often it is told how far the work is, ms. */
const TOLD_EVERY = 250;

/** What the work comes to; null where it was ended before. Rejects with what the work throws. `slice`: longest, ms. */
export function inSlices<P, T>(
  work: Generator<P, T>,
  signal: AbortSignal,
  onProgress: (progress: P) => void = () => {},
  longest = SLICE,
): Promise<T | null> {
  return new Promise((resolve, reject) => {
    let told = 0;
    const slice = () => {
      if (signal.aborted) return resolve(null);
      const until = performance.now() + longest;
      try {
        for (;;) {
          const next = work.next();
          if (next.done === true) return resolve(next.value);
          if (performance.now() < until) continue;
          if (until - told > TOLD_EVERY) {
            told = until;
            onProgress(next.value);
          }
          break;
        }
        setTimeout(slice, 0);
      } catch (error) {
        reject(error);
      }
    };
    setTimeout(slice, 0);
  });
}
