// The page is small enough for a phone in a van: what the first screen waits for, what a bench of one aim waits for, all
// that a bench may ever come to need, and each piece that comes later, when it is asked for. As any host sends it, by gzip.

import { expect, test } from 'vitest';
import { openBrowser } from './browsers.ts';
import { serveBuilt } from './serveBuilt.ts';
import { neededBy, scriptsLoaded, scriptsOfAll, sizeOf } from './size.ts';
import { actionFor, doTest, sitDown } from './trainee.ts';

/** KiB by gzip. */
const FIRST_SCREEN = 88;
const BENCH_OF_ONE_AIM = 244;
/** Of the aim whose tests are largest, and with traces of its readings, which come after the bench is shown. */
const BENCH_OF_ANY_AIM = 250;
/** A whole verification, with every step of every test, what is opened where a line was wrong, traces, causes to put right, sounds. */
const BENCH_IN_ALL = 322;
const LATER_PIECE = 52;
/** What works beside the page, with a simulated installation of its own. */
const WORKER = 148;

const isOfBench = (name: string): boolean => /^(tests-|told|play|causes|traces)/.test(name);

test('the first screen comes with little, a bench with what is done there, all else when it is asked for', async () => {
  const [browser, built] = await Promise.all([openBrowser(), serveBuilt()]);
  try {
    const page = await sitDown(browser, built.url);
    await page.waitForLoadState('networkidle');
    const first = await scriptsLoaded(page);
    expect(first.length).toBeGreaterThan(0);
    expect(scriptsOfAll()).toEqual(expect.arrayContaining([...first]));
    expect(sizeOf(first).gzip, 'first screen').toBeLessThanOrEqual(FIRST_SCREEN);

    // From the first screen, not by the list of scenarios.
    await page.getByRole('link', { name: /^Is the design right\? practice/ }).click();
    await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
    await doTest(page, actionFor('papers'));
    await page.waitForLoadState('networkidle');
    const atBench = await scriptsLoaded(page);
    // What it needs is there before it is shown: the tests of its own aim, and of no other.
    const own = atBench.filter((name) => name.startsWith('tests-'));
    expect(own).toEqual([expect.stringMatching(/^tests-design-/)]);
    expect(sizeOf(atBench).gzip, 'bench of one aim').toBeLessThanOrEqual(BENCH_OF_ONE_AIM);

    // Of another aim: its tests in place of these, with what several aims share of them, and traces.
    const shared = scriptsOfAll().filter((name) => /^(tests-shared|traces)-/.test(name));
    expect(shared).toHaveLength(2);
    const most = Math.max(
      ...scriptsOfAll()
        .filter((name) => /^tests-(?!shared)/.test(name))
        .map((name) => sizeOf([name]).gzip),
    );
    expect(
      sizeOf([...atBench, ...shared]).gzip - sizeOf(own).gzip + most,
      'bench of any aim',
    ).toBeLessThanOrEqual(BENCH_OF_ANY_AIM);

    const later = scriptsOfAll().filter((name) => !atBench.includes(name));
    expect(sizeOf([...atBench, ...later.filter(isOfBench)]).gzip, 'bench in all').toBeLessThanOrEqual(
      BENCH_IN_ALL,
    );
    // Among them the tests of the other aims, what is opened where a line was wrong, causes, traces, sounds, the list
    // of scenarios, files with what they are held to, and the conclusion with the debrief.
    for (const piece of [
      'tests-refuses',
      'told',
      'causes',
      'traces',
      'play',
      'jobs',
      'schemas',
      'files',
      'conclusion',
    ])
      expect(
        later.some((name) => name.startsWith(piece)),
        piece,
      ).toBe(true);
    for (const name of later)
      expect(sizeOf([name]).gzip, name).toBeLessThanOrEqual(/Worker-/.test(name) ? WORKER : LATER_PIECE);
  } finally {
    await browser.close();
    await built.close();
  }
});

test('no two scripts of the page need each other', () => {
  const needs = new Map(scriptsOfAll().map((name) => [name, neededBy(name)]));
  // All that is needed is there, and most scripts do need another.
  expect([...needs.keys()]).toEqual(expect.arrayContaining([...needs.values()].flat()));
  expect([...needs.values()].filter(({ length }) => length > 0).length).toBeGreaterThan(needs.size / 2);
  const left = new Set(needs.keys());
  const canBegin = () => [...left].filter((name) => needs.get(name)?.every((other) => !left.has(other)));
  for (let next = canBegin(); next.length > 0; next = canBegin()) for (const name of next) left.delete(name);
  expect([...left]).toEqual([]);
});
