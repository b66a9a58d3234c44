/** What need not be in a screen’s first picture: what is far down on it, or folded away in a list. */
import { startTransition, useEffect, useState } from 'react';
import { afterPicture } from './afterPicture.ts';

/**
 * How many of so many entries of a list are drawn yet: some with each picture after the first, until all are. None comes
 * later than it has to, so that nothing moves once somebody has come to them.
 */
export function useDrawnSoFar(count: number, withEach: number): number {
  const [drawn, setDrawn] = useState(0);
  useEffect(() => {
    if (drawn >= count) return;
    let isGone = false;
    void afterPicture().then(() => {
      if (!isGone) startTransition(() => setDrawn(drawn + withEach));
    });
    return () => {
      isGone = true;
    };
  }, [drawn, count, withEach]);
  return Math.min(drawn, count);
}

/** Whether a screen's first picture is shown. */
export const useAfterPicture = (): boolean => useDrawnSoFar(1, 1) === 1;
