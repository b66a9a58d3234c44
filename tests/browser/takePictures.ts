// Takes the README's pictures from the built page and puts them into public/pictures/: first screen, bench and
// debrief on a desk, a reading on a phone; and small ones of every screen and state into every-screen beside them, of
// which it writes the README's list. Draws public/icon.svg in the sizes that devices ask for, too. Run after
// npm run build.

import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { testTitle } from '../../src/words/testTitles.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { openBrowser } from './browsers.ts';
import { settleComplaints } from './complaints.ts';
import { throughAnAttempt, throughLeaving, throughReadingPages } from './everyScreen.ts';
import { serveBuilt } from './serveBuilt.ts';
import {
  act,
  actionFor,
  answerAll,
  begin,
  choose,
  conclude,
  doTest,
  inHand,
  judgeRightly,
  measure,
  predict,
  setUp,
  sitDown,
  writeDown,
} from './trainee.ts';

const ROOT = join(import.meta.dirname, '../..');
const FOLDER = join(ROOT, 'public/pictures');
mkdirSync(FOLDER, { recursive: true });

/** Small enough for a README, large enough to be read. */
const DESK = { height: 780, scale: 0.7 };

const take = async (page: Page, name: string): Promise<void> => {
  await page.evaluate(() => scrollTo(0, 0));
  await page.screenshot({ path: join(FOLDER, `${name}.png`) });
};

const titleOf = (id: string): string => scenarioNamed(id).scenario.title;

/** A test whose every line is answered alike, as one would sign for it, and then rightly judged. */
async function sureAndWrong(page: Page, id: string, between: [string, string]): Promise<void> {
  await choose(page, testTitle(id));
  await setUp(page, {});
  await answerAll(page);
  await page.getByRole('button', { name: /^would sign for it/ }).click();
  await measure(page, { op: 'measure', quantity: 'continuity', between });
  await writeDown(page, undefined);
  await page.getByRole('region', { name: 'readings' }).waitFor();
  await page.waitForTimeout(200);
  await judgeRightly(page, await inHand(page), actionFor(id));
}

/** The icon of an installed page, from its drawing. */
async function drawIcons(browser: Browser): Promise<void> {
  const drawing = readFileSync(join(ROOT, 'public/icon.svg'), 'utf8');
  for (const size of [192, 512]) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${drawing}`);
    await page.screenshot({ path: join(ROOT, `public/icon-${size}.png`) });
    await page.close();
  }
}

/** The README's list of these screens, in the order in which they were seen; each was seen at one width at least. */
function listInReadme(taken: ReadonlyMap<string, ReadonlySet<string>>): void {
  const rows = [...taken].map(([screen, kinds]) => {
    const cell = (kind: string, where: string) =>
      kinds.has(kind) ? `![${screen}, ${where}](public/pictures/every-screen/${fileOf(screen, kind)})` : '';
    return `| ${screen} | ${cell('wide', 'on a desk')} | ${cell('phone', 'on a phone')} |`;
  });
  const readme = join(ROOT, 'README.md');
  const list = /(\| screen \| desk \| phone \|\n\| --- \| --- \| --- \|\n)(?:\|.*\n)*/;
  writeFileSync(
    readme,
    readFileSync(readme, 'utf8').replace(list, (_, head) => `${head}${rows.join('\n')}\n`),
  );
}

const fileOf = (screen: string, kind: string): string =>
  `${screen.toLowerCase().replace(/[^a-z]+/g, '-')}-${kind}.jpg`;

/** Every screen, as wide as a desk has it and as a phone has it, in few pixels. */
async function takeEveryScreen(browser: Browser, url: string): Promise<void> {
  const folder = join(FOLDER, 'every-screen');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  const taken = new Map<string, Set<string>>();
  for (const [kind, look] of Object.entries({
    wide: { width: 1280, height: 800, scale: 0.5 },
    phone: { width: 360, height: 740, scale: 0.6 },
  }))
    for (const through of [throughAnAttempt, throughReadingPages, throughLeaving]) {
      const page = await sitDown(browser, url, look);
      await through(page, async (screen) => {
        if (screen.includes('error')) return;
        taken.set(screen, (taken.get(screen) ?? new Set()).add(kind));
        await page.screenshot({ path: join(folder, fileOf(screen, kind)), type: 'jpeg', quality: 45 });
      });
      await page.context().close();
    }
  listInReadme(taken);
}

const browser = await openBrowser();
const built = await serveBuilt();
try {
  await drawIcons(browser);
  await takeEveryScreen(browser, built.url);
  const desk = await sitDown(browser, built.url, DESK);
  await take(desk, 'choose');

  await begin(desk, titleOf('foundry-yard'));
  await doTest(desk, actionFor('state-a'));
  const stateC = actionFor('state-c');
  await choose(desk, testTitle(stateC.id));
  await setUp(desk, {
    'stand-in': 'B: connected, 2.74 kΩ',
    'then wait, s': '5',
  });
  await predict(desk, await inHand(desk), stateC, 'fairly-sure');
  await act(desk, 'stand-in: state C: asks, 1.3 kΩ added');
  await measure(desk, { op: 'measure', quantity: 'pilot' });
  await writeDown(desk, undefined);
  await measure(desk, {
    op: 'measure',
    quantity: 'voltage',
    tool: 'two-pole',
    between: ['outlet.L1', 'outlet.PE'],
  });
  await take(desk, 'bench');

  const done = await sitDown(browser, built.url, DESK);
  await begin(done, titleOf('mill-race'));
  await doTest(done, actionFor('isolate'), 'would-sign');
  await doTest(done, actionFor('prove-dead'));
  await sureAndWrong(done, 'pe-circuit', ['met', 'supply.PE']);
  await sureAndWrong(done, 'pe-outlet', ['supply.PE', 'outlet.PE']);
  await done.getByRole('button', { name: 'Stop…' }).click();
  await done.getByLabel('reason').fill('The circuit’s protective conductor is above its sum.');
  await done.getByRole('button', { name: 'Stop the work' }).click();
  await conclude(done, {
    verdict: 'not-fit',
    cause: 'Poor joint in the circuit’s protective conductor',
    finding: 'reads length × mΩ/m',
    next: 'lock-off-and-label',
    tell: 'client',
    leftOut: 'not-safe',
  });
  await done.getByText(/\d+ causes? left after it/).waitFor({ timeout: 60_000 });
  await done.getByRole('button', { name: 'Next sure-and-wrong' }).click();
  await take(done, 'debrief');

  const phone = await sitDown(browser, built.url, { width: 360, height: 740 });
  await begin(phone, titleOf('harbour-mews'));
  await choose(phone, testTitle('state-b'));
  await setUp(phone, {
    'stand-in': 'B: connected, 2.74 kΩ',
    'then wait, s': '4',
  });
  await predict(phone, await inHand(phone), actionFor('state-b'), 'fairly-sure');
  await measure(phone, { op: 'measure', quantity: 'pilot' });
  await phone.screenshot({ path: join(FOLDER, 'phone.png') });
  settleComplaints();
} finally {
  await browser.close();
  await built.close();
}
