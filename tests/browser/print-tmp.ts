/** Keeps what the page shows while it prints, and lays it out as a browser would on paper. */
export const printed = async (
  browser: any,
  page: any,
  url: string,
  name: string,
  press: () => Promise<void>,
  width = 720,
) => {
  await page.evaluate(`window.print = () => { window.__printed = document.documentElement.outerHTML; }`);
  await press();
  await page.waitForTimeout(500);
  const html = await page.evaluate(`window.__printed`);
  const ctx = await browser.newContext({ serviceWorkers: 'block', viewport: { width, height: 1000 } });
  const p2 = await ctx.newPage();
  const own = html
    .replace(/<script[\s\S]*?<\/script>/g, '')
    .replace(/<link[^>]*modulepreload[^>]*>/g, '')
    .replace(/<meta[^>]*Content-Security[^>]*>/gi, '');
  await p2.route('**/print-tmp.html', (route: any) =>
    route.fulfill({ contentType: 'text/html', body: '<!doctype html>' + own }),
  );
  await p2.goto(url + 'print-tmp.html');
  const pdf = await p2.pdf({ path: `/tmp/shots/${name}.pdf`, format: 'A4', preferCSSPageSize: true });
  console.log(name, 'pages', (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length);
  await p2.emulateMedia({ media: 'print' });
  await p2.screenshot({ path: `/tmp/shots/print-${name}.png`, fullPage: true });
  await ctx.close();
};
