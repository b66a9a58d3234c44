export default async ({ browser, url, plainUrl, shot }: any) => {
  const ctx = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await ctx.newPage();
  page.on('console', (m: any) => m.type() === 'error' && console.log('CONSOLE', m.text()));
  page.on('pageerror', (e: any) => console.log('ERR', e.message));
  // plain http
  await page.goto(plainUrl + '#/give');
  await page.getByLabel('a job that comes with the page').selectOption('fen-barn');
  await page.waitForTimeout(500);
  console.log('PLAIN seal:', await page.locator('section[aria-labelledby=seal-heading]').innerText());
  await page.getByRole('button', { name: 'Give it out' }).click();
  await page.waitForTimeout(1000);
  await shot(page, 'plain-given');
  console.log('plain', await page.locator('section[aria-labelledby=given-out-heading]').innerText());
  await page
    .getByRole('button', { name: 'Copy the link' })
    .click()
    .catch((e: any) => console.log(e.message));
  await page.waitForTimeout(300);
  console.log(await page.locator('section[aria-labelledby=given-out-heading] [role=status]').allInnerTexts());
  // sealed link made on secure origin, opened on plain
  await page.goto(url + '#/give');
  await page.getByLabel('a job that comes with the page').selectOption('fen-barn');
  await page.getByLabel(/^passphrase/).fill('abc');
  await page.getByRole('button', { name: 'Give it out' }).click();
  await page.locator('.qr').waitFor();
  await shot(page, 'sealed-given');
  const link = await page.locator('.link-text').textContent();
  console.log('link', link.length);
  await page.goto(plainUrl + link.slice(link.indexOf('#')));
  await page.waitForTimeout(800);
  console.log('PLAIN open:', (await page.locator('main').innerText()).slice(0, 400));
  await page.goto('about:blank');
  await page.goto(url + link.slice(link.indexOf('#')));
  await page.getByLabel('passphrase').fill('wrong');
  await page.getByRole('button', { name: 'Open' }).click();
  await page.waitForTimeout(1500);
  console.log('WRONG:', (await page.locator('main').innerText()).slice(0, 400));
  await shot(page, 'wrong-pass');
  // long link: a set of several jobs from files with changes
  await page.goto('about:blank');
  await page.goto(url + '#/give');
  for (const id of ['fen-barn', 'harbour-mews', 'find-dyers-row']) {
    await page.locator('select').first().selectOption(id);
    await page.waitForTimeout(100);
  }
  const { readFileSync } = await import('node:fs');
  const j = JSON.parse(readFileSync('/work/wt/desk/scenarios/tannery-wharf.json', 'utf8'));
  j.id = 'own-job';
  j.title = 'Own job';
  j.brief = Array.from({ length: 300 }, (_, i) => `w${i * i}`)
    .join(' ')
    .slice(0, 1900);
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'own.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(j)),
    });
  await page.waitForTimeout(800);
  await shot(page, 'give-set');
  await page.getByRole('button', { name: 'Give it out' }).click();
  await page.waitForTimeout(1000);
  await shot(page, 'given-long');
  console.log(
    'LONG:',
    (await page.locator('section[aria-labelledby=given-out-heading]').innerText()).slice(0, 700),
  );
  const { printed } = await import('/work/wt/desk/tests/browser/print-tmp.ts');
  await printed(browser, page, url, 'task', () =>
    page.getByRole('button', { name: 'Print the task sheet' }).click(),
  );
  await printed(browser, page, url, 'key', () => page.getByRole('button', { name: 'Print the key' }).click());
};
