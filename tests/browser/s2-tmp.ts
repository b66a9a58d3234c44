export default async ({ browser, url, shot }: any) => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.on('console', (m: any) => m.type() === 'error' && console.log('CONSOLE', m.text()));
  page.on('pageerror', (e: any) => console.log('ERR', e.message));
  await page.goto(url + '#/collect');
  await page.getByRole('heading', { name: 'Drop files, a folder or a zip here' }).waitFor();
  const cdp = await page.context().newCDPSession(page);
  const box = await page.locator('.drop').boundingBox();
  const drop = async (...files: string[]) => {
    const data = { items: [], files, dragOperationsMask: 1 };
    for (const type of ['dragEnter', 'dragOver', 'drop'])
      await cdp.send('Input.dispatchDragEvent', { type, x: box.x + 50, y: box.y + 60, data });
  };
  // how long the page is held: gaps between frames
  await page.evaluate(
    `window.gaps = []; (() => { let last = performance.now(); const f = () => { const n = performance.now(); if (n - last > 200) window.gaps.push(Math.round(n - last)); last = n; requestAnimationFrame(f); }; requestAnimationFrame(f); })()`,
  );
  const gaps = async () =>
    page.evaluate(() => {
      const g = (window as any).gaps;
      (window as any).gaps = [];
      return g;
    });
  const rows = async () => await page.locator('table.class tbody tr').count();
  const said = async () => (await page.locator('.drop').innerText()).replaceAll('\n', ' | ').slice(-160);
  const D = '/tmp/drop/';
  for (const f of ['own.json']) {
    await drop(D + f);
    await page.waitForTimeout(1500);
    console.log(f, await said(), await gaps());
    console.log(await page.locator('p[role=status]').allInnerTexts());
  }
  for (const f of [
    '50.json',
    '50bad.json',
    'bomb.zip',
    'climb.zip',
    'formula.json',
    'newer.json',
    'notzip.zip',
    'empty.json',
    'class',
    'many',
  ]) {
    const t = Date.now();
    await drop(D + f);
    await page.waitForTimeout(300);
    await page.waitForFunction(() => !/Replaying/.test(document.querySelector('.drop')!.textContent!), null, {
      timeout: 60000,
    });
    console.log(f, Date.now() - t, 'ms', await rows(), 'rows', await said(), await gaps());
  }
  console.log(
    await page
      .locator('table.class')
      .innerText()
      .then((t: string) => t.slice(0, 1800)),
  );
  await shot(page, 'bad-input');
  await page.getByRole('button', { name: 'Clear the table' }).click();
  const t = Date.now();
  await drop(D + '500.zip');
  for (let i = 0; i < 8; i++) {
    await page.waitForTimeout(250);
    console.log(Date.now() - t, await said());
  }
  await page.waitForFunction(() => !/Replaying/.test(document.querySelector('.drop')!.textContent!), null, {
    timeout: 60000,
  });
  console.log('500', Date.now() - t, await said(), await gaps());
  await shot(page, 'collect-500', false);
  await page.getByRole('button', { name: 'Clear the table' }).click();
  await drop(D + '500.zip');
  await page.waitForTimeout(1200);
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.waitForTimeout(300);
  console.log('cancelled', await said(), await rows());
};
