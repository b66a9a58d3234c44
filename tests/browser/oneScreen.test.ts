// One screen a step, on a phone upright and lying, on a tablet and on a desk: neither page nor drawing scrolls, and what
// is looked at while something is pressed or typed is in sight with it. One person goes through a test; each step is
// looked at in every size.

import type { Locator, Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { openBuiltPage } from './builtPage.ts';
import { finger } from './hands.ts';
import {
  answerAll,
  begin,
  choose,
  judgeAll,
  later,
  measure,
  sitDown,
  toJudge,
  toPredict,
} from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

const PHONE = { width: 360, height: 740 };
const SIZES = [
  PHONE,
  { width: 740, height: 360 },
  { width: 820, height: 1180 },
  { width: 1280, height: 800 },
];
/** WCAG 2.2, 2.5.5 asks for 44 CSS pixels. */
const FINGER = 44;

/** What does not fit: the page and its drawing both ways; a step, its name, its labels and its bar in their width. */
const beyond = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const over = (element: Element, both: boolean) =>
      element.scrollWidth > element.clientWidth + 1 ||
      (both && element.scrollHeight > element.clientHeight + 1);
    const found = (selectors: string, both: boolean) =>
      [...document.querySelectorAll(selectors)]
        .filter((one) => one.checkVisibility() && over(one, both))
        .map((one) => `${one.className || 'page'}: ${one.scrollWidth} × ${one.scrollHeight}`);
    return [
      ...found('html, .bench-drawing, .frame-inner', true),
      ...found('.step-title h2, .step-body, .step-body .in-row > label, .bar, .pad', false),
    ];
  });

/** Which of them are not wholly in the window, or lie under something else. */
const outOfView = (what: Locator): Promise<string[]> =>
  what.evaluateAll((elements) =>
    elements
      .filter((element) => {
        const { left, top, right, bottom } = element.getBoundingClientRect();
        const isInside =
          left >= -0.5 && top >= -0.5 && right <= innerWidth + 0.5 && bottom <= innerHeight + 0.5;
        const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
        const isDrawn = element instanceof SVGElement;
        // A drawing lies under its own buttons.
        const isFree = isDrawn
          ? over?.closest('.plan') === element.closest('.plan')
          : element.contains(over) || over?.contains(element) === true;
        return !isInside || !isFree;
      })
      .map((element) => element.getAttribute('aria-label') ?? element.textContent),
  );

type Seen = Readonly<Record<string, Locator>>;
interface Written extends Seen {
  readonly field: Locator;
}

/** A window of another size tells the page of it with its next picture. */
const drawnAnew = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 30))));

/** Looks at a step in every size; it stays as it is. A field is gone to anew: nobody's window grows while they type. */
async function lookedAt(page: Page, step: string, seen: Seen = {}, field?: Locator): Promise<void> {
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await field?.evaluate((one) => {
      one.blur();
      one.focus();
    });
    await drawnAnew(page);
    const where = `${step}, ${size.width} × ${size.height}`;
    expect(await beyond(page), where).toEqual([]);
    for (const [name, what] of Object.entries(seen)) {
      expect(await what.count(), `${name}: ${where}`).toBeGreaterThan(0);
      expect(await outOfView(what), `${name}: ${where}`).toEqual([]);
    }
  }
  await page.setViewportSize(PHONE);
}

/** The form of a reading, with its field in hand: what is shown, the field and the keys. */
async function writing(page: Page, step: string, more: (form: Locator) => Written): Promise<void> {
  const form = page.getByRole('form', { name: /^Write down/ });
  const pad = page.getByRole('region', { name: 'Key pad' });
  await pad.waitFor();
  const seen = more(form);
  await lookedAt(page, step, { ...seen, pad }, seen.field);
}

const shownAndField = (form: Locator): Written => ({
  reading: form.locator('.shown').first(),
  field: form.getByRole('textbox').first(),
  unit: form.getByRole('group', { name: 'unit' }),
});

const toPart = (page: Page, part: string) =>
  page
    .getByRole('group', { name: 'part shown' })
    .getByRole('radio', { name: part, exact: true })
    .check({ force: true });

/** Terminals a finger apart on whatever is touched; on a desk there is a mouse, and the list. */
async function fingerApart(page: Page): Promise<void> {
  for (const size of SIZES.filter(({ width }) => width < 1280)) {
    await page.setViewportSize(size);
    await drawnAnew(page);
    const boxes = await page.locator('.terminal-button').evaluateAll((buttons) =>
      buttons.map((button) => {
        const { x, y, width, height } = button.getBoundingClientRect();
        return { x: x + width / 2, y: y + height / 2, size: Math.min(width, height) };
      }),
    );
    for (const [i, one] of boxes.entries()) {
      expect(one.size).toBeGreaterThanOrEqual(FINGER);
      for (const other of boxes.slice(i + 1))
        expect(Math.hypot(one.x - other.x, one.y - other.y), `at ${size.width} px`).toBeGreaterThanOrEqual(
          FINGER - 0.5,
        );
    }
  }
  await page.setViewportSize(PHONE);
}

