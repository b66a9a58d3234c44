/** Whether a media query holds now: which of two drawings there is room for. */
import { useCallback, useSyncExternalStore } from 'react';

export function useMatches(query: string): boolean {
  const subscribe = useCallback(
    (onChange: () => void) => {
      const list = matchMedia(query);
      list.addEventListener('change', onChange);
      return () => list.removeEventListener('change', onChange);
    },
    [query],
  );
  return useSyncExternalStore(
    subscribe,
    () => matchMedia(query).matches,
    () => false,
  );
}

/** Where drawing and step stand side by side. */
export const DESK = '(min-width: 60rem)';
