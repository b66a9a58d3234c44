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

/** A phone that lies: the same beside each other, in little height. */
export const LYING = '(max-width: 59.99rem) and (max-height: 39.99rem) and (min-width: 40rem)';
