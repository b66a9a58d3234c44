import { mkdirSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { serveBuilt } from './serveBuilt.ts';

mkdirSync('/tmp/shots', { recursive: true });
const served = await serveBuilt();
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium-headless-shell',
  args: ['--host-resolver-rules=MAP trainer.example 127.0.0.1'],
});
export const shot = async (page: any, name: string, full = true) => {
  await page.screenshot({ path: `/tmp/shots/${name}.png`, fullPage: full });
};
try {
  await (await import(process.argv[2] as string)).default({
    browser,
    url: served.url,
    plainUrl: served.plainUrl,
    shot,
  });
} catch (e) {
  console.error(e);
} finally {
  await browser.close();
  await served.close();
  process.exit(0);
}
