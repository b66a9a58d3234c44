/** Puts the focus where somebody begins who works by keys or listens: a screen's heading, the one button of a wait. */
import type { RefObject } from 'react';
import { useEffect, useLayoutEffect, useRef } from 'react';

/**
 * For the `ref` of what takes the focus when it comes, and anew at each other `occasion`. It moves with the picture:
 * whoever goes on by key as soon as they see it is not brought back. To scroll there takes the page a layout, and comes
 * after it.
 */
export function useFocus<T extends HTMLElement>(occasion: unknown = null): RefObject<T | null> {
  const place = useRef<T>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what has happened is the very occasion
  useLayoutEffect(() => {
    place.current?.focus({ preventScroll: true });
  }, [occasion]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what has happened is the very occasion
  useEffect(() => {
    if (document.activeElement === place.current) place.current?.scrollIntoView({ block: 'nearest' });
  }, [occasion]);
  return place;
}
