// On a phone figures are typed on the page's own key pad; the system's keyboard never covers a field.

import type { Locator, Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import type { Measurement } from '../../src/bench/operation.ts';
import { openBuiltPage } from './builtPage.ts';
import { finger, mouse } from './hands.ts';
import {
  answerAll,
  begin,
  choose,
  inHand,
  judgeAll,
  later,
  measure,
  setUp,
  sitDown,
  toJudge,
  toPredict,
} from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

test('a reading typed on the page’s own keys', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await begin(page, 'Fen Barn');
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).click();
  await measure(page, {
    op: 'measure',
    quantity: 'voltage',
    between: ['outlet.L1', 'outlet.N'],
    tool: 'two-pole',
  });
  const pad = page.getByRole('region', { name: 'Key pad' });
  const key = (name: string) => pad.getByRole('button', { name, exact: true });
  await pad.getByText('it shows').waitFor();
  const field = page.getByLabel('it shows');
  expect(await field.getAttribute('inputmode')).toBe('none');

  for (const name of ['1', '2', '3', 'rub out', 'point', '5', 'change plus and minus'])
    await key(name).click();
  expect(await field.inputValue()).toBe('−12.5');
  await key('change plus and minus').click();
  expect(await field.inputValue()).toBe('12.5');
  const sign = () =>
    page.getByRole('group', { name: 'sign', includeHidden: true }).locator('input:checked').inputValue();
  for (const expected of ['>', '<', '']) {
    await key('> or <').click();
    expect(await sign()).toBe(expected);
    expect(await field.inputValue()).toBe('12.5');
  }
  await key('no reading').click();
  expect(await sign()).toBe('no-reading');
  await key('> or <').click();
  // A keyboard that is plugged in types into the same field.
  await page.keyboard.type('4,5');
  expect(await field.inputValue()).toBe('4,5');

  // The field stands clear of the keys, and no key is smaller than a finger.
  const at = await field.boundingBox();
  const top = (await pad.boundingBox())?.y ?? 0;
  expect((at?.y ?? 0) + (at?.height ?? 0)).toBeLessThan(top);
  for (const button of await pad.getByRole('button').all()) {
    const box = await button.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
  }

  // Reading, field, unit and pad are all in sight.
  await page.getByRole('radio', { name: 'V', exact: true }).click();
  await field.focus();
  for (const what of [
    page.locator('.shown').first(),
    field,
    page.getByRole('group', { name: 'unit' }),
    pad,
  ]) {
    const box = await what.boundingBox();
    expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(740);
  }
  await key('Write > 4,5 V').click();
  await page
    .getByRole('region', { name: 'readings' })
    .getByText(/^> 4\.5/)
    .waitFor();
  await expect.poll(() => pad.isVisible()).toBe(false);
  const { attempt } = await inHand(page, 3);
  expect(attempt.entries.at(-1)).toMatchObject({
    kind: 'observation',
    value: 4.5,
    qualifier: '>',
    unit: 'V',
  });
});

test('on a desk there is no pad', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 1280, height: 800 });
  await begin(page, 'Fen Barn');
  await choose(page, 'No vehicle (A)');
  const field = page.getByLabel('then wait, s');
  await field.focus();
  expect(await field.getAttribute('inputmode')).toBe('decimal');
  expect(await page.getByRole('region', { name: 'Key pad' }).count()).toBe(0);
});

/** Neither the page nor a step of it is wider than its place, and the page is no taller than the window. */
async function fits(page: Page, step: string): Promise<void> {
  const beyond = await page.evaluate(() => {
    const all = [
      document.documentElement,
      ...document.querySelectorAll('.step-body, .bench-drawing, .bar, .pad'),
    ];
    const wide = all
      .filter((one) => one.scrollWidth > one.clientWidth + 1)
      .map((one) => one.className || 'page');
    const { scrollHeight, clientHeight } = document.documentElement;
    return scrollHeight > clientHeight ? [...wide, 'page taller than the window'] : wide;
  });
  expect(beyond, step).toEqual([]);
}

