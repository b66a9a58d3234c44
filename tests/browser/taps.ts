// What a test takes of a person on a phone: taps, and the digits that are typed apart from them. Counted in the page
// itself by what reaches it, whoever presses.

import type { Page } from 'playwright-core';

export const PHONE = { width: 360, height: 740, touch: true } as const;

/** The most that a test may take, and the most that half of the tests of a single-phase job may. */
export const MEDIAN_BAR = 28;

export function tapsBar(of: {
  readonly rung: number;
  readonly phases: number;
  readonly readings: number;
}): number {
  if (of.readings === 1) return of.rung === 1 ? 12 : 18;
  return of.phases === 1 ? 40 : 60;
}

export const medianOf = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)] ?? 0;

export interface Taken {
  /** Each by what it was on. */
  readonly taps: readonly string[];
  readonly digits: number;
}

/**
 * Runs in the page before anything of its own. A tap is one; a list of the system's is two, one that opens it and one
 * that takes; a tap on the field that is typed in already is none. A key of the pad that puts or takes away a character
 * or a sign is a digit. Escape stands for the tap that closes the pad.
 */
export function noteTaps(): void {
  const taken = { taps: [] as string[], digits: 0 };
  const values = new WeakMap<HTMLSelectElement, string>();
  let focused: Element | null = null;
  // One listener without a function inside it: what compiles this for a command adds helpers that the page has not.
  for (const kind of ['pointerdown', 'pointerup', 'focusin', 'change', 'keydown'])
    addEventListener(
      kind,
      (event) => {
        const { target } = event;
        if (kind === 'pointerdown') focused = document.activeElement;
        if (kind === 'focusin' && target instanceof HTMLSelectElement) values.set(target, target.value);
        if (kind === 'change' && target instanceof HTMLSelectElement && values.get(target) !== target.value)
          taken.taps.push('open a list', target.selectedOptions[0]?.text ?? '');
        if (kind === 'keydown' && (event as KeyboardEvent).key === 'Escape') taken.taps.push('Close the pad');
        if (kind === 'keydown' && (event as KeyboardEvent).key.length === 1) taken.digits += 1;
        if (kind !== 'pointerup') return;
        const at = (target as Element).closest('button, summary, a, input, label');
        if (at === null || (at === focused && at.matches('input[type="text"]'))) return;
        if (at.closest('.pad-keys') !== null) taken.digits += 1;
        else
          taken.taps.push((at.ariaLabel ?? at.closest('label')?.textContent ?? at.textContent ?? '').trim());
      },
      true,
    );
  Object.assign(window, { taken });
}

const takenSoFar = (page: Page): Promise<Taken> =>
  page.evaluate(() => (window as unknown as { taken: Taken }).taken);

/** What somebody took from here to the end of it. */
export async function takenBy(page: Page, what: () => Promise<void>): Promise<Taken> {
  const before = await takenSoFar(page);
  await what();
  const after = await takenSoFar(page);
  return { taps: after.taps.slice(before.taps.length), digits: after.digits - before.digits };
}
