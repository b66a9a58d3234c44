/** What was given out from this device. */
import { useEffect, useState } from 'react';
import type { Giving } from '../../desk/giving.ts';
import { keptGivings } from '../../store/givings.ts';

/** Null while it is read, none where this browser gives nothing back; and what takes them as they are after a change. */
export function useGivings(): readonly [readonly Giving[] | null, (givings: readonly Giving[]) => void] {
  const [givings, setGivings] = useState<readonly Giving[] | null>(null);
  useEffect(() => {
    let isStale = false;
    const found = (all: readonly Giving[]) => {
      if (!isStale) setGivings(all);
    };
    keptGivings().then(found, () => found([]));
    return () => {
      isStale = true;
    };
  }, []);
  return [givings, setGivings];
}
