/*
 * Collecting beside a bare replay of the same logs, in this one run: five hundred attempts of a short job by thirty
 * simulated trainees, each under labels of its own; and thirty whole jobs on one core.
 */
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { replay } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { classOf } from '../../src/desk/class.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
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
  readonly replayed: number;
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
  const replayAll = () => {
    for (const attempt of attempts) replay(scenario, attempt);
  };
  const took: { collected: number[]; replayed: number[] } = { collected: [], replayed: [] };
  for (let turn = 0; turn < turns; turn += 1) {
    took.replayed.push(cpuTime(replayAll));
    took.collected.push(cpuTime(collect));
  }
  return { collected: medianOf(took.collected), replayed: medianOf(took.replayed) };
}

/** What reading, chain and marks cost beside the replay is printed; how long a class of whole jobs takes is held. */
export function printCollecting(hold: (what: string, kept: boolean) => void): void {
  console.log('\ncollecting, CPU time beside a bare replay of the same logs');
  const short = timed('find-dyers-row', ATTEMPTS, TURNS);
  const ratio = short.collected / short.replayed;
  console.log(
    `  ${ATTEMPTS} attempts of six tests: ${Math.round(short.collected)} ms, replayed ${Math.round(short.replayed)} ms, ${ratio.toFixed(2)} times`,
  );
  const whole = timed('harbour-mews', TRAINEES, 1);
  console.log(`  ${TRAINEES} whole jobs: ${(whole.collected / 1000).toFixed(1)} s on one core`);
  hold(`at most ${MOST_SECONDS} s`, whole.collected <= 1000 * MOST_SECONDS);
}
