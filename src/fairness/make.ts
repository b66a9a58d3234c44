/**
 * Draws a short job that can be solved: of a level, the families that its fault may be of, the minutes it may take and a
 * seed always the same one. Every third has nothing wrong unless families are named. What is not the trainee's to do is
 * handed over as done, so that a fault shows in the tests of the job alone.
 */
import { drawer } from '../bench/draw.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import { CATALOGUE } from '../faults/catalogue.ts';
import type { Family } from '../faults/families.ts';
import INSTALLATIONS from '../scenario/aimSites.json' with { type: 'json' };
import type { SiteId } from '../scenario/aims.ts';
import { SITES } from '../scenario/aims.ts';
import { readScenario } from '../scenario/readScenario.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { applicableActions, papersOf, scenarioIn } from '../scenario/scenario.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { sized, soundCause } from './cause.ts';
import { comparing } from './fairness.ts';
import { minutesOf } from './minutes.ts';
import { seenBy, visibility } from './relations.ts';
import type { Row } from './row.ts';
import { Trials } from './trials.ts';

export const LEVELS = [1, 2, 3] as const;
export type Level = (typeof LEVELS)[number];

interface Rules {
  readonly sites: readonly SiteId[];
  /** Whether it has its usual size, or the least at which it still shows. */
  readonly size: 'usual' | 'least';
  /** Unless they are given. */
  readonly minutes: number;
}

const RULES: Readonly<Record<Level, Rules>> = {
  1: { sites: SITES.filter((site) => site.startsWith('single')), size: 'usual', minutes: 10 },
  2: { sites: SITES, size: 'usual', minutes: 15 },
  3: { sites: SITES, size: 'least', minutes: 20 },
};

export interface JobAsked {
  readonly level: Level;
  readonly seed: number;
  /** Empty: any, or nothing wrong. */
  readonly families: readonly Family[];
  /** Null: as many as the level has. */
  readonly minutes: number | null;
}

/** What is told of a job beforehand; nothing of it depends on what is wrong. Its words are in src/words/madeJobs.ts. */
export interface MadeJobWords {
  readonly title: string;
  readonly brief: string;
  readonly by: string;
}

/** After so many draws there is taken to be none. */
const MOST_DRAWS = 20;
const SOUND_SHARE = 1 / 3;
const FEWEST_TESTS = 4;
const MOST_TESTS = 8;
/** A day's clock; what is tested does not hang on it. */
const CLOCK = '2026-05-12T10:00';

/** The scenario file's object, or null where no draw can be solved within the minutes. */
export const makeJob = (
  asked: JobAsked,
  words: (site: SiteId, seed: number) => MadeJobWords,
): object | null => toItsEnd(makingJob(asked, words));

/** The same in pieces. */
export function* makingJob(
  asked: JobAsked,
  words: (site: SiteId, seed: number) => MadeJobWords,
): Generator<unknown, object | null> {
  const draw = drawer(asked.seed);
  const isSound = asked.families.length === 0 && draw('made-job-sound') < SOUND_SHARE;
  for (let n = 0; n < MOST_DRAWS; n++) {
    const pick = <T>(what: string, list: readonly T[]): T =>
      list[Math.floor(list.length * draw(`made-job-${what}-${n}`))] as T;
    const site = pick('site', RULES[asked.level].sites);
    const frame = { ...asked, site, words: words(site, asked.seed) };
    const whole = scenarioIn(fileOf(frame, [], []));
    const cause = isSound ? soundCause : yield* drawnCause(whole, asked, pick);
    if (cause === null) continue;
    const tests = yield* drawnTests(whole, asked, cause, (test) => draw(`made-job-test-${n}-${test}`));
    if (tests === null) continue;
    const file = fileOf(frame, cause.faults, tests);
    const read = readScenario(file);
    // Refused: a test that is handed over could not have been signed.
    if (read.ok && (yield* comparing(read.scenario)).solvable) return file;
    yield null;
  }
  return null;
}

interface Frame extends JobAsked {
  readonly site: SiteId;
  readonly words: MadeJobWords;
}

function fileOf(
  { level, seed, site, words: { title, brief, by } }: Frame,
  faults: readonly FaultChoice[],
  tests: readonly string[],
): object {
  const { site: installation, unit, rules } = INSTALLATIONS[site];
  return {
    format: 1,
    id: `made-${level}-${seed}`,
    ...{ title, brief, rules },
    clock: CLOCK,
    site: installation,
    unit,
    faults: faults.map(({ fault, values }) => ({ fault, ...values })),
    ...(tests.length === 0 ? { allowed: 'all' } : { allowed: tests, handover: { by, done: 'others' } }),
    support: 'practice',
    seed,
  };
}

/** A cause of these families that the installation can have, at the size of the level; null where there is none. */
function* drawnCause(
  whole: Scenario,
  { level, families }: JobAsked,
  pick: <T>(what: string, list: readonly T[]) => T,
): Generator<unknown, Cause | null> {
  const possible = CATALOGUE.filter(
    ({ family }) => families.length === 0 || families.includes(family),
  ).flatMap((entry) => (entry.kind === 'fault' ? [sized(entry, whole)] : []));
  const sizes = pick(
    'fault',
    possible.filter(({ length }) => length > 0),
  );
  if (sizes === undefined) return null;
  const usual = pick(
    'place',
    sizes.filter(({ size }) => size === 'usual'),
  );
  if (RULES[level].size === 'usual') return usual ?? null;
  const trials = new Trials(whole);
  const tests = applicableActions(whole);
  const sound = yield* trials.row(soundCause, tests);
  const rows: Row[] = [];
  for (const cause of sizes) {
    const row = yield* trials.row(cause, tests);
    if (seenBy(row, sound).length > 0) rows.push(row);
  }
  const [least] = rows.toSorted((x, y) => {
    const [a, b] = [visibility(x, sound), visibility(y, sound)];
    return a[0] - b[0] || a[1] - b[1];
  });
  return least?.cause ?? null;
}

/**
 * The tests of the job: all that read otherwise than nothing wrong would, so that what is handed over tells nothing, and
 * some drawn beside them; null where they would take too long.
 */
function* drawnTests(
  whole: Scenario,
  { level, minutes }: JobAsked,
  cause: Cause,
  draw: (test: string) => number,
): Generator<unknown, readonly string[] | null> {
  const trials = new Trials(whole);
  const papers = papersOf(whole, cause.faults);
  const all = applicableActions(whole);
  const most = minutes ?? RULES[level].minutes;
  const sound = yield* trials.row(soundCause, all);
  const row = cause === soundCause ? sound : yield* trials.rowBeyond(cause, all);
  const due = cause === soundCause ? [] : seenBy(row, sound);
  if (cause !== soundCause && due.length === 0) return null;
  const chosen: TestAction[] = all.filter(({ id }) => due.includes(id));
  for (const action of all.toSorted((x, y) => draw(x.id) - draw(y.id))) {
    if (chosen.length >= FEWEST_TESTS + Math.floor((MOST_TESTS + 1 - FEWEST_TESTS) * draw('how many'))) break;
    if (!chosen.includes(action) && minutesOf([...chosen, action], papers) <= most) chosen.push(action);
  }
  if (chosen.length > MOST_TESTS || chosen.length < FEWEST_TESTS || minutesOf(chosen, papers) > most)
    return null;
  return all.filter((action) => chosen.includes(action)).map(({ id }) => id);
}

/** A number that is one of the levels. */
export const isLevel = (level: number): level is Level => (LEVELS as readonly number[]).includes(level);
