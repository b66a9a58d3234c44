// What addresses lead to: the page with whatever stands behind its address, a plain page where there is none, and
// nothing at all where a file is missing. From `npm start`'s server first, then from the worker without a network.

import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { expectComplaint } from './complaints.ts';
import { isServed, sitDown } from './trainee.ts';

const opened = openBuiltPage();

/** What browsers say that they accept when a person opens an address, and when a page loads a part of itself. */
const PERSON = 'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8';
const PART = {
  script: '*/*',
  style: 'text/css,*/*;q=0.1',
  picture: 'image/avif,image/webp,image/*,*/*;q=0.8',
};

const NONE = ['none', 'none.html', 'none/', 'a/b/none', 'assets/none.js', '%E0%A4%A.html', 'none?x=1'];

describe('the server', () => {
  const ask = (path: string, accept: string, method = 'GET') =>
    fetch(`${opened.url}${path}`, { method, headers: { accept } });

  test.each(['', 'index.html', '?from=the-college', 'index.html?x'])(
    'shows a person the page at /%s',
    async (path) => {
      const answer = await ask(path, PERSON);
      expect(answer.status).toBe(200);
      expect(await answer.text()).toContain('<div id="root">');
      expect(answer.headers.get('content-security-policy')).toBe("frame-ancestors 'none'");
      expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    },
  );

  test.each(NONE)('tells a person that /%s is none', async (path) => {
    const answer = await ask(path, PERSON);
    expect([answer.status, answer.headers.get('content-type')]).toEqual([404, 'text/html; charset=utf-8']);
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(await answer.text()).toMatch(/<title>No such page – .*<a href="\/">/s);
    const head = await ask(path, PERSON, 'HEAD');
    expect([head.status, await head.text()]).toEqual([404, '']);
  });

  test.each(Object.entries(PART))('has no page for a missing %s', async (_, accept) => {
    for (const path of ['assets/none.js', 'assets/none.css', 'none.png', 'none', 'none.html']) {
      const answer = await ask(path, accept);
      expect([path, answer.status, await answer.text()]).toEqual([path, 404, '']);
    }
  });
});

describe('without a network the worker', () => {
  const START = 'Charge point trainer';

  async function withoutNetwork(): Promise<Page> {
    const page = await sitDown(opened.browser, opened.url, { worker: true });
    await isServed(page);
    await page.context().setOffline(true);
    return page;
  }

  test.each(['', 'index.html', '?from=the-college', 'index.html?x#/words', '?utm_source=x#/words'])(
    'opens the page at /%s',
    async (path) => {
      const page = await withoutNetwork();
      await page.goto('about:blank');
      await page.goto(`${opened.url}${path}`);
      const name = path.endsWith('#/words') ? 'Words' : START;
      await page.getByRole('heading', { name, level: 1 }).waitFor();
      expect(new URL(page.url()).hash).toBe(path.includes('#') ? '#/words' : '');
      await page.context().close();
    },
  );

  test('tells a person that an address is none, and leads to the start', async () => {
    const page = await withoutNetwork();
    expectComplaint(/404/);
    for (const path of NONE) {
      const answer = await page.goto(`${opened.url}${path}`);
      expect([path, answer?.status()]).toEqual([path, 404]);
      expect(await page.title()).toMatch(/^No such page/);
      await page.getByRole('heading', { name: 'No such page' }).waitFor();
    }
    await page.getByRole('link').click();
    await page.getByRole('heading', { name: START }).waitFor();
    expect(page.url()).toBe(opened.url);
    await page.context().close();
  });

  test('has no page for a missing part, and shows its own files as they are', async () => {
    const page = await withoutNetwork();
    expectComplaint(/ERR_INTERNET_DISCONNECTED/);
    const got = await page.evaluate(async () => {
      const shown = (picture: string) =>
        new Promise((resolve) => {
          const image = document.createElement('img');
          image.onload = () => resolve('a picture');
          image.onerror = () => resolve('nothing');
          image.src = picture;
        });
      const fetched = (path: string) =>
        fetch(path).then(
          ({ headers }) => headers.get('content-type'),
          () => 'nothing',
        );
      const [script] = document.querySelectorAll('script');
      return {
        noPicture: await shown('none.png'),
        picture: await shown('icon-192.png'),
        noScript: await fetched('assets/none.js'),
        script: (await fetched(script?.src ?? ''))?.replace(/.*\/|;.*/g, ''),
        noStyle: await fetched('assets/none.css'),
        noFile: await fetched('none'),
      };
    });
    expect(got).toEqual({
      noPicture: 'nothing',
      picture: 'a picture',
      noScript: 'nothing',
      script: 'javascript',
      noStyle: 'nothing',
      noFile: 'nothing',
    });
    const answer = await page.goto(`${opened.url}icon.svg`);
    expect([answer?.status(), answer?.headers()['content-type']]).toEqual([200, 'image/svg+xml']);
    await page.context().close();
  });
});
