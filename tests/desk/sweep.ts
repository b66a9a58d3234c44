/** Many tampered attempts and doctored scenarios collected, each held against what the tutor's own copy makes of its log. */
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { drawer } from '../../src/bench/draw.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { Row } from '../../src/desk/collect.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { whyNotMarked } from '../../src/words/collect.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { handedIn } from './handedIn.ts';
import { givingOf, readGiving, SHIPPED } from './helpers.ts';
import { doctored, tampered } from './tampering.ts';

/** What of a log that was changed must be named; those of one whose chain was made again cannot be. */
const OF_LOG = ['chain', 'log-differs', 'untimely', 'not-concluded'];

/** What went wrong, a line each; none where all is as it should be. */
export function sweepTampered(asked: {
  readonly tampered: number;
  readonly doctored: number;
  readonly seed: number;
}): readonly string[] {
  const read = readGiving(givingOf([scenarioNamed('find-dyers-row').file as object]));
  const scenario = read.jobs[0]?.scenario as NonNullable<(typeof read.jobs)[0]>['scenario'];
  const honest = handedIn(read, 3).map((attempt) => ({ attempt, true: mark(scenario, attempt) }));
  const copies = new Copies([read], SHIPPED);
  const found: string[] = [];
  const collect = (name: string, text: string): Row => toItsEnd(collecting({ name, text }, copies));
  const of = (i: number) => honest[i % honest.length] as (typeof honest)[number];
  for (let i = 0; i < asked.doctored; i += 1) {
    const { what, text } = doctored(of(i).attempt, drawer(asked.seed * 100_003 + i));
    const row = collect(what, text);
    if (row.kind === 'refused') {
      if (whyNotMarked(row).length < 10) found.push(`${i} ${what}: refused without a reason`);
    } else if (row.kind === 'quiz') found.push(`${i} ${what}: taken for a quiz`);
    else if (row.marks.total !== of(i).true.total) found.push(`${i} ${what}: ${row.marks.total}`);
    else if (!row.looks.some(({ id }) => id === 'job-differs' || id === 'rung-differs' || id === 'chain'))
      found.push(`${i} ${what}: not named`);
  }
  for (let i = 0; i < asked.tampered; i += 1) {
    const made = tampered(of(i).attempt, drawer(asked.seed * 200_003 + i));
    const row = collect(made.what, made.text);
    if (row.kind === 'refused') {
      if (whyNotMarked(row).length < 10) found.push(`${i} ${made.what}: refused without a reason`);
      continue;
    }
    if (row.kind === 'quiz') {
      found.push(`${i} ${made.what}: taken for a quiz`);
      continue;
    }
    const honestly = of(i).true.total;
    if (made.sameLog && row.marks.total !== honestly)
      found.push(`${i} ${made.what}: ${row.marks.total} in place of ${honestly}`);
    // By the log as it now is, on the tutor's copy.
    const log = JSON.parse(made.text) as Attempt;
    const total = mark(scenario, { ...log, rung: 2 }).total;
    if (row.marks.total !== total)
      found.push(`${i} ${made.what}: ${row.marks.total}, its log is worth ${total}`);
    const named = row.looks.map(({ id }) => id);
    if (!made.sameLog && !made.chained && !named.some((id) => OF_LOG.includes(id)))
      found.push(`${i} ${made.what}: not named`);
  }
  return found;
}
