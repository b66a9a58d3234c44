/*
 * How much a verification takes beside what it took at an earlier commit, for `npm run bench -- engine`: both engines in
 * one process, turn and turn about, by the processor's time, since other work on the machine makes clocks differ. Then
 * what a debrief costs beside the bare replay, how both grow with the operations of a log, what it takes to work out which
 * causes each step of a job left, and what a whole dictionary takes.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { workedAttempt } from '../../src/attempt/marks/worked.ts';
import { eliminate, seekingUndone } from '../../src/attempt/opened/elimination.ts';
import { lockstep } from '../../src/attempt/opened/twin.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { replay } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { lookingUp } from '../../src/fairness/dictionary.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { medianOf } from './median.ts';

/** The commit that bounds are stated against. */
const START = 'f4f3f15';
const ROOT = join(import.meta.dirname, '../..');
/** Of an installation never met; once more; and once more carried out anew, which nobody but tests asks for. */
export const WHICH = ['first', 'again', 'anew'] as const;
export type Which = (typeof WHICH)[number];
const BOUNDS = { first: 0.5, again: 0.25 } as const;
const MOST_OF_REPLAY = 1.5;
const STEEPEST = 1.1;
const OPERATIONS = [200, 800, 3000];
/** Three phases, every test, and of all the most causes that its papers allow. */
const LARGEST = 'exchange-street';
/** Processor's seconds. */
const MOST_OF_DICTIONARY = 15;
const MOST_OF_CAUSES_LEFT = 1;

type Hold = (what: string, kept: boolean) => void;

/** What paired.ts prints, in processor's milliseconds. */
export interface Paired {
  /** By scenario, of the start and of here. */
  readonly verified: Readonly<Record<string, Record<Which, readonly [number, number]>>>;
  /** Of the job that is told, by the start. */
  readonly replay: number;
}
/** The job whose debrief is measured, and how often it is done beforehand, so that the code is warm. */
export const TOLD = 'harbour-mews';
export const WARMING = 100;

export function printEngine(hold: Hold): void {
  let replayAtStart: number | null = null;
  withStart((start) => {
    replayAtStart = printPaired(start, hold).replay;
  });
  printDebrief(replayAtStart, hold);
  printCausesLeft(hold);
  printDictionary(hold);
}

/** The earlier commit checked out beside this one, with the same packages; says so where the history does not have it. */
function withStart(what: (folder: string) => void): void {
  const git = (...words: readonly string[]) =>
    execFileSync('git', words, { cwd: ROOT, stdio: ['ignore', 'pipe', 'ignore'] });
  const folder = join(mkdtempSync(join(tmpdir(), 'bench-')), 'start');
  try {
    git('worktree', 'add', '--detach', folder, START);
  } catch {
    console.log(
      `not compared: commit ${START} is not in the history here (a clone without history, or no clone)`,
    );
    return;
  }
  try {
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
    what(folder);
  } finally {
    git('worktree', 'remove', '--force', folder);
    rmSync(join(folder, '..'), { recursive: true, force: true });
  }
}

function printPaired(start: string, hold: Hold): Paired {
  const words = ['--import', 'tsx', fileURLToPath(import.meta.resolve('./paired.ts')), start];
  const paired: Paired = JSON.parse(execFileSync(process.execPath, words, { cwd: ROOT, encoding: 'utf8' }));
  console.log(
    `a verification, ms of the processor at ${START} → here; of an installation never met, once more, and once more carried out anew`,
  );
  const cell = ([there, here]: readonly [number, number]) =>
    `${there.toFixed(1)} → ${here.toFixed(1)} (${(here / there).toFixed(2)})`;
  const all = Object.entries(paired.verified);
  for (const [name, one] of all)
    console.log(`  ${name.padEnd(18)} ${WHICH.map((which) => cell(one[which])).join('   ')}`);
  const overAll = (which: Which) => {
    const sum = (side: 0 | 1) => all.reduce((total, [, one]) => total + one[which][side], 0);
    return (sum(1) / sum(0)).toFixed(2);
  };
  console.log(`  carried out anew: ${overAll('anew')} of it over all`);
  for (const which of ['first', 'again'] as const) {
    const over = all.filter(([, one]) => one[which][1] > BOUNDS[which] * one[which][0]).map(([name]) => name);
    hold(
      `${which}: ${overAll(which)} of it over all, at most ${BOUNDS[which]} for each${over.length === 0 ? '' : `; over: ${over.join(', ')}`}`,
      over.length === 0,
    );
  }
  return paired;
}

