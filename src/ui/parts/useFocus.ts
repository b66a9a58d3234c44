/** Puts the focus where somebody begins who works by keys or listens: a screen's heading, the one button of a wait. */
import type { RefObject } from 'react';
import { useLayoutEffect, useRef } from 'react';

/**
 * For what has just come: the focus moves with the picture, so that whoever goes on by key as soon as they see it is not
 * brought back. Where it is in no sight the page scrolls to it with the next frame, which is laid out in any case.
 */
export function takeFocus(place: HTMLElement | null): void {
  place?.focus({ preventScroll: true });
  requestAnimationFrame(() => {
    if (document.activeElement === place) place?.scrollIntoView({ block: 'nearest' });
  });
}

/** For the `ref` of what takes the focus when it comes, and anew at each other `occasion`. */
export function useFocus<T extends HTMLElement>(occasion: unknown = null): RefObject<T | null> {
  const place = useRef<T>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what has happened is the very occasion
  useLayoutEffect(() => {
    takeFocus(place.current);
  }, [occasion]);
  return place;
}
