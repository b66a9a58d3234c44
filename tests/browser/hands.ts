// How a person presses, types and chooses: with a mouse, by tap alone, by keys alone. What they press and in which order
// is the same for all, and the business of trainee.ts.

import type { Locator, Page } from 'playwright-core';

export interface Hands {
  /** Presses a button, a link or a fold. */
  readonly press: (what: Locator) => Promise<void>;
  /** Ticks a box or takes one of several. */
  readonly tick: (what: Locator) => Promise<void>;
  /** Writes into a field, in place of what stands there: words, or a figure with its sign and unit. */
  readonly type: (field: Locator, text: string) => Promise<void>;
  /** Takes an entry of a list by its words or its value. */
  readonly choose: (list: Locator, words: string) => Promise<void>;
  /** Is done with the last field of a form, which has this button. */
  readonly end: (field: Locator, button: Locator) => Promise<void>;
}

export const mouse: Hands = {
  press: (what) => what.click(),
  // Not asked afterwards whether it is ticked: with the last line of a test all of them are gone.
  tick: async (what) => {
    if (!(await what.isChecked())) await what.click();
  },
  type: (field, text) => field.fill(text),
  end: (field) => field.press('Enter'),
  choose: async (list, words) => {
    await list.selectOption(words);
  },
};

/** With a mouse, and each letter typed as a key: what fills a field at once does not tell every page of it by BiDi. */
export const mouseAndKeyboard: Hands = {
  ...mouse,
  type: async (field, text) => {
    await field.click();
    await field.page().keyboard.press('ControlOrMeta+a');
    await field.page().keyboard.type(text);
  },
};

const KEY_NAMES: Readonly<Record<string, string>> = { ',': 'point', '.': 'point' };

/** Where the keys of the page's own pad are, by their names; it stands still while it is there. */
const keysOfPad = (page: Page): Promise<Readonly<Record<string, readonly [number, number]>>> =>
  page.getByRole('region', { name: 'Key pad' }).evaluate((pad) =>
    Object.fromEntries(
      [...pad.querySelectorAll('button')].map((key) => {
        const { x, y, width, height } = key.getBoundingClientRect();
        return [key.ariaLabel ?? key.textContent, [x + width / 2, y + height / 2]];
      }),
    ),
  );

/** Every press is a tap; figures are tapped on the page's own keys, words on the system's. */
export const finger: Hands = {
  press: (what) => what.tap(),
  tick: async (what) => {
    if (!(await what.isChecked())) await what.tap();
  },
  end: (_, button) => button.tap(),
  type: async (field, text) => {
    await field.tap();
    if ((await field.getAttribute('inputmode')) !== 'none') {
      await field.page().keyboard.press('ControlOrMeta+a');
      await field.page().keyboard.type(text);
      return;
    }
    const keys = await keysOfPad(field.page());
    const tap = async (name: string) => {
      const key = keys[name];
      if (key === undefined) throw new Error(`no key "${name}" on the pad`);
      await field.page().touchscreen.tap(...key);
    };
    if (text in keys) return tap(text);
    // What stands there is taken whole by the tap.
    if ((await field.inputValue()) !== '') await tap('rub out');
    const [, sign = '', minus = '', digits = '', unit = ''] =
      /^([<>]?) ?\+?([−-]?)([\d.,]*) ?(\D*)$/u.exec(text) ?? [];
    // First what stands before the figure: with its last digit the pad may go on to the next.
    if (minus !== '') await tap('change plus and minus');
    if (sign !== '') await tap('> or <');
    for (const digit of digits) await tap(KEY_NAMES[digit] ?? digit);
    if (unit !== '')
      await finger.tick(
        field.locator('xpath=ancestor::form').getByRole('radio', { name: unit, exact: true }),
      );
  },
  // The list that comes up for a tap is the system's own and no part of the page: the tap must reach it.
  choose: async (list, words) => {
    await list.tap({ trial: true });
    await list.selectOption(words);
  },
};

/**
 * How many stops of Tab lie between what has the focus and the target, less than none backwards; none where the target
 * or one of the same choices has it, and then whether it can be seen. In one go: the page is asked often.
 */
const wayTo = (target: Locator): Promise<{ stops: number; focus: string; isSeen: boolean }> =>
  target.evaluate((element) => {
    const group = (one: Element): string | null =>
      one instanceof HTMLInputElement && one.type === 'radio' ? one.name : null;
    const name = group(element);
    const at = document.activeElement as HTMLElement;
    if (at === element || (name !== null && group(at) === name)) {
      const drawn = at.closest('label') ?? at;
      const box = drawn.getBoundingClientRect();
      const on = document.elementFromPoint(box.x + box.width / 2, box.y + Math.min(box.height / 2, 20));
      return { stops: 0, focus: drawn.textContent, isSeen: box.top >= -0.5 && drawn.contains(on) };
    }
    const within = document.querySelector('dialog[open]') ?? document.body;
    const all = [
      ...within.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex]',
      ),
    ].filter(
      (one) =>
        one.tabIndex >= 0 && !one.matches(':disabled') && one.checkVisibility({ visibilityProperty: true }),
    );
    // Of a group of choices one is a stop: the taken one, else the first.
    const stopOf = new Map<string, HTMLElement>();
    for (const one of all) {
      const of = group(one);
      if (of !== null && (!stopOf.has(of) || (one as HTMLInputElement).checked)) stopOf.set(of, one);
    }
    const stops = all.filter((one) => {
      const of = group(one);
      return of === null || stopOf.get(of) === one;
    });
    const wanted = stops.findIndex((one) => one === element || (name !== null && group(one) === name));
    // A box that scrolls is a stop of the browser's own: only its place among the others is known.
    const from = stops.includes(at)
      ? stops.indexOf(at)
      : stops.filter((one) => (one.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0)
          .length - 0.5;
    return { stops: wanted - from, focus: at.textContent, isSeen: true };
  });

