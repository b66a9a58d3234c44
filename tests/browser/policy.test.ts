// What the page's policy holds (Content Security Policy Level 3, Trusted Types), and that the browser acts on it: nothing
// that is put into the page from outside is run, shown or sent.

import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { expectComplaint } from './complaints.ts';
import { openPage, sitDown } from './trainee.ts';

const opened = openBuiltPage();

const POLICY = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self'",
  'connect-src': "'self'",
  'manifest-src': "'self'",
  'worker-src': "'self'",
  'object-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'own-worker own-weigher',
};

test('the policy lets the page’s own files through and nothing else, and comes before all of them', async () => {
  const page = await sitDown(opened.browser, opened.url);
  const [first, content] = await page.evaluate(() => {
    const meta = document.querySelector('meta[http-equiv="Content-Security-Policy"]');
    return [document.head.firstElementChild === meta, meta?.getAttribute('content') ?? ''] as const;
  });
  expect(first).toBe(true);
  const rules = content.split('; ').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1).join(' ')]);
  expect(rules).toHaveLength(Object.keys(POLICY).length);
  expect(Object.fromEntries(rules)).toEqual(POLICY);
  await page.context().close();
});

/** Everything that is tried in the page, with what comes of it: an error's name, or whether it was run or shown. */
const tried = (page: Page) =>
  page.evaluate(async (stranger) => {
    const nameOf = (act: () => unknown): string => {
      try {
        act();
        return 'done';
      } catch (error) {
        return (error as Error).name;
      }
    };
    const rejected = (promise: Promise<unknown>) =>
      promise.then(
        () => 'done',
        (error: Error) => error.name,
      );
    // Whoever tests may run text in the turn in which it enters the page; the page itself may not.
    await new Promise((resolve) => setTimeout(resolve));
    const place = document.createElement('p');
    document.body.append(place);
    const script = document.createElement('script');
    const picture = document.createElement('img');
    const comes = new Promise((resolve) => {
      picture.onload = () => resolve('done');
      picture.onerror = () => resolve('nothing came');
    });
    place.setAttribute('style', 'color: rgb(1, 2, 3)');
    picture.src = `${stranger}icon-192.png`;
    const types = (globalThis as unknown as { trustedTypes: { createPolicy: (...x: unknown[]) => unknown } })
      .trustedTypes;
    return {
      'markup from text': nameOf(() => {
        place.innerHTML = '<b>bold</b>';
      }),
      'a script from text': nameOf(() => {
        script.textContent = 'globalThis.wasRun = true';
        document.body.append(script);
      }),
      'a script from an address': nameOf(() => {
        script.src = `${stranger}sw.js`;
      }),
      'text that is run': nameOf(() => new Function('globalThis.wasRun = true')()),
      'a policy of somebody else': nameOf(() => types.createPolicy('default', {})),
      'another worker': await rejected(navigator.serviceWorker.register('play.schema.json')),
      'something sent to a stranger': await rejected(fetch(stranger, { method: 'POST', body: 'x' })),
      'a stranger’s picture': await comes,
      'a style from text': getComputedStyle(place).color === 'rgb(1, 2, 3)' ? 'done' : 'not applied',
      'run after all': String('wasRun' in globalThis),
    };
  }, opened.plainUrl);

describe('what the policy forbids', () => {
  test('is refused by the browser', async () => {
    const page = await sitDown(opened.browser, opened.url, { worker: true });
    const asked: string[] = [];
    page.on('requestfinished', (request) => asked.push(new URL(request.url()).origin));
    expectComplaint(/Content Security Policy/);
    expectComplaint(/Trusted/);
    expectComplaint(/asked another host/);
    expect(await tried(page)).toEqual({
      'markup from text': 'TypeError',
      'a script from text': 'TypeError',
      'a script from an address': 'TypeError',
      'text that is run': 'EvalError',
      'a policy of somebody else': 'TypeError',
      'another worker': 'TypeError',
      'something sent to a stranger': 'TypeError',
      'a stranger’s picture': 'nothing came',
      'a style from text': 'not applied',
      'run after all': 'false',
    });
    expect(asked.filter((origin) => origin !== new URL(opened.url).origin)).toEqual([]);
    await page.context().close();
  });

  test('a script that stands in the page itself', async () => {
    const context = await opened.browser.newContext({ serviceWorkers: 'block' });
    await context.route(opened.url, async (route) => {
      const answer = await route.fetch();
      const body = (await answer.text()).replace(
        '</body>',
        '<script>globalThis.wasRun = true</script></body>',
      );
      await route.fulfill({ response: answer, body });
    });
    expectComplaint(/script-src/);
    const page = await openPage(context, opened.url);
    expect(await page.content()).toContain('wasRun = true');
    expect(await page.evaluate(() => 'wasRun' in globalThis)).toBe(false);
    await context.close();
  });

  test('a frame around the page, by its header', async () => {
    const context = await opened.browser.newContext({ serviceWorkers: 'block' });
    const page = await context.newPage();
    await page.route('**/around', (route) =>
      route.fulfill({ contentType: 'text/html', body: '<iframe src="./"></iframe>' }),
    );
    const refused = page.waitForEvent('console', (message) => message.text().includes('frame-ancestors'));
    await page.goto(`${opened.url}around`);
    await refused;
    expect(await page.frameLocator('iframe').locator('#root').count()).toBe(0);
    await context.close();
  });
});
