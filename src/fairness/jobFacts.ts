/**
 * What a shelf says of a job: how long it takes, at how many of its tests what is wrong shows, and how hard that makes
 * it. Worked out once for the jobs that come with the page (`npm run job-facts`).
 */
import { toItsEnd } from '../bench/toItsEnd.ts';
import type { AimId } from '../scenario/aims.ts';
import { aimOf } from '../scenario/aims.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { papersOf } from '../scenario/scenario.ts';
import { actionNamed } from '../verification/actions.ts';
import type { TestAction } from '../verification/testAction.ts';
import { lookingUp } from './dictionary.ts';
import type { Level } from './make.ts';
import { minutesOf } from './minutes.ts';
import { seenBy } from './relations.ts';
import type { Row } from './row.ts';
import { ownRowOf } from './row.ts';

export interface JobFacts {
  /** Whole minutes at practice, of all that a faultless trainee does. */
  readonly minutes: number;
  /** Tests to do, and those of them that show what is wrong; none where nothing is. */
  readonly tests: number;
  readonly shows: number;
  /** The aim of the first test that shows it; null where nothing is wrong. */
  readonly aim: AimId | null;
  readonly level: Level;
}

/** Where so large a share of the tests shows it, it is met soon. A design choice. */
const SOON = 1 / 4;
const LATER = 1 / 10;

export function jobFactsOf(scenario: Scenario): JobFacts {
  const { rows, tests } = toItsEnd(lookingUp(scenario, { only: [] }));
  const [sound] = rows as readonly [Row, ...Row[]];
  const own = ownRowOf(rows);
  const shows = own === sound ? [] : seenBy(own, sound);
  const done = tests.filter((test) => own.cells.has(test)).map((test) => actionNamed(test) as TestAction);
  return {
    minutes: minutesOf(done, papersOf(scenario)),
    tests: tests.length,
    shows: shows.length,
    aim: shows[0] === undefined ? null : aimOf(shows[0]),
    // That nothing is wrong has to be found out by all of them.
    level: shows.length >= SOON * tests.length ? 1 : shows.length >= LATER * tests.length ? 2 : 3,
  };
}