/** Farther than any two stops of a page are apart. */
const FAR = 400;

/** Tab or Shift and Tab until it has the focus, where it must be seen. */
async function goTo(target: Locator): Promise<void> {
  for (let pressed = 0; pressed < FAR; ) {
    const { stops, focus, isSeen } = await wayTo(target);
    if (!isSeen) throw new Error(`the focus cannot be seen: “${focus}”`);
    if (stops === 0) return;
    const times = Math.ceil(Math.abs(stops));
    await repeat(target.page(), stops < 0 ? 'Shift+Tab' : 'Tab', times);
    pressed += times;
  }
  throw new Error(`Tab does not come to ${target}`);
}

/** A key held down until it has come so many times, and what is held with it; then let go. */
async function repeat(page: Page, key: string, times: number): Promise<void> {
  if (times === 0) return;
  const held = key.split('+');
  const last = held.pop() ?? '';
  for (const one of held) await page.keyboard.down(one);
  for (let left = times; left > 0; left--) await page.keyboard.down(last);
  for (const one of [last, ...held]) await page.keyboard.up(one);
}

/** By Tab, arrows, Enter, Space and what is typed; nothing is pointed at. */
export const keys: Hands = {
  press: async (what) => {
    await goTo(what);
    await what.page().keyboard.press('Enter');
  },
  tick: async (what) => {
    await goTo(what);
    const from = await what.evaluate((element) => {
      const at = document.activeElement as HTMLInputElement;
      if (at.type !== 'radio') return 0;
      const mates = [...document.querySelectorAll<HTMLInputElement>('input[type="radio"]')].filter(
        ({ name, disabled }) => name === at.name && !disabled,
      );
      return mates.indexOf(element as HTMLInputElement) - mates.indexOf(at);
    });
    if (from === 0 && !(await what.isChecked())) await what.page().keyboard.press('Space');
    else await repeat(what.page(), from < 0 ? 'ArrowUp' : 'ArrowDown', Math.abs(from));
    if (!(await what.isChecked())) throw new Error(`no key takes ${what}`);
  },
  type: async (field, text) => {
    await goTo(field);
    await field.page().keyboard.press('ControlOrMeta+a');
    await field.page().keyboard.type(text);
  },
  end: async (field) => {
    await goTo(field);
    await field.page().keyboard.press('Enter');
  },
  choose: async (list, words) => {
    await goTo(list);
    const steps = await list.evaluate((element, wordsOrValue) => {
      const { options, selectedIndex } = element as HTMLSelectElement;
      const wanted = [...options].findIndex(
        ({ label, value }) => label === wordsOrValue || value === wordsOrValue,
      );
      const [low, high] = [wanted, selectedIndex].toSorted((x, y) => x - y);
      const between = [...options].slice(low, high).filter(({ disabled }) => !disabled).length;
      return wanted < 0 ? null : wanted < selectedIndex ? -between : between;
    }, words);
    if (steps === null) throw new Error(`no "${words}" in ${list}`);
    // Not held down: some Chromium moves a closed list once for each press, however long that lasts.
    for (let left = Math.abs(steps); left > 0; left--)
      await list.page().keyboard.press(steps < 0 ? 'ArrowUp' : 'ArrowDown');
    // A choice may change the list's own label, or take the list away: then the focus is on another.
    const [label, value] = await list.page().evaluate(() => {
      const at = document.activeElement;
      if (!(at instanceof HTMLSelectElement)) return ['nothing: the focus is lost'];
      return [at.selectedOptions[0]?.label, at.value];
    });
    const isThere = (await list.count()) > 0;
    if (isThere && label !== words && value !== words)
      throw new Error(`keys took "${label}", not "${words}"`);
    if (!isThere && label?.startsWith('nothing')) throw new Error(label);
  },
};

const used = new WeakMap<Page, Hands>();

/** From now on this page is used so. */
export const putHands = (page: Page, hands: Hands): void => {
  used.set(page, hands);
};

const handsAt = (what: Locator): Hands => used.get(what.page()) ?? mouse;

export const press = (what: Locator): Promise<void> => handsAt(what).press(what);
export const tick = (what: Locator): Promise<void> => handsAt(what).tick(what);
export const type = (field: Locator, text: string): Promise<void> => handsAt(field).type(field, text);

/** What stands there already is left alone, as anybody does. */
export async function take(list: Locator, words: string): Promise<void> {
  const [label, value] = await list.evaluate((element) => {
    const { selectedOptions, value: now } = element as HTMLSelectElement;
    return [selectedOptions[0]?.label, now];
  });
  if (words !== label && words !== value) await handsAt(list).choose(list, words);
}
export const end = (field: Locator, button: Locator): Promise<void> => handsAt(field).end(field, button);
