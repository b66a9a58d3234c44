/*
 * How fast the bench is, for `npm run bench`: the three-phase bench against the circuit simulator's warm run of the same
 * netlist, turn and turn about; a whole verification of every scenario, then beside an earlier commit; then the built page: its size and how it feels
 * on a slower device; then marks earned without knowing; then collecting
 * beside a bare replay; and, only where it is asked for, what every test takes in taps. Words after the
 * command choose among bench, engine, page, marks, collect and taps. Ends with 1 where a bound is not kept.
 */
import { readFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { emfsOf, valuesOf } from '../../src/bench/wiring.ts';
import { difference, potentials } from '../../src/network/potentials.ts';
import { reduce } from '../../src/network/reduce.ts';
import { benchOf, type Scenario } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { verifying } from '../../src/scenario/verify.ts';
import { CHARGE, doing } from '../bench/build.ts';
import { openBrowser } from '../browser/browsers.ts';
import { settleComplaints } from '../browser/complaints.ts';
import { serveBuilt } from '../browser/serveBuilt.ts';
import { sitDown } from '../browser/trainee.ts';
import { netlistOf, simulate } from '../oracle/circuitSimulator.ts';
import { printCollecting } from './collectSpeed.ts';
import { printEngine } from './engineSpeed.ts';
import { printMarks } from './marksTable.ts';
import { medianOf } from './median.ts';
import { printSizes } from './pageSize.ts';
import { printSpeed } from './pageSpeed.ts';
import { printTaps } from './tapsTable.ts';

const RUNS = 30;
/** Verifications that come before those that are timed. */
const WARM_UP = 10;
const FOLDER = join(import.meta.dirname, '../../scenarios');
/** So many times faster than the simulator, at least. */
const LEAST_RATIO = 250;
/** Solves and chart events an action, in the mean over a sound single-phase verification, at most. */
const MOST_AN_ACTION = 8;
const SOUND_SINGLE_PHASE = 'harbour-mews.json';

async function milliseconds(run: () => unknown): Promise<number> {
  const start = performance.now();
  await run();
  return performance.now() - start;
}

/** Runs of ours in one turn. */
const MANY = 50;

function manyTimes(run: () => unknown): void {
  for (let i = 0; i < MANY; i++) run();
}

/** Says so where a bound is not kept. */
function hold(what: string, kept: boolean): void {
  console.log(`  ${what}: ${kept ? 'kept' : 'NOT KEPT'}`);
  if (!kept) process.exitCode = 1;
}

function scenarioIn(file: string): Scenario {
  const read = parseScenario(readFileSync(join(FOLDER, file), 'utf8'));
  if (!read.ok) throw new Error(`${file}: ${read.problems[0]?.message}`);
  return read.scenario;
}

async function againstSimulator(scenario: Scenario): Promise<void> {
  const world = benchOf(scenario, []);
  doing(world, ...CHARGE);
  const { wiring, installation, plant } = world;
  const values = valuesOf(wiring, plant);
  const emfs = emfsOf(wiring, installation, plant);
  const netlist = () => netlistOf(wiring.topology, values, { emfs }, 'mains');
  // The simulator's run begins with reading the netlist: ours with the values of every branch.
  const ours = () => potentials(reduce(wiring.plan, valuesOf(wiring, plant)), emfs, wiring.oneWays, []);
  for (let i = 0; i < 100 * RUNS; i++) ours();
  for (let i = 0; i < RUNS; i++) await simulate(netlist());

  const [here, there]: [number[], number[]] = [[], []];
  for (let i = 0; i < RUNS; i++) {
    const written = netlist();
    there.push(await milliseconds(() => simulate(written)));
    // Many at a time: one alone is over before caches and the clock are at their best.
    here.push((await milliseconds(() => manyTimes(ours))) / MANY);
  }
  const { nodes, branches } = wiring.topology;
  console.log(
    `three-phase bench: ${nodes.length} nodes, ${branches.length} branches, median of ${RUNS}, warm, in turn`,
  );
  console.log(
    `  here, all four planes: ${(1000 * medianOf(here)).toFixed(1)} µs (values, factors, potentials)`,
  );
  console.log(`  there, one plane: ${medianOf(there).toFixed(2)} ms`);
  const ratio = medianOf(there) / medianOf(here);
  hold(`ratio ${ratio.toFixed(0)}, at least ${LEAST_RATIO}`, ratio >= LEAST_RATIO);

  const port = { a: wiring.nodeAt('end.L1'), b: wiring.nodeAt('end.N') };
  const across = ({ re, im }: { re: Float64Array; im: Float64Array }) =>
    Math.hypot(difference(re, port), difference(im, port));
  const [mine, theirs] = [across(ours().mains), across(await simulate(netlist()))];
  hold(
    `the same answer, ${mine.toFixed(3)} V and ${theirs.toFixed(3)} V at the outlet, within 0.1 %`,
    Math.abs(mine - theirs) <= 0.001 * theirs,
  );
}

/** A verification's time, and its work: solves are the positions that were asked for, most of them not for the first time. */
async function verification(file: string): Promise<void> {
  const scenario = scenarioIn(file);
  const times: number[] = [];
  const anew = () => toItsEnd(verifying(scenario));
  for (let i = 0; i < WARM_UP; i++) anew();
  for (let i = 0; i < RUNS; i++) times.push(await milliseconds(anew));
  const { actions, world } = anew();
  const [solves, distinct, events] = [
    world.counts.solves,
    world.wiring.solved.size,
    world.counts.chartEvents,
  ].map((count) => count / actions.length) as [number, number, number];
  console.log(
    `  ${file}: ${medianOf(times).toFixed(1)} ms, ${actions.length} actions, per action ` +
      `${solves.toFixed(1)} solves (${distinct.toFixed(1)} anew) and ${events.toFixed(1)} chart events`,
  );
  if (file !== SOUND_SINGLE_PHASE) return;
  hold(
    `at most ${MOST_AN_ACTION} of each, in a sound single-phase verification`,
    Math.max(solves, events) <= MOST_AN_ACTION,
  );
}

async function printBench(): Promise<void> {
  await againstSimulator(scenarioIn('foundry-yard.json'));
  console.log(`a whole verification, median of ${RUNS}, warm`);
  const files = (await readdir(FOLDER)).filter((name) => name.endsWith('.json')).sort();
  for (const file of files) await verification(file);
}

async function withPage(what: (browser: Browser, url: string) => Promise<void>): Promise<void> {
  const [browser, built] = await Promise.all([openBrowser(), serveBuilt()]);
  try {
    await what(browser, built.url);
    settleComplaints();
  } finally {
    await browser.close();
    await built.close();
  }
}

async function printPage(browser: Browser, url: string): Promise<void> {
  const page = await sitDown(browser, url);
  await page.waitForLoadState('networkidle');
  await printSizes(page);
  await page.context().close();
  await printSpeed(browser, url);
}

const asked = process.argv.slice(2);
if (asked.length === 0 || asked.includes('bench')) await printBench();
if (asked.length === 0 || asked.includes('engine')) printEngine(hold);
if (asked.length === 0 || asked.includes('page')) await withPage(printPage);
if (asked.length === 0 || asked.includes('marks')) printMarks(hold);
if (asked.length === 0 || asked.includes('collect')) printCollecting(hold);
if (asked.includes('taps')) await withPage((browser, url) => printTaps(browser, url, asked));
