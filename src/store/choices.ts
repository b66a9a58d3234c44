/**
 * What somebody chose among a few words, once for this device: in the browser's local storage, lost without harm. A
 * browser that keeps nothing holds a choice until the page is closed.
 */

export interface KeptChoice<T extends string> {
  readonly words: readonly T[];
  /** What was chosen last; the first of the words where nothing was. */
  readonly kept: () => T;
  readonly keep: (word: T) => void;
  readonly forget: () => void;
}

function choiceOf<T extends string>(key: string, words: readonly [T, ...T[]]): KeptChoice<T> {
  const quietly = (act: () => void): void => {
    try {
      act();
    } catch {
      // A browser that keeps nothing.
    }
  };
  return {
    words,
    kept: () => {
      let kept: string | null = null;
      quietly(() => {
        kept = localStorage.getItem(key);
      });
      return words.find((word) => word === kept) ?? words[0];
    },
    keep: (word) => quietly(() => localStorage.setItem(key, word)),
    forget: () => quietly(() => localStorage.removeItem(key)),
  };
}

/** Light or dark paper. */
const THEMES = ['device', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];
export const THEME = choiceOf<Theme>('charge-point-trainer paper', THEMES);

/** How fast bench time passes for whoever sits here. */
const PACES = ['at once', 'as it lasts', 'with extra time'] as const;
export type Pace = (typeof PACES)[number];
export const PACE = choiceOf<Pace>('charge-point-trainer bench time', PACES);

/** Whether what moves on the bench is heard. */
export const SOUND = choiceOf<'off' | 'on'>('charge-point-trainer sound', ['off', 'on']);

/** Whether the first minute was come to, gone through or skipped. */
export const FIRST_MINUTE = choiceOf<'not yet' | 'done'>('charge-point-trainer first minute', [
  'not yet',
  'done',
]);

/** Whether the first run was gone through to its end. */
export const FIRST_RUN = choiceOf<'not yet' | 'done'>('charge-point-trainer first run', ['not yet', 'done']);
