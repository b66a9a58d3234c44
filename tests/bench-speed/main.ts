/*
 * How fast the bench is, for `npm run bench`: one plane of the three-phase bench against the circuit simulator's warm
 * run of the same netlist, a whole verification of every scenario, then the built page: its size and how it feels on a
 * slower device. Words after the command choose among bench and page. Prints lines; asserts nothing.
 */
import { readFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { emfsOf, valuesOf } from '../../src/bench/wiring.ts';
import { potentials } from '../../src/network/potentials.ts';
import { reduce } from '../../src/network/reduce.ts';
import { benchOf, parseScenario, type Scenario } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { CHARGE, doing } from '../bench/build.ts';
import { openBrowser, serveBuilt } from '../browser/browser.ts';
import { sitDown } from '../browser/trainee.ts';
import { netlistOf, simulate } from '../oracle/circuitSimulator.ts';
import { printSizes } from './pageSize.ts';
import { printSpeed } from './pageSpeed.ts';

const WARM_UP = 30;
const FOLDER = join(import.meta.dirname, '../../scenarios');

function medianOf(times: readonly number[]): number {
  const sorted = [...times].sort((x, y) => x - y);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1
    ? (sorted[middle] ?? 0)
    : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}

/** Milliseconds of `count` runs in turn, after some that are not counted. */
async function time(run: () => unknown, count: number, warmUp: number): Promise<number> {
  for (let i = 0; i < warmUp; i++) await run();
  const times: number[] = [];
  for (let i = 0; i < count; i++) {
    const start = performance.now();
    await run();
    times.push(performance.now() - start);
  }
  return medianOf(times);
}

function scenarioIn(file: string): Scenario {
  const read = parseScenario(readFileSync(join(FOLDER, file), 'utf8'));
  if (!read.ok) throw new Error(`${file}: ${read.problems[0]?.message}`);
  return read.scenario;
}

async function planeAgainstSimulator(scenario: Scenario): Promise<void> {
  const world = benchOf(scenario, []);
  doing(world, ...CHARGE);
  const { wiring, installation, plant } = world;
  const values = valuesOf(wiring, plant);
  const emfs = emfsOf(wiring, installation, plant);
  // The simulator's run begins with reading the netlist: ours with the values of every branch.
  const ours = await time(
    () => potentials(reduce(wiring.plan, valuesOf(wiring, plant)), emfs, [], []),
    30,
    3000,
  );
  const theirs = await time(
    () => simulate(netlistOf(wiring.topology, values, { emfs }, 'mains')),
    30,
    WARM_UP,
  );
  const { nodes, branches } = wiring.topology;
  console.log(`three-phase bench: ${nodes.length} nodes, ${branches.length} branches, median of 30, warm`);
  console.log(`  here, all four planes: ${(1000 * ours).toFixed(1)} µs (values, factors, potentials)`);
  console.log(`  there, one plane: ${theirs.toFixed(2)} ms`);
  const ratio = theirs / ours;
  console.log(`  ratio ${ratio.toFixed(0)}: ${ratio >= 100 ? 'at least' : 'NOT'} 100 times faster`);
}

async function printBench(): Promise<void> {
  const files = (await readdir(FOLDER)).filter((name) => name.endsWith('.json')).sort();
  await planeAgainstSimulator(scenarioIn('foundry-yard.json'));
  console.log('a whole verification, median of 20, warm');
  for (const file of files) {
    const scenario = scenarioIn(file);
    const ms = await time(() => verify(scenario), 20, 20);
    const { actions, world } = verify(scenario);
    const mean = (count: number) => (count / actions.length).toFixed(1);
    console.log(
      `  ${file}: ${ms.toFixed(1)} ms, ${actions.length} actions, per action ` +
        `${mean(world.counts.solves)} solves and ${mean(world.counts.chartEvents)} chart events`,
    );
  }
}

async function printPage(): Promise<void> {
  const [browser, built] = await Promise.all([openBrowser(), serveBuilt()]);
  try {
    const { page } = await sitDown(browser, built.url);
    await page.waitForLoadState('networkidle');
    await printSizes(page);
    await page.context().close();
    await printSpeed(browser, built.url);
  } finally {
    await browser.close();
    await built.close();
  }
}

const asked = process.argv.slice(2);
if (asked.length === 0 || asked.includes('bench')) await printBench();
if (asked.length === 0 || asked.includes('page')) await printPage();
