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
    // What stands there is taken whole by the tap.
    if ((await field.inputValue()) !== '') await tap('rub out');
    const [, sign = '', minus = '', digits = '', unit = ''] =
      /^([<>]?) ?\+?([−-]?)([\d.,]*) ?(\D*)$/u.exec(text) ?? [];
    for (const digit of digits) await tap(KEY_NAMES[digit] ?? digit);
    if (minus !== '') await tap('change plus and minus');
    if (sign !== '') await tap('> or <');
    if (unit !== '')
      await finger.choose(field.locator('xpath=ancestor::form').getByLabel('unit', { exact: true }), unit);
  },
  // The list that comes up for a tap is the system's own and no part of the page: the tap must reach it.
  choose: async (list, words) => {
    await list.tap({ trial: true });
    await list.selectOption(words);
  },
};

/** What has the focus, told to the page's own script: how many stops of Tab lie between it and something else. */
const stopsTo = (target: Locator): Promise<number> =>
  target.evaluate((element) => {
    const within = document.querySelector('dialog[open]') ?? document.body;
    const all = [
      ...within.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex]',
      ),
    ].filter(
      (at) =>
        at.tabIndex >= 0 && !at.matches(':disabled') && at.checkVisibility({ visibilityProperty: true }),
    );
    const group = (at: Element): string | null =>
      at instanceof HTMLInputElement && at.type === 'radio' ? at.name : null;
    /** Of a group of choices one is a stop: the taken one, else the first. */
    const stops = all.filter((at) => {
      const name = group(at);
      if (name === null) return true;
      const mates = all.filter((mate) => group(mate) === name) as HTMLInputElement[];
      return at === (mates.find(({ checked }) => checked) ?? mates[0]);
    });
    const name = group(element);
    const wanted = stops.findIndex((at) => at === element || (name !== null && group(at) === name));
    const at = document.activeElement as HTMLElement;
    if (stops.includes(at)) return wanted - stops.indexOf(at);
    // A box that scrolls is a stop of the browser's own: only its place among the others is known.
    const before = stops.filter(
      (stop) => (stop.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
    );
    return wanted < before.length ? wanted - before.length : wanted - before.length + 1;
  });

/** Whether it has the focus, or one of the same choices has. */
const isReached = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => {
    const at = document.activeElement;
    return (
      at === element ||
      (element instanceof HTMLInputElement &&
        at instanceof HTMLInputElement &&
        element.type === 'radio' &&
        at.type === 'radio' &&
        at.name === element.name)
    );
  });

/** Farther than any two stops of a page are apart. */
const FAR = 400;

/** Tab or Shift and Tab until it has the focus, where it must be seen. */
async function goTo(target: Locator): Promise<void> {
  await target.waitFor();
  const { keyboard } = target.page();
  for (let pressed = 0; !(await isReached(target)); ) {
    if (pressed > FAR) throw new Error(`Tab does not come to ${target}`);
    const stops = await stopsTo(target);
    const key = stops < 0 ? 'Shift+Tab' : 'Tab';
    for (let left = Math.max(1, Math.abs(stops)); left > 0; left--, pressed++) await keyboard.press(key);
  }
  const seen = await target.evaluate(() => {
    const at = document.activeElement as HTMLElement;
    const drawn = at.closest('label') ?? at;
    const box = drawn.getBoundingClientRect();
    const on = document.elementFromPoint(box.x + box.width / 2, box.y + Math.min(box.height / 2, 20));
    return { focus: drawn.textContent, inView: box.top >= -0.5, onTop: drawn.contains(on) };
  });
  if (!seen.inView || !seen.onTop) throw new Error(`the focus cannot be seen: ${JSON.stringify(seen)}`);
}

async function repeat(page: Page, key: string, times: number): Promise<void> {
  for (let left = times; left > 0; left--) await page.keyboard.press(key);
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
    await repeat(list.page(), steps < 0 ? 'ArrowUp' : 'ArrowDown', Math.abs(steps));
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
export const useHands = (page: Page, hands: Hands): void => {
  used.set(page, hands);
};

/** Arrows pass over choices on their way: by keys nothing is over before a button says so. */
export const usesKeys = (page: Page): boolean => used.get(page) === keys;

const handsAt = (what: Locator): Hands => used.get(what.page()) ?? mouse;

export const press = (what: Locator): Promise<void> => handsAt(what).press(what);
export const tick = (what: Locator): Promise<void> => handsAt(what).tick(what);
export const type = (field: Locator, text: string): Promise<void> => handsAt(field).type(field, text);
export const take = (list: Locator, words: string): Promise<void> => handsAt(list).choose(list, words);
export const end = (field: Locator, button: Locator): Promise<void> => handsAt(field).end(field, button);
