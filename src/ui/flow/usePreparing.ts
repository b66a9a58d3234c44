/**
 * Getting a bench ready, which can last: one at a time, so that a second press begins nothing, and ended by whoever
 * goes to another page meanwhile.
 */
import { useCallback, useEffect, useRef, useState } from 'react';

/** What takes longer is told of, ms; a sheet that flashes would only disturb. */
const LONG = 300;

export interface Preparing {
  /** Does the work unless other work is going on; it gets a signal that says when it is not wanted any more. */
  readonly prepare: (work: (signal: AbortSignal) => Promise<void>) => Promise<void>;
  readonly isLong: boolean;
  readonly cancel: () => void;
}

/**
 * `place`: the page that is asked for; `isTurning`: while the one before it still stands, on which nothing is begun;
 * `onFailed`: gets what the work throws.
 */
export function usePreparing(
  place: string,
  isTurning: boolean,
  onFailed: (error: unknown) => void,
): Preparing {
  const [isLong, setLong] = useState(false);
  const working = useRef<AbortController | null>(null);
  const turning = useRef(isTurning);
  turning.current = isTurning;
  const prepare = useCallback(
    async (work: (signal: AbortSignal) => Promise<void>) => {
      if (working.current !== null || turning.current) return;
      const over = new AbortController();
      working.current = over;
      const timer = setTimeout(() => setLong(true), LONG);
      const end = () => {
        clearTimeout(timer);
        if (working.current !== over) return;
        working.current = null;
        setLong(false);
      };
      over.signal.addEventListener('abort', end);
      try {
        await work(over.signal);
      } catch (error) {
        onFailed(error);
      } finally {
        end();
      }
    },
    [onFailed],
  );
  const cancel = useCallback(() => working.current?.abort(), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page is the very occasion
  useEffect(() => {
    return cancel;
  }, [place, cancel]);
  return { prepare, isLong, cancel };
}
