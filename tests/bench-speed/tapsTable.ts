/*
 * What every test takes of a person on a phone, for `npm run bench -- taps`: each test of a sound site of each kind on
 * each rung, counted in the built page while a faultless person walks it by finger. Words after `taps` choose among the
 * sites and the rungs.
 */
import type { Browser } from 'playwright-core';
import type { Rung } from '../../src/attempt/rung.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { fluently } from '../browser/fluent.ts';
import { finger } from '../browser/hands.ts';
import type { Taken } from '../browser/taps.ts';
import { noteTaps, PHONE, takenBy } from '../browser/taps.ts';
import { begin, inHand, sitDown } from '../browser/trainee.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

/** Sound, one of each kind: tethered on a combined and on its own earth, and a three-phase socket. */
const SITES = ['harbour-mews', 'turnpike-cottage', 'foundry-yard'] as const;
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

/**
 * A whole job, test after test in the usual order; `told` hears of each as it is done, `broke` of one that could not be:
 * somebody else then goes on with the next.
 */
async function walk(browser: Browser, url: string, { site, rung, told, broke }: Job): Promise<void> {
  const { scenario } = scenarioNamed(site);
  const sit = async () => {
    const page = await sitDown(browser, url, { ...PHONE, hands: finger, before: noteTaps });
    await begin(page, scenario.title, rung);
    return page;
  };
  let page = await sit();
  let before = 0;
  for (const action of allowedActions(scenario))
    try {
      const taken = await takenBy(page, () => fluently(page, action));
      const { length } = (await inHand(page)).readings;
      told({ test: action.id, ...taken, readings: length - before });
      before = length;
    } catch (error) {
      broke({ test: action.id, why: error instanceof Error ? error.message : String(error) });
      await page.context().close();
      page = await sit();
      before = 0;
    }
  await page.context().close();
}

interface Job {
  readonly site: string;
  readonly rung: Rung;
  readonly told: (walked: Walked) => void;
  readonly broke: (broken: Broken) => void;
}

const medianOf = (list: readonly number[]): number => {
  const sorted = list.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

const cell = ({ taps, digits, readings }: Walked): string =>
  `${taps.length} ${digits} ${readings}`.padStart(12);

/** Taps, digits and readings of each test on each rung, as they are counted. */
export async function printTaps(browser: Browser, url: string, asked: readonly string[]): Promise<void> {
  const sites = SITES.filter((site) => asked.includes(site));
  const rungs = RUNGS.filter((rung) => asked.includes(String(rung)));
  for (const site of sites.length === 0 ? SITES : sites)
    for (const rung of rungs.length === 0 ? RUNGS : rungs) {
      console.log(`${site}, rung ${rung}: taps, digits, readings`);
      const all: Walked[] = [];
      const broken: Broken[] = [];
      await walk(browser, url, {
        site,
        rung,
        broke: (one) => {
          broken.push(one);
          console.log(`  ${one.test.padEnd(20)} could not be done: ${one.why}`);
        },
        told: (walked) => {
          all.push(walked);
          console.log(`  ${walked.test.padEnd(20)}${cell(walked)}`);
          if (asked.includes('each')) console.log(`    ${walked.taps.join(' · ')}`);
        },
      });
      for (const { test, why } of broken) console.log(`  ${test} could not be done: ${why.split('\n')[0]}`);
      const taps = all.map((one) => one.taps.length);
      console.log(`  median ${medianOf(taps)}, most ${Math.max(...taps)}`);
    }
}
