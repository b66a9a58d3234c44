/*
 * What every test takes of a person on a phone, for `npm run bench -- taps`: each test of a sound site of each kind on
 * each rung, counted in the built page while a faultless person walks it by finger. Words after `taps` name sites (any
 * scenario, as it is without its faults), rungs and tests; of those that are named before which others come, these are done
 * already in a file that is opened. `each` prints every tap.
 */
import type { Browser, Page } from 'playwright-core';
import type { Rung } from '../../src/attempt/record/rung.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { fluently } from '../browser/fluent.ts';
import { finger } from '../browser/hands.ts';
import { takeUpAt } from '../browser/takenUp.ts';
import type { Taken } from '../browser/taps.ts';
import { MEDIAN_BAR, medianOf, noteTaps, PHONE, takenBy, tapsBar } from '../browser/taps.ts';
import { inHand, sitDown } from '../browser/trainee.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

/** Sound, one of each kind: tethered on a combined earth, on its own, and on a rod beside the house’s earth; a three-phase socket. */
const SITES: readonly string[] = ['harbour-mews', 'turnpike-cottage', 'curlew-house', 'foundry-yard'];
const RUNGS = [1, 2, 3, 4] as const satisfies readonly Rung[];

interface Walked extends Taken {
  readonly test: string;
  readonly readings: number;
}

/** A test that could not be done to its end, and why. */
interface Broken {
  readonly test: string;
  readonly why: string;
}

/** A scenario without its faults, and the file of it. */
function soundOne(id: string): { readonly scenario: Scenario; readonly file: unknown } {
  const { text, scenario, file } = scenarioNamed(id);
  if (scenario.faults.length === 0) return { scenario, file };
  const read = parseScenario(JSON.stringify({ ...JSON.parse(text), faults: [] }));
  if (!read.ok) throw new Error(`${id} cannot do without its faults`);
  return read;
}

/**
 * A whole job, or the tests of it that are asked for, in the usual order; `told` hears of each as it is done, `broke` of one
 * that could not be: somebody else then goes on with the next.
 */
async function walk(browser: Browser, url: string, { site, rung, tests, told, broke }: Job): Promise<void> {
  const { scenario, file } = soundOne(site);
  const all = allowedActions(scenario);
  let page: Page | null = null;
  let before = 0;
  for (const [i, action] of all.entries()) {
    if (tests.length > 0 && !tests.includes(action.id)) {
      await page?.context().close();
      page = null;
      continue;
    }
    try {
      if (page === null) {
        page = await sitDown(browser, url, { ...PHONE, hands: finger, before: noteTaps });
        await takeUpAt(page, { scenario, file, rung }, action.id);
        before = i === 0 ? 0 : (await inHand(page)).readings.length;
      }
      const now = page;
      const taken = await takenBy(now, () => fluently(now, action));
      const { length } = (await inHand(now)).readings;
      told({ test: action.id, ...taken, readings: length - before });
      before = length;
    } catch (error) {
      broke({ test: action.id, why: error instanceof Error ? error.message : String(error) });
      await page?.context().close();
      page = null;
    }
  }
  await page?.context().close();
}

interface Job {
  readonly site: string;
  readonly rung: Rung;
  /** By their ids; all where none is named. */
  readonly tests: readonly string[];
  readonly told: (walked: Walked) => void;
  readonly broke: (broken: Broken) => void;
}

/** A column of the table: a job on a site and a rung. */
interface Column {
  readonly site: string;
  readonly phases: number;
  readonly rung: Rung;
  readonly walked: readonly Walked[];
  readonly broken: readonly Broken[];
}

/** Taps, digits and readings of each test on each rung, as they are counted; then the table of taps. */
export async function printTaps(browser: Browser, url: string, asked: readonly string[]): Promise<void> {
  const sites = scenarioIds.filter((site) => asked.includes(site));
  const tests = asked.filter((word) => actionNamed(word) !== undefined);
  const rungs = RUNGS.filter((rung) => asked.includes(String(rung)));
  const columns: Column[] = [];
  for (const site of sites.length === 0 ? SITES : sites)
    for (const rung of rungs.length === 0 ? RUNGS : rungs) {
      console.log(`${site}, rung ${rung}: taps, digits, readings`);
      const walked: Walked[] = [];
      const broken: Broken[] = [];
      await walk(browser, url, {
        site,
        rung,
        tests,
        told: (one) => {
          walked.push(one);
          const { test, taps, digits, readings } = one;
          console.log(`  ${test.padEnd(20)}${`${taps.length} ${digits} ${readings}`.padStart(12)}`);
          if (asked.includes('each')) console.log(`    ${taps.join(' · ')}`);
        },
        broke: (one) => {
          broken.push(one);
          console.log(`  ${one.test.padEnd(20)} could not be done: ${one.why}`);
        },
      });
      columns.push({ site, phases: scenarioNamed(site).scenario.site.phases, rung, walked, broken });
    }
  console.log(`\n${tableOf(columns)}`);
}

/** Tests by jobs; bold is what is over its bar, and what could not be done says so. */
function tableOf(columns: readonly Column[]): string {
  const tests = [
    ...new Set(columns.flatMap(({ walked, broken }) => [...walked, ...broken].map(({ test }) => test))),
  ];
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const cell = ({ walked, broken, rung, phases }: Column, test: string): string => {
    const one = walked.find((other) => other.test === test);
    if (one === undefined) return broken.some((other) => other.test === test) ? '**not done**' : '';
    const taps = one.taps.length;
    return taps > tapsBar({ rung, phases, readings: one.readings }) ? `**${taps}**` : String(taps);
  };
  const median = ({ walked, phases }: Column): string => {
    const taps = medianOf(walked.map((one) => one.taps.length));
    return phases === 1 && taps > MEDIAN_BAR ? `**${taps}**` : String(taps);
  };
  return [
    row(['test', ...columns.map(({ site, rung }) => `${site} ${rung}`)]),
    row(['---', ...columns.map(() => '---:')]),
    ...tests.map((test) => row([test, ...columns.map((column) => cell(column, test))])),
    row(['median', ...columns.map(median)]),
  ].join('\n');
}