/** All of it is in the window, and nothing lies over it. */
async function inView(page: Page, what: Locator, name: string): Promise<void> {
  const seen = await what.first().evaluate((element) => {
    const { left, top, right, bottom } = element.getBoundingClientRect();
    const isInside = left >= -0.5 && top >= -0.5 && right <= innerWidth + 0.5 && bottom <= innerHeight + 0.5;
    const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return isInside && (element.contains(over) || over?.contains(element) === true);
  });
  expect(seen, `${name} at ${page.viewportSize()?.width} px`).toBe(true);
}

const READINGS: readonly Measurement[] = [
  { op: 'measure', quantity: 'pilot' },
  { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'], tool: 'two-pole' },
];

test.each([
  [360, 740],
  [740, 360],
  [820, 1180],
  [1280, 800],
])(
  '%d × %d: every step fits, and a reading stands above its field, its units and the pad',
  async (width, height) => {
    const touch = width < 1000;
    const page = await sitDown(opened.browser, opened.url, {
      width,
      height,
      touch,
      hands: touch ? finger : mouse,
    });
    await begin(page, 'Harbour Mews, house 4');
    await choose(page, 'No vehicle (A)');
    await fits(page, 'set up');
    await toPredict(page);
    await fits(page, 'predict');
    await page.getByRole('button', { name: 'Back to the set-up' }).click();
    await answerAll(page);
    await fits(page, 'how sure');
    await page.getByRole('button', { name: /^fairly sure/ }).click();
    await page.getByRole('heading', { name: 'Measure', level: 3 }).waitFor();
    await fits(page, 'measure');
    await inView(
      page,
      page.getByRole('radio', { name: 'two-pole detector, voltage', exact: true }),
      'detector',
    );
    for (const m of READINGS) {
      await measure(page, m);
      const form = page.getByRole('form', { name: /^Write down/ });
      const field = form.getByRole('textbox').first();
      await field.focus();
      if (touch) await page.getByRole('region', { name: 'Key pad' }).waitFor();
      await fits(page, `a reading, ${m.quantity}`);
      const parts = {
        reading: form.locator('.shown'),
        field,
        unit: form.getByRole('group', { name: 'unit' }),
        ...(touch ? { pad: page.getByRole('region', { name: 'Key pad' }) } : {}),
      };
      for (const [name, part] of Object.entries(parts)) await inView(page, part, `${name}, ${m.quantity}`);
      // It is left for later with the pad up: it has the button as well.
      if (touch)
        await page.getByRole('region', { name: 'Key pad' }).getByRole('button', { name: 'Later' }).click();
      else await later(page);
      await page.getByRole('button', { name: 'Do…' }).waitFor();
      await expect.poll(() => page.getByRole('region', { name: 'Key pad' }).count()).toBe(0);
      await fits(page, `after a reading, ${m.quantity}`);
    }
    // The instrument with what it shows beside it is in sight, below the terminals that its leads are on.
    await inView(page, page.locator('.plan .reading text').first(), 'the reading on the drawing');
    await toJudge(page);
    await fits(page, 'judge');
    await page.getByRole('button', { name: 'Back to the readings' }).click();
    await judgeAll(page, 'did');
    await page.getByRole('heading', { name: 'What was true' }).waitFor();
    await fits(page, 'told');
    await page.context().close();
  },
);

test('after the lock a hand on the drawing acts at once', async () => {
  const page = await sitDown(opened.browser, opened.url, {
    width: 360,
    height: 740,
    touch: true,
    hands: finger,
  });
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, 'No vehicle (A)');
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).click();
  const plug = page.getByRole('button', { name: 'plug: out', exact: true });
  const { width, height } = (await plug.boundingBox()) ?? { width: 0, height: 0 };
  expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  await plug.tap({ position: { x: width - 4, y: height - 4 } });
  await page.getByRole('button', { name: 'plug: in', exact: true }).waitFor();
  await page.getByRole('button', { name: /^vehicle stand-in: / }).tap();
  await page
    .getByRole('group', { name: 'stand-in', exact: true })
    .getByRole('button', { name: /^C: / })
    .tap();
  await expect
    .poll(async () => (await inHand(page, 3)).attempt.entries.slice(-2))
    .toMatchObject([
      { kind: 'operation', operation: { op: 'vehicle', plugged: true, state: 'B' } },
      { kind: 'operation', operation: { op: 'vehicle', state: 'C' } },
    ]);
  await page.context().close();
});
