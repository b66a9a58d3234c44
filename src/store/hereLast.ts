/** Which attempt this tab had last, so that a reload comes back to it; lost without harm. */

const KEY = 'charge-point-trainer attempt of this tab';

/** Null where there was none, or the browser keeps nothing. */
export function hereLast(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** Null: none any more. */
export function keepHereLast(id: string | null): void {
  try {
    if (id === null) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, id);
  } catch {
    // A browser that keeps nothing.
  }
}
