// On a phone figures are typed on the page's own key pad; the system's keyboard never covers a field.

import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { finger } from './hands.ts';
import { act, answerAll, begin, choose, inHand, measure, setUp, sitDown } from './trainee.ts';

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

test.each([
  ['a reading', 'Write 0 V', 1],
  ['rows', 'Write them down', 3],
])('%s, written by two quick presses, stands once in the record', async (what, key, count) => {
  const page = await sitDown(opened.browser, opened.url, { width: 1280, height: 800 });
  await begin(page, 'Fen Barn');
  await choose(page, 'No vehicle (A)');
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).click();
  if (what === 'rows') await act(page, 'prove dead at the outlet');
  else
    await measure(page, {
      op: 'measure',
      quantity: 'voltage',
      between: ['outlet.L1', 'outlet.N'],
      tool: 'two-pole',
    });
  const form = page.getByRole('form', { name: /^Write down/ });
  await form.waitFor();
  for (const field of await form.getByRole('textbox').all()) await field.fill('0 V');
  await form.getByRole('button', { name: key, exact: true }).evaluate((button: HTMLButtonElement) => {
    button.click();
    button.click();
  });
  await form.waitFor({ state: 'detached' });
  // The prediction, the act that gave them, and what was written of each.
  const { entries } = (await inHand(page, 2 + count)).attempt;
  expect(entries.filter(({ kind }) => kind === 'observation')).toHaveLength(count);
});

test('a key that comes before the pad has turned to the next field types into that one', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await begin(page, 'Fen Barn');
  await choose(page, 'No vehicle (A)');
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).click();
  await act(page, 'prove dead at the outlet');
  const fields = page.getByRole('form', { name: 'Write down every pair' }).getByRole('textbox');
  const pad = page.getByRole('region', { name: 'Key pad' });
  await pad.getByText(/^L1–N/).waitFor();
  const press = (name: string) => pad.getByRole('button', { name, exact: true }).click();
  await press('7');
  await fields.first().focus();
  // Nothing is drawn in between: a slow phone and a quick thumb.
  await pad.evaluate((keys) => {
    document.querySelectorAll<HTMLInputElement>('form .figure-input')[2]?.focus();
    [...keys.querySelectorAll('button')].find(({ textContent }) => textContent === '5')?.click();
  });
  await expect.poll(() => fields.nth(2).inputValue()).toBe('5');
  expect(await fields.first().inputValue()).toBe('7');
});

test('the pad over an instrument’s settings goes on to what the step’s own button does', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await begin(page, 'Fen Barn');
  await choose(page, 'No vehicle (A)');
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).click();
  await page.getByRole('button', { name: /^\d+ more$/ }).click();
  for (const name of ['residual current', 'a.c.', 'fixed'])
    await page.getByRole('radio', { name, exact: true }).check();
  await page.getByLabel(/^fixed at/).click();
  const pad = page.getByRole('region', { name: 'Key pad' });
  for (const name of ['1', '5', 'Check leads']) await pad.getByRole('button', { name, exact: true }).click();
  await page.getByRole('button', { name: /^Apply 15 mA/ }).waitFor();
  await expect.poll(() => pad.isVisible()).toBe(false);
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
});
