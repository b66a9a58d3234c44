/** The light or dark paper that somebody chose, in this browser's local storage; lost without harm. */
export const THEMES = ['device', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

const KEY = 'charge-point-trainer paper';

export function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY);
    return THEMES.find((theme) => theme === kept) ?? 'device';
  } catch {
    return 'device';
  }
}

export function keepTheme(theme: Theme): void {
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // A browser that keeps nothing: the choice holds until the page is closed.
  }
}

export function forgetTheme(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
