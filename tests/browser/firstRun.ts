// Four minutes at the beginning, as somebody who has never seen the page: a bench that is handed over, two tests on
// it and a third on another unit, whose line pole is welded.

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { later, measure, setUp, toJudge, toPredict, writeDown } from './trainee.ts';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function answer(page: Page, ...answers: readonly RegExp[]): Promise<void> {
  for (const words of answers) await button(page, words).click();
  await button(page, /^would sign for it/).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
}

/** Each line's answer, in the order in which the page happens to ask. */
async function linesAsked(page: Page): Promise<readonly string[]> {
  await toPredict(page);
  const list = page.getByRole('list', { name: 'Lines to predict' });
  await list.waitFor();
  return list.getByRole('listitem').allInnerTexts();
}

const SHOULD = /^should$/;
const SHOULD_NOT = /^should not$/;

/** From nothing known, on the first screen, to a welded pole, and on to a whole job. */
export async function throughFirstRun(page: Page): Promise<void> {
  await page.getByRole('link', { name: /^Start here/ }).click();
  await page.getByText('Training only').first().waitFor();
  await button(page, 'Take the bench over').click();

  // The bench stands in B: two lines, one reading.
  await page.getByRole('heading', { name: 'Vehicle connected (B)' }).waitFor();
  const asked = await linesAsked(page);
  expect(asked).toHaveLength(2);
  await answer(page, ...asked.map((text) => (text.includes('more than the least') ? SHOULD_NOT : SHOULD)));
  await measure(page, { op: 'measure', quantity: 'pilot' });
  await writeDown(page, undefined);
  // The unit does each as it was answered.
  await toJudge(page);
  for (const text of asked) {
    const did = text.includes('more than the least') ? 'it did not' : 'it did';
    const [, words = ''] = /(?:unit|circuit) (.+)$/s.exec(text.split('\n')[0] ?? '') ?? [];
    await page
      .getByRole('group', { name: words.trim() })
      .getByRole('radio', { name: did, exact: true })
      .click();
  }
  await button(page, 'Finish test').click();
  await button(page, 'Next test').click();

  // State C: the contactor is heard.
  await page.getByRole('heading', { name: 'Vehicle asks (C)' }).waitFor();
  await setUp(page, { 'stand-in': 'C: asks, 1.3 kΩ added', 'then wait, s': '3' });
  await answer(
    page,
    ...(await linesAsked(page)).map((text) => (text.includes('between') ? SHOULD_NOT : SHOULD)),
  );
  await page.getByText('heard: contactor closes').first().waitFor();
  await toJudge(page);
  for (const line of await page.getByRole('radio', { name: 'not shown', exact: true }).all())
    await line.click();
  await button(page, 'Finish test').click();
  await button(page, 'Next test').click();

  // Another unit, in A: next to nothing between line and neutral, all of it to PE.
  await page.getByRole('heading', { name: 'No vehicle (A)' }).waitFor();
  await answer(
    page,
    ...(await linesAsked(page)).map((text) => (text.includes('pole') ? /^can’t tell/ : SHOULD_NOT)),
  );
  const shown = async (second: 'outlet.N' | 'outlet.PE') => {
    await measure(page, {
      op: 'measure',
      quantity: 'voltage',
      tool: 'two-pole',
      between: ['outlet.L1', second],
    });
    const [text = ''] = await page.getByRole('form', { name: /two-pole detector/ }).allInnerTexts();
    await later(page);
    return Number(/(\d+)\s?V/u.exec(text)?.[1]);
  };
  expect(await shown('outlet.N')).toBeLessThan(5);
  expect(await shown('outlet.PE')).toBeGreaterThan(230);
  await toJudge(page);
  await page.getByRole('radio', { name: 'it did', exact: true }).click();
  await button(page, 'Finish test').click();
  await button(page, 'Next test').click();

  await page.getByRole('heading', { name: 'What the third test showed' }).waitFor();
  await button(page, 'Now a whole job, from isolation').click();
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  await expect.poll(() => page.getByText('Harbour Mews, house 4').count()).toBeGreaterThan(0);
}
