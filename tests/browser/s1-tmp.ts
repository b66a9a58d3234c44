export default async ({ browser, url, shot }: any) => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.on('console', (m: any) => m.type() === 'error' && console.log('CONSOLE', m.text()));
  page.on('pageerror', (e: any) => console.log('ERR', e.message));
  await page.goto(url + '#/desk');
  await page.getByRole('heading', { name: 'Shelf' }).waitFor();
  await shot(page, 'shelf', false);
  await page.getByRole('button', { name: /^Change one thing: Abbey Grange/ }).click();
  await page.getByRole('heading', { name: 'Is it fair?' }).waitFor();
  await page.waitForTimeout(6000);
  for (const s of await page.locator('details.fold > summary').all()) await s.click();
  await shot(page, 'change-open');
  await page.getByLabel('they have to find out').selectOption('aim');
  await page.waitForTimeout(500);
  await shot(page, 'change-aim');
  await page.getByLabel('they have to find out').selectOption('verify');
  await page.getByLabel('the tests that are not theirs').selectOption('some');
  await page.getByLabel('critical act to set aside').selectOption({ index: 3 });
  await page.waitForTimeout(3000);
  await shot(page, 'change-verify');
  await page.setViewportSize({ width: 360, height: 740 });
  await shot(page, 'change-phone');
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(url + '#/give');
  await page.waitForTimeout(800);
  await shot(page, 'give');
  const t = Date.now();
  await page.getByText('12', { exact: true }).click();
  await page.getByRole('button', { name: 'Make equal variants' }).click();
  await page.waitForTimeout(4000);
  await shot(page, 'give-proving', false);
  for (let i = 0; i < 20; i++) {
    const s = await page.locator('section[aria-labelledby=variants-heading]').innerText();
    console.log(Date.now() - t, s.split('\n').slice(0, 4).join(' | ').slice(0, 160));
    if (/The same for all\n/.test(s.slice(30)) && /are proved|is proved|No variant/.test(s)) break;
    await page.waitForTimeout(4000);
  }
  await shot(page, 'give-proved');
};