test.each([
  ['one phase, TT', 'Fen Barn'],
  ['three phases, TN-S', 'Foundry Yard, bay 3'],
])('%s: every step is one screen', async (_, title) => {
  const page = await sitDown(opened.browser, opened.url, { ...PHONE, touch: true, hands: finger });
  await begin(page, title, 2);
  await lookedAt(page, 'choosing');
  await choose(page, 'No vehicle (A)');
  await lookedAt(page, 'set up', {
    hands: page.locator('.hand-button'),
    main: page.getByRole('button', { name: 'Predict', exact: true }),
  });
  await toPredict(page);
  await lookedAt(page, 'predict', {
    line: page.locator('.statement-list [aria-current]'),
    answers: page.locator('.answer-keys > *'),
  });
  await page.getByRole('button', { name: 'Back to the set-up' }).tap();
  await answerAll(page);
  await lookedAt(page, 'how sure', { answers: page.locator('.bar button') });
  await page.getByRole('button', { name: /^fairly sure/ }).tap();
  await page.getByRole('heading', { name: 'Measure', level: 3 }).waitFor();

  const terminals = page.locator('.terminal-button');
  const tiles = page.locator('.tile');
  for (const part of ['origin', 'unit', 'outlet']) {
    await toPart(page, part);
    await lookedAt(page, `measure, ${part}`, { terminals, tiles });
    await fingerApart(page);
  }

  await measure(page, {
    op: 'measure',
    quantity: 'voltage',
    between: ['outlet.L1', 'outlet.PE'],
    tool: 'two-pole',
  });
  await writing(page, 'a reading', shownAndField);
  await later(page);
  // The instrument with what it shows, and the leads in whichever part they are seen from.
  for (const part of ['origin', 'unit', 'outlet']) {
    await toPart(page, part);
    await page.locator('.step-body').evaluate((body) => body.scrollTo(0, 0));
    await lookedAt(page, `after a reading, ${part}`, {
      terminals,
      meter: page.locator('.plan .instrument'),
      reading: page.locator('.plan .reading text'),
      leads: page.locator('.plan :is(.lead, .lead-disc)'),
      tiles,
      settings: page.getByRole('group', { name: 'readings on' }),
      main: page.getByRole('button', { name: 'Read', exact: true }),
    });
  }

  // Like readings, a line each: the first of them and the last.
  await page.getByRole('radio', { name: 'every pair', exact: true }).tap();
  await page.getByRole('button', { name: /^Read \d+ pairs$/ }).tap();
  const row = (form: Locator, which: 'first' | 'last'): Written => {
    const line = form
      .getByRole('row')
      .filter({ has: page.getByRole('textbox') })
      [which]();
    return { reading: line.locator('.shown'), field: line.getByRole('textbox') };
  };
  for (const which of ['first', 'last'] as const) {
    const { field } = row(page.getByRole('form', { name: /^Write down/ }), which);
    await field.focus();
    await writing(page, `rows, the ${which}`, (form) => row(form, which));
  }
  await later(page);

  await measure(page, { op: 'measure', quantity: 'pilot' });
  await writing(page, 'a pilot', shownAndField);
  await later(page);

  await measure(page, {
    op: 'measure',
    quantity: 'residual',
    at: 'outlet',
    line: 'L1',
    waveform: 'sinusoidal',
    mode: 'ramp',
  });
  await writing(page, 'a choice', (form) => ({
    reading: form.locator('.shown').first(),
    field: form.getByRole('textbox').first(),
    choice: form.getByRole('group', { name: /^what tripped/ }).first(),
  }));
  await later(page);

  await toJudge(page);
  await lookedAt(page, 'judge', { bar: page.locator('.bar button') });
  await page.getByRole('button', { name: 'Back to the readings' }).tap();
  await judgeAll(page, 'did');
  await page.getByRole('heading', { name: 'What was true' }).waitFor();
  await lookedAt(page, 'told', { bar: page.locator('.bar button') });
});

test('the longest name of a test is whole, with all that is pressed in sight', async () => {
  const { scenario } = scenarioNamed('harbour-mews');
  const [longest = ''] = allowedActions(scenario)
    .map(({ id }) => testTitle(id))
    .toSorted((a, b) => b.length - a.length);
  const page = await sitDown(opened.browser, opened.url, { ...PHONE, touch: true, hands: finger });
  await begin(page, scenario.title, 2);
  await choose(page, longest);
  const name = page.getByRole('heading', { level: 2, name: longest, exact: true });
  await toPredict(page);
  await lookedAt(page, 'predict', {
    name,
    line: page.locator('.statement-list [aria-current]'),
    answers: page.locator('.answer-keys > *'),
  });
  await page.getByRole('button', { name: 'Back to the set-up' }).tap();
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).tap();
  await page.getByRole('heading', { name: 'Measure', level: 3 }).waitFor();
  for (const part of ['origin', 'unit', 'outlet']) {
    await toPart(page, part);
    await lookedAt(page, `measure, ${part}`, {
      name,
      terminals: page.locator('.terminal-button'),
      tiles: page.locator('.tile'),
    });
  }
});
