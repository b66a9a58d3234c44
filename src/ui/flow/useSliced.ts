/**
 * Work that takes seconds, done in slices of some milliseconds between which the page stays in hand. The work itself
 * is a generator from the floors below; it can be cancelled, and says how far it is.
 */
import { useEffect, useState } from 'react';

/** Longest slice, ms: short beside the 50 ms from which a press feels late, on a device four times slower too. */
const SLICE = 8;
/** How often the progress is shown anew, ms. */
const TOLD_EVERY = 250;

export interface Sliced<P, T> {
  readonly progress: P | null;
  readonly result: T | null;
  readonly failed: string | null;
  readonly cancelled: boolean;
  readonly cancel: () => void;
  readonly again: () => void;
}

/** `make` begins the work anew and keeps its identity while nothing changes; null while there is nothing to do. */
export function useSliced<P, T>(make: (() => Generator<P, T>) | null): Sliced<P, T> {
  const [progress, setProgress] = useState<P | null>(null);
  const [result, setResult] = useState<T | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const [cancelled, setCancelled] = useState(false);
  useEffect(() => {
    if (make === null || cancelled) return;
    setResult(null);
    setFailed(null);
    const work = make();
    let told = 0;
    let timer = 0;
    const slice = () => {
      const until = performance.now() + SLICE;
      try {
        for (;;) {
          const next = work.next();
          if (next.done === true) {
            setProgress(null);
            setResult(next.value);
            return;
          }
          if (performance.now() < until) continue;
          if (until - told > TOLD_EVERY) {
            told = until;
            setProgress(next.value);
          }
          break;
        }
        timer = window.setTimeout(slice, 0);
      } catch (error) {
        setFailed(error instanceof Error ? error.message : String(error));
      }
    };
    timer = window.setTimeout(slice, 0);
    return () => window.clearTimeout(timer);
  }, [make, cancelled]);
  return {
    progress,
    result,
    failed,
    cancelled,
    cancel: () => setCancelled(true),
    again: () => setCancelled(false),
  };
}