/** Processor's milliseconds, median of some. */
export function cpuTime(work: () => unknown, times = 7): number {
  return medianOf(
    Array.from({ length: times }, () => {
      const before = process.cpuUsage();
      work();
      const { user, system } = process.cpuUsage(before);
      return (user + system) / 1000;
    }),
  );
}

/** Held against the replay that its bound was stated of, and against the one of today, which takes half as long. */
function printDebrief(replayAtStart: number | null, hold: Hold): void {
  const { scenario, file } = scenarioNamed(TOLD);
  const attempt = workedAttempt(scenario, file);
  for (let i = 0; i < WARMING; i++) debriefOf(scenario, attempt);
  const [bare, debrief] = [() => replay(scenario, attempt), () => debriefOf(scenario, attempt)].map((work) =>
    cpuTime(work, 15),
  ) as [number, number];
  console.log(
    `an attempt of ${attempt.entries.length} entries: replay ${bare.toFixed(1)} ms, debrief ${debrief.toFixed(1)} ms`,
  );
  const replays = replayAtStart === null ? { here: bare } : { here: bare, [`at ${START}`]: replayAtStart };
  for (const [where, replayed] of Object.entries(replays))
    hold(
      `debrief at most ${MOST_OF_REPLAY} of the replay ${where} (${replayed.toFixed(1)} ms): ${(debrief / replayed).toFixed(2)}`,
      debrief <= MOST_OF_REPLAY * replayed,
    );
  const grown = OPERATIONS.map((count) => {
    const long = withOperations(attempt, count);
    const times = [() => replay(scenario, long), () => debriefOf(scenario, long)].map((work) =>
      cpuTime(work, 5),
    );
    console.log(
      `  ${count} operations: replay ${times[0]?.toFixed(0)} ms, debrief ${times[1]?.toFixed(0)} ms`,
    );
    return times;
  });
  for (const [i, what] of ['replay', 'debrief'].entries()) {
    const slope = slopeOf(grown.map((times) => times[i] as number));
    hold(
      `${what} grows with the operations to the power of ${slope.toFixed(2)}, at most ${STEEPEST}`,
      slope <= STEEPEST,
    );
  }
}

/** For the debrief of every job that comes with the page, done as a faultless trainee does it. */
function printCausesLeft(hold: Hold): void {
  const jobs = scenarioIds.map((id) => {
    const { scenario, file } = scenarioNamed(id);
    const followed = lockstep(scenario, workedAttempt(scenario, file));
    return { id, took: cpuTime(() => toItsEnd(seekingUndone(followed, eliminate(followed))), 1) / 1000 };
  });
  const [longest] = jobs.toSorted((x, y) => y.took - x.took);
  if (longest === undefined) throw new Error('no job comes with the page');
  hold(
    `causes left after each step and what would have told more, of ${jobs.length} jobs at most ${MOST_OF_CAUSES_LEFT} s each: ${longest.took.toFixed(2)} s (${longest.id}), on ${LARGEST} ${jobs.find(({ id }) => id === LARGEST)?.took.toFixed(2)} s`,
    longest.took <= MOST_OF_CAUSES_LEFT,
  );
}

/** Every cause of the catalogue at three severities through every test; once, since what is known of it then stays. */
function printDictionary(hold: Hold): void {
  const { scenario } = scenarioNamed(LARGEST);
  let rows = 0;
  const took = cpuTime(() => {
    rows = toItsEnd(lookingUp(scenario, { everything: true })).rows.length;
  }, 1);
  hold(
    `the whole catalogue on ${LARGEST}, ${rows} rows, at most ${MOST_OF_DICTIONARY} s: ${(took / 1000).toFixed(1)} s`,
    took <= 1000 * MOST_OF_DICTIONARY,
  );
}

/** Least squares of the logarithms. */
function slopeOf(times: readonly number[]): number {
  const points = times.map((time, i) => [Math.log(OPERATIONS[i] as number), Math.log(time)] as const);
  const mean = (of: 0 | 1) => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const up = points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0);
  return up / points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
}

/** The same attempt over and over, not concluded, until it has so many operations. */
function withOperations({ entries, ...attempt }: Attempt, count: number): Attempt {
  const long: Attempt['entries'][number][] = [];
  const working = entries.filter(({ kind }) => kind !== 'conclusion');
  for (let done = 0; done < count; ) {
    const next = working[long.length % working.length] as Attempt['entries'][number];
    long.push(next);
    if (next.kind === 'operation') done += 1;
  }
  return { ...attempt, entries: long };
}
