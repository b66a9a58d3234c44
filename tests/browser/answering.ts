/** A question is answered, whatever it asks. */
import type { Page } from 'playwright-core';

const button = (page: Page, name: RegExp) => page.getByRole('button', { name });

/** An answer, whichever, by keys and names alone, up to how sure. */
export async function answer(page: Page): Promise<void> {
  const field = page.getByRole('textbox', { name: 'your answer' });
  const slider = page.getByRole('slider', { name: /^your touch/ });
  const terminals = page.getByRole('group', { name: /^Terminals/ });
  if ((await field.count()) > 0) {
    await field.fill('3');
    const [unit] = await page.getByRole('group', { name: 'unit' }).getByRole('radio').all();
    await unit?.check();
    await page
      .getByRole('button', { name: /^Answer/ })
      .filter({ visible: true })
      .first()
      .click();
  } else if ((await slider.count()) > 0) {
    await slider.press('ArrowRight');
  } else if ((await terminals.count()) > 0) {
    for (const terminal of (await terminals.getByRole('button').all()).slice(0, 2))
      if ((await button(page, /^guessing/).count()) === 0) await terminal.click();
  } else {
    const next = page.getByRole('group', { name: /^(your answer|what comes next)$/ }).getByRole('button');
    while ((await next.count()) > 0) await next.and(page.locator(':enabled')).first().click();
  }
}
