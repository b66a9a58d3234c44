/*
 * Collecting beside a bare replay of the same logs, in this one run: five hundred attempts of a short job by thirty
 * simulated trainees, each under labels of its own; and thirty whole jobs on one core.
 */
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { brokenLinks } from '../../src/attempt/record/attempt.ts';
import { readLog } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { replay } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { classOf } from '../../src/desk/class.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { parseJson } from '../../src/scenario/json.ts';
import { handedIn, labelled, labelOf } from '../desk/handedIn.ts';
import { givingOf, readGiving, SHIPPED } from '../desk/helpers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { medianOf } from './median.ts';

/** Thirty whole jobs, s, at most. */
const MOST_SECONDS = 60;
const ATTEMPTS = 500;
const TRAINEES = 30;
const TURNS = 5;

interface Timed {
  readonly collected: number;
  /** The logs alone, by those who have them in memory. */
  readonly replayed: number;
  /** The files read and checked, each link of their chains made again, and replayed: what no collecting may leave out. */
  readonly proved: number;
  readonly read: number;
  readonly chained: number;
}

/** CPU time, so that what else the machine does is not measured; ms. */
function cpuTime(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function timed(id: string, count: number, turns: number): Timed {
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
  const logs = () => files.map(({ text }) => logIn(text));
  const chained = (all: readonly Attempt[]) => all.flatMap(brokenLinks);
  const replayed = (all: readonly Attempt[]) => all.map((attempt) => replay(scenario, attempt).seen);
  const took: { [What in keyof Timed]: number[] } = {
    collected: [],
    replayed: [],
    proved: [],
    read: [],
    chained: [],
  };
  for (let turn = 0; turn < turns; turn += 1) {
    const read = logs();
    took.replayed.push(cpuTime(() => replayed(attempts)));
    took.collected.push(cpuTime(collect));
    took.read.push(cpuTime(logs));
    took.chained.push(cpuTime(() => chained(read)));
    took.proved.push(
      cpuTime(() => {
        const all = logs();
        return [chained(all), replayed(all)];
      }),
    );
  }
  return mapped(took, medianOf);
}

function logIn(text: string): Attempt {
  const json = parseJson(text);
  const read = json.ok ? readLog(json.value) : json;
  if (!read.ok) throw new Error('a file that was written here can be read');
  return read.value;
}

const mapped = (took: { [What in keyof Timed]: number[] }, of: (list: number[]) => number): Timed => ({
  collected: of(took.collected),
  replayed: of(took.replayed),
  proved: of(took.proved),
  read: of(took.read),
  chained: of(took.chained),
});

function say(what: string, count: number, took: Timed): void {
  const each = (ms: number) => `${(ms / count).toFixed(2)} ms`;
  const times = (of: number) => `${(took.collected / of).toFixed(2)} times`;
  console.log(`  ${count} ${what}, each: collected ${each(took.collected)}`);
  console.log(
    `    replayed from memory ${each(took.replayed)} (collected: ${times(took.replayed)}); file read ${each(took.read)}, chain made again ${each(took.chained)}`,
  );
  console.log(
    `    read, chain made again and replayed ${each(took.proved)} (collected: ${times(took.proved)})`,
  );
}

/** What reading, chain and marks cost beside the replay is printed; how long a class of whole jobs takes is held. */
export function printCollecting(hold: (what: string, kept: boolean) => void): void {
  console.log('\ncollecting, CPU time beside a bare replay of the same logs');
  const short = timed('find-dyers-row', ATTEMPTS, TURNS);
  say('attempts of six tests', ATTEMPTS, short);
  const whole = timed('harbour-mews', TRAINEES, 3);
  say('whole jobs', TRAINEES, whole);
  console.log(`  ${TRAINEES} whole jobs: ${(whole.collected / 1000).toFixed(1)} s on one core`);
  hold(`at most ${MOST_SECONDS} s`, whole.collected <= 1000 * MOST_SECONDS);
}
