// A bench of one aim that the page makes itself has what its own tests need, and of no other test more than how it is
// done: every test of the aim can be done on it, judged and told, and where lines are to be chosen there are ten.

import { expect, test, vi } from 'vitest';
import { AIMS, SITES } from '../../src/scenario/aims.ts';
import { verify } from '../../src/scenario/verify.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { openBuiltPage } from './builtPage.ts';
import { share } from './everyTest.ts';
import { choose, doTest, inHand, setUp, sitDown, toPredict } from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 240_000 });

/** Each kind of site in its turn. */
const BENCHES = AIMS.map(({ id }, i) => [id, SITES[i % SITES.length]] as const);

async function benchOf(aim: string, site: string | undefined, rung: number) {
  const page = await sitDown(opened.browser, opened.url);
  await page.goto(`${opened.url}#/aim/${aim}/${site}?seed=3&rung=${rung}`);
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  return { page, actions: verify((await inHand(page)).scenario).actions };
}

test.each(share(BENCHES, BENCHES.slice(1, 2)))('%s on %s, every test', async (aim, site) => {
  const { page, actions } = await benchOf(aim, site, 2);
  for (const { action } of actions) await doTest(page, action);
  const { attempt } = await inHand(page);
  const judged = attempt.entries.flatMap((entry) => (entry.kind === 'judgement' ? [entry.test] : []));
  expect(judged).toEqual(actions.map(({ action }) => action.id));
});

test.each(share(BENCHES, BENCHES.slice(-1)))('%s on %s, lines to be chosen', async (aim, site) => {
  const { page, actions } = await benchOf(aim, site, 3);
  await choose(page, testTitle(actions[0]?.action.id ?? ''));
  await setUp(page, {});
  await toPredict(page);
  const list = page.getByRole('list', { name: 'Lines to choose from' });
  expect(await list.getByRole('listitem').count()).toBeGreaterThanOrEqual(10);
});
