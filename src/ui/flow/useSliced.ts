/** Work in slices for as long as a screen shows it: it can be cancelled, and says how far it is. */
import { startTransition, useEffect, useState } from 'react';
import { inSlices } from './inSlices.ts';

export interface Sliced<P, T> {
  readonly progress: P | null;
  readonly result: T | null;
  readonly failed: string | null;
  readonly cancelled: boolean;
  readonly cancel: () => void;
  readonly again: () => void;
}

/**
 * `make` begins the work anew and keeps its identity while nothing changes; null while there is nothing to do. A result is
 * never null, for that says that there is none yet.
 */
export function useSliced<P, T extends object>(make: (() => Generator<P, T>) | null): Sliced<P, T> {
  const [progress, setProgress] = useState<P | null>(null);
  const [result, setResult] = useState<T | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const [cancelled, setCancelled] = useState(false);
  useEffect(() => {
    if (make === null || cancelled) return;
    setResult(null);
    setFailed(null);
    const over = new AbortController();
    inSlices(make(), over.signal, (told) => setProgress(() => told)).then(
      (done) => {
        if (over.signal.aborted) return;
        setProgress(null);
        startTransition(() => setResult(done));
      },
      (error) => {
        if (!over.signal.aborted) setFailed(error instanceof Error ? error.message : String(error));
      },
    );
    return () => over.abort();
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
