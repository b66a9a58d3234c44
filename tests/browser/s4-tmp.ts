export default async ({ browser, url, shot }: any) => {
  const { printed } = await import('/work/wt/desk/tests/browser/print-tmp.ts');
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.on('pageerror', (e: any) => console.log('ERR', e.message));
  await page.goto(url + '#/collect');
  await page.locator('input[type=file][multiple]').setInputFiles(['/tmp/drop/own.json', '/tmp/drop/30.zip']);
  await page.waitForTimeout(3000);
  await page.setViewportSize({ width: 1280, height: 800 });
  await shot(page, 'class');
  await page.setViewportSize({ width: 360, height: 740 });
  await shot(page, 'class-phone');
  await page.setViewportSize({ width: 1280, height: 800 });
  await printed(browser, page, url, 'class', () => page.getByRole('button', { name: 'Print' }).click());
  await page.locator('table.class tbody tr').first().getByRole('link').first().click();
  await page.locator('.replay').waitFor();
  await page.waitForTimeout(1500);
  await page
    .locator('form')
    .filter({ hasText: 'set this gate aside' })
    .first()
    .getByRole('textbox')
    .fill('agreed after a talk at the bench');
  await page.getByRole('button', { name: 'Set aside' }).first().click();
  await page.getByText('The gate is set aside.').waitFor();
  await page.getByRole('textbox', { name: 'comment' }).fill('Ask about the pilot.');
  await page.getByRole('button', { name: 'Keep the comment' }).click();
  await page.waitForTimeout(400);
  await shot(page, 'one');
  await page.setViewportSize({ width: 360, height: 740 });
  await shot(page, 'one-phone', false);
  await page.setViewportSize({ width: 1280, height: 800 });
  await printed(browser, page, url, 'one', () => page.getByRole('button', { name: 'Print' }).click());
};
