/*
 * Collecting beside a bare replay of the same files, in this one run: five hundred attempts of a short job by thirty
 * simulated trainees, each under labels of its own; and thirty whole jobs on one core. A bare replay of a file that was
 * handed in is what nobody who trusts nothing can leave out: opened as the trainer opens it, each link of its chain made
 * again, its log replayed. That of a log that is in memory already is printed beside it.
 */
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { brokenLinks } from '../../src/attempt/record/attempt.ts';
import type { ReadAttempt } from '../../src/attempt/record/file.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { replay } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { classOf } from '../../src/desk/class.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { handedIn, labelled, labelOf } from '../desk/handedIn.ts';
import { givingOf, readGiving, SHIPPED } from '../desk/helpers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

/** Bare replays that collecting takes, at most. */
const MOST_OF_REPLAY = 1.3;
/** Thirty whole jobs, s, at most. */
const MOST_SECONDS = 60;
const ATTEMPTS = 500;
const TRAINEES = 30;
/** The first turns warm the code and count for nothing, as in engineSpeed.ts. */
const TURNS = { warming: 4, timed: 8 };

interface Timed {
  readonly collected: number;
  /** The logs alone, by those who have them in memory. */
  readonly replayed: number;
  /** The files opened, each link of their chains made again, and replayed. */
  readonly bare: number;
  readonly opened: number;
  readonly chained: number;
}

/** On the clock, ms: what whoever collects waits for. Turn and turn about, so that what else the machine does falls on all. */
function timeOf(work: () => unknown): number {
  const before = performance.now();
  work();
  return performance.now() - before;
}

function timed(id: string, count: number): Timed {
  const read = readGiving(givingOf([scenarioNamed(id).file as object]));
  const worked = handedIn(read, Math.min(TRAINEES, count));
  const attempts = Array.from({ length: count }, (_, i) => {
    const one = worked[i % worked.length] as (typeof worked)[number];
    return i < worked.length ? one : labelled(one, labelOf(i));
  });
  const files = attempts.map((attempt, i) => ({ name: `${i}.json`, text: makeAttemptText(attempt) }));
  const { scenario } = read.jobs[0] as (typeof read.jobs)[number];
  const collect = () => {
    const copies = new Copies([read], SHIPPED);
    return classOf(
      files.map((file) => toItsEnd(collecting(file, copies))),
      [read.giving],
    );
  };
  const open = () => files.map(({ text }) => openedFrom(text));
  const chained = (all: readonly Attempt[]) => all.flatMap(brokenLinks);
  const replayed = (all: readonly ReadAttempt[]) => all.map((one) => replay(one.scenario, one.attempt).seen);
  const took: { [What in keyof Timed]: number[] } = {
    collected: [],
    replayed: [],
    bare: [],
    opened: [],
    chained: [],
  };
  for (let turn = 0; turn < TURNS.warming + TURNS.timed; turn += 1) {
    const inMemory = open();
    const logs = inMemory.map(({ attempt }) => attempt);
    took.replayed.push(timeOf(() => replayed(attempts.map((attempt) => ({ scenario, attempt })))));
    took.collected.push(timeOf(collect));
    took.opened.push(timeOf(open));
    took.chained.push(timeOf(() => chained(logs)));
    took.bare.push(
      timeOf(() => {
        const all = open();
        return [chained(all.map(({ attempt }) => attempt)), replayed(all)];
      }),
    );
  }
  // A sweep of the memory falls into one turn or the next: what counts is what all of them took.
  return mapped(took, (list) => meanOf(list.slice(TURNS.warming)));
}

const meanOf = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0) / list.length;

function openedFrom(text: string): ReadAttempt {
  const read = parseAttempt(text);
  if (!read.ok) throw new Error('a file that was written here can be opened');
  return read.value;
}

const mapped = (took: { [What in keyof Timed]: number[] }, of: (list: number[]) => number): Timed => ({
  collected: of(took.collected),
  replayed: of(took.replayed),
  bare: of(took.bare),
  opened: of(took.opened),
  chained: of(took.chained),
});

function say(what: string, count: number, took: Timed): void {
  const each = (ms: number) => `${(ms / count).toFixed(2)} ms`;
  const times = (of: number) => `${(took.collected / of).toFixed(2)} times`;
  console.log(`  ${count} ${what}, each: collected ${each(took.collected)}`);
  console.log(
    `    bare replay of the file ${each(took.bare)} (collected: ${times(took.bare)}): opened ${each(took.opened)}, chain made again ${each(took.chained)}`,
  );
  console.log(`    replayed from memory ${each(took.replayed)} (collected: ${times(took.replayed)})`);
}

/** What opening, chain and marks cost is printed; what all of it costs beside a bare replay and how long a class takes is held. */
export function printCollecting(hold: (what: string, kept: boolean) => void): void {
  console.log('\ncollecting, on the clock, beside a bare replay of the same files');
  const short = timed('find-dyers-row', ATTEMPTS);
  say('attempts of six tests', ATTEMPTS, short);
  const ratio = short.collected / short.bare;
  hold(`at most ${MOST_OF_REPLAY} bare replays: ${ratio.toFixed(2)}`, ratio <= MOST_OF_REPLAY);
  const whole = timed('harbour-mews', TRAINEES);
  say('whole jobs', TRAINEES, whole);
  console.log(`  ${TRAINEES} whole jobs: ${(whole.collected / 1000).toFixed(1)} s on one core`);
  hold(`at most ${MOST_SECONDS} s`, whole.collected <= 1000 * MOST_SECONDS);
}
