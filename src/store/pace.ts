/** How fast bench time passes for whoever sits here, in this browser's local storage; lost without harm. */
export const PACES = ['at once', 'as it lasts', 'with extra time'] as const;
export type Pace = (typeof PACES)[number];

const KEY = 'charge-point-trainer bench time';

export function keptPace(): Pace {
  try {
    const kept = localStorage.getItem(KEY);
    return PACES.find((pace) => pace === kept) ?? 'at once';
  } catch {
    return 'at once';
  }
}

export function keepPace(pace: Pace): void {
  try {
    localStorage.setItem(KEY, pace);
  } catch {
    // A browser that keeps nothing: waits stay as they were.
  }
}

export function forgetPace(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
