// `npm run mutate`: how well each floor's own tests hold it. Of all small changes to a floor's code (mutants) 300 are
// drawn, and each is made in turn while that floor's tests run: those that no test notices have survived. Words after
// the command choose among the floors. Ends with 1 where a floor is under its mark or the run could not be done.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureInstalled, root } from '../../src/cli/installed.mjs';

const FLOORS = ['laws', 'network', 'unit', 'bench'];
/** Of the drawn mutants so many are to be noticed, in hundredths. */
const LEAST_SCORE = 80;

/**
 * Mutants that may survive, by the reason for it. They count as survivors all the same, so that the score is honest.
 * Kinds: equivalent (no input tells it from the code), no case known (one might, none is known), speed (the same answer
 * by a longer way), message (only words change, and none that names what is wrong).
 */
const ACCEPTED = JSON.parse(readFileSync(join(import.meta.dirname, 'survivors.json'), 'utf8'));

const asked = process.argv.slice(2);
const unknown = asked.filter((floor) => !FLOORS.includes(floor));
if (unknown.length > 0) {
  console.error(`No floor is called ${unknown.join(', ')}. There are ${FLOORS.join(', ')}.`);
  process.exit(1);
}

ensureInstalled();
ensureInstalled(import.meta.dirname);
const { Stryker } = await import('@stryker-mutator/core');
const { draw, mutantsOf, placeOf } = await import('./mutants.mjs');

process.chdir(root);
const workplace = mkdtempSync(join(tmpdir(), 'charge-trainer-mutants-'));
process.env.MUTANTS_DRAWN = join(workplace, 'drawn.json');
process.once('exit', () => rmSync(workplace, { recursive: true, force: true }));
const results = [];
for (const floor of asked.length > 0 ? asked : FLOORS) results.push(await tryFloor(floor));

console.log('\nfloor      all  drawn  killed  timed out  survived  score  seconds');
for (const { floor, all, drawn, fates, score, seconds } of results) {
  const figures = [all, drawn, fates.killed, fates['timed out'], fates.survived];
  const widths = [5, 7, 8, 11, 10];
  const row = figures.map((figure, i) => String(figure).padStart(widths[i])).join('');
  console.log(`${floor.padEnd(9)}${row}${`${score.toFixed(1)} %`.padStart(7)}${String(seconds).padStart(9)}`);
}
const poor = results.filter(({ score }) => score < LEAST_SCORE);
for (const { floor } of poor) console.log(`FAILED  ${floor} is under ${LEAST_SCORE} %.`);
process.exitCode = poor.length > 0 ? 1 : 0;

/** Draws among a floor's mutants, tries each, and prints the survivors. */
async function tryFloor(floor) {
  const began = Date.now();
  const all = await mutantsOf(floor);
  const drawn = draw(all);
  console.log(`\n== ${floor}: ${drawn.length} of ${all.length} mutants against tests/${floor}`);
  process.env.MUTATED_FLOOR = floor;
  writeFileSync(process.env.MUTANTS_DRAWN, JSON.stringify(drawn.map(({ place }) => place)));
  const fateAt = new Map((await tryMutants(floor)).map((result) => [placeOf(result, 1), fateOf(result)]));
  const fates = { killed: 0, 'timed out': 0, survived: 0 };
  for (const { place, name } of drawn) {
    if (!fateAt.has(place)) throw new Error(`${name} was drawn and not tried`);
    fates[fateAt.get(place)] += 1;
  }
  const survivors = drawn.filter(({ place }) => fateAt.get(place) === 'survived');
  printSurvivors(survivors);
  printIdleReasons(floor, survivors);
  const score = (100 * (fates.killed + fates['timed out'])) / drawn.length;
  const seconds = Math.round((Date.now() - began) / 1000);
  return { floor, all: all.length, drawn: drawn.length, fates, score, seconds };
}

function tryMutants(floor) {
  return new Stryker({
    mutate: [`src/${floor}/**/*.ts`],
    checkers: ['drawn-only'],
    plugins: ['@stryker-mutator/vitest-runner', join(import.meta.dirname, 'drawnOnly.mjs')],
    testRunner: 'vitest',
    vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
    coverageAnalysis: 'perTest',
    concurrency: 2,
    // Generous: a busy machine is no proof that a mutant runs for ever.
    timeoutMS: 20_000,
    timeoutFactor: 4,
    tempDirName: workplace,
    cleanTempDir: 'always',
    // The tests run without types, and the compiler in use is not the one that would be asked.
    disableTypeChecks: false,
    tsconfigFile: 'none',
    reporters: process.stdout.isTTY ? ['progress'] : [],
    logLevel: 'error',
  }).runMutationTest();
}

/** A mutant with which the code no longer loads or the run breaks off is noticed like one that fails a test. */
function fateOf({ status }) {
  if (status === 'Killed' || status === 'RuntimeError') return 'killed';
  return status === 'Timeout' ? 'timed out' : 'survived';
}

function printSurvivors(survivors) {
  const byPlace = (a, b) => a.file.localeCompare(b.file) || a.line - b.line;
  for (const { file, line, change, name } of survivors.toSorted(byPlace)) {
    const accepted = ACCEPTED.find(({ mutants }) => mutants.includes(name));
    const why = accepted ? `${accepted.kind}: ${accepted.reason}` : `NO REASON GIVEN for "${name}"`;
    console.log(`${file}:${line}  ${change}\n    ${why}`);
  }
}

/** Reasons that nothing needs any longer: what they were given for is noticed now, or is no longer there. */
function printIdleReasons(floor, survivors) {
  const surviving = new Set(survivors.map(({ name }) => name));
  for (const name of ACCEPTED.flatMap(({ mutants }) => mutants))
    if (name.startsWith(`src/${floor}/`) && !surviving.has(name)) console.log(`Needs no reason: "${name}"`);
}
