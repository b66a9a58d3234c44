// What is next, and why: each of the reasons, the order in which they come, and the record that has nothing in it.

import { describe, expect, test } from 'vitest';
import type { TestOutcome } from '../../src/attempt/marks/summary.ts';
import { ENGINE } from '../../src/attempt/record/attempt.ts';
import type { AimId } from '../../src/scenario/aims.ts';
import { AIMS, aimJobId } from '../../src/scenario/aims.ts';
import type { About } from '../../src/store/about.ts';
import { aboutOf } from '../../src/store/about.ts';
import type { DueCard } from '../../src/store/comesBack.ts';
import { dueTopics } from '../../src/store/comesBack.ts';
import { aimAttempts, aimResult, scenarioResult } from '../../src/store/jobResults.ts';
import { nextForYou } from '../../src/store/next.ts';
import type { Goal } from '../../src/store/recordText.ts';
import { whyText } from '../../src/words/next.ts';

const DAY = 86_400_000;
const NOW = 100 * DAY;

const outcome = (name: string, own: Partial<TestOutcome> = {}): TestOutcome => ({
  test: name,
  done: true,
  right: true,
  sureAndWrong: false,
  ...own,
});

interface Made {
  readonly day: number;
  readonly tests: readonly TestOutcome[];
  readonly aim?: AimId;
  readonly rung?: 1 | 2 | 3;
  readonly total?: number;
  readonly own?: Partial<About>;
}

function made({ day, tests, aim, rung = 1, total = 90, own = {} }: Made): About {
  const id = aim === undefined ? 'harbour-mews' : aimJobId({ aim, site: 'single-tt', seed: day });
  const file = { id, title: id, support: rung === 1 ? 'guided' : 'practice' };
  const attempt = { format: 2, engine: ENGINE, scenario: file, rung, entries: [] };
  return {
    ...aboutOf(`kept-${day}`, attempt as unknown as Parameters<typeof aboutOf>[1], { changed: day * DAY }),
    concluded: true,
    summary: {
      engine: ENGINE,
      head: null,
      said: 'fit',
      verdictRight: true,
      criticalActs: 0,
      verdictGate: true,
      gatesMet: true,
      passed: true,
      total,
      of: 100,
      differs: 0,
      topics: [],
      tests,
      calibration: [],
    },
    ...own,
  };
}

/** Everything done and right, aim by aim, one a day from a day on. */
const allDone = (from: number): readonly About[] =>
  AIMS.map(({ id, tests }, i) => made({ day: from + i, aim: id, tests: tests.map((one) => outcome(one)) }));

const next = (
  kept: readonly About[],
  goal: Goal | null = null,
  hadFirstRun = false,
  cards: readonly DueCard[] = [],
  assessment: number | null = null,
) => nextForYou({ kept, goal, due: dueTopics(cards, assessment, NOW), hadFirstRun, now: NOW });

describe('with nothing done', () => {
  test('it is the first run', () => {
    expect(next([])).toEqual({ kind: 'first run' });
  });

  test('nor does an unfinished attempt or a guest’s count', () => {
    const tests = [outcome('ze')];
    const open = made({ day: 3, aim: 'earth', tests, own: { concluded: false, summary: null } });
    const guest = made({ day: 4, aim: 'earth', tests, own: { isGuest: true } });
    expect(next([open, guest])).toEqual({ kind: 'first run' });
  });

  test('after the first run it is the first aim, with the most help', () => {
    expect(next([], null, true)).toEqual({
      kind: 'aim',
      aim: 'design',
      rung: 1,
      why: { what: 'not tried' },
    });
  });
});

const GOAL: Goal = { text: 'Loop: read it again.', at: 60 * DAY, tests: ['loop'] };
const WRONG = made({
  day: 50,
  aim: 'offer',
  tests: [outcome('state-b', { right: false, sureAndWrong: true })],
});
const LEFT = made({
  day: 52,
  aim: 'outlet-dead',
  tests: [outcome('state-a'), outcome('unplug', { done: false, right: false })],
});

describe('the reasons, in their order', () => {
  test('a goal kept comes before all', () => {
    expect(next([...allDone(1), WRONG, LEFT], GOAL)).toMatchObject({
      aim: 'clears',
      why: { what: 'goal', text: 'Loop: read it again.' },
    });
  });

  test('a goal that was gone after since, or that names no test, is none', () => {
    const since = made({ day: 61, aim: 'clears', tests: [outcome('loop')] });
    expect(next([...allDone(1), WRONG, since], GOAL)).toMatchObject({ why: { what: 'sure and wrong' } });
    const { tests: _, ...own } = GOAL;
    expect(next([...allDone(1), WRONG], own)).toMatchObject({ why: { what: 'sure and wrong' } });
  });

  test('then what one was sure of and wrong in, though something was left out later', () => {
    expect(next([...allDone(1), WRONG, LEFT])).toMatchObject({
      aim: 'offer',
      why: { what: 'sure and wrong', at: 50 * DAY },
    });
  });

  test('unless it was right the next time', () => {
    const again = made({ day: 55, aim: 'offer', tests: [outcome('state-b')] });
    expect(next([...allDone(1), WRONG, LEFT, again])).toMatchObject({
      aim: 'outlet-dead',
      why: { what: 'left out', tests: 1, at: 52 * DAY },
    });
  });

  test('then what was left out, in a whole job as well', () => {
    const whole = made({
      day: 53,
      tests: [outcome('ze', { done: false }), outcome('pe-outlet', { done: false })],
    });
    expect(next([...allDone(1), LEFT, whole])).toMatchObject({
      aim: 'earth',
      why: { what: 'left out', tests: 2, at: 53 * DAY },
    });
  });

  test('then an aim never tried, then the one done longest ago', () => {
    const all = allDone(80);
    expect(next(all.filter(({ scenario }) => scenario?.startsWith('aim-offer-') !== true))).toMatchObject({
      aim: 'offer',
      why: { what: 'not tried' },
    });
    const again = made({ day: 99, aim: 'design', tests: [outcome('papers')] });
    expect(next([...all, again])).toMatchObject({ aim: 'dead', why: { what: 'longest ago', days: 19 } });
  });
});

test('the rung goes up after two good ones of this aim, and never to an assessment', () => {
  const good = (day: number, rung: 1 | 2 | 3) =>
    made({ day, aim: 'offer', rung, total: 95, tests: [outcome('state-b', { sureAndWrong: day === 96 })] });
  expect(next([good(90, 1), good(96, 1)])).toMatchObject({ aim: 'offer', rung: 2 });
  expect(next([good(96, 1)])).toMatchObject({ aim: 'offer', rung: 1 });
  expect(next([good(90, 3), good(96, 3)])).toMatchObject({ aim: 'offer', rung: 3 });
});

test('best result and last date, by aim and rung', () => {
  const half = made({
    day: 10,
    aim: 'dead',
    tests: [outcome('isolate'), outcome('prove-dead', { right: false })],
  });
  const good = made({ day: 8, aim: 'dead', tests: [outcome('isolate'), outcome('prove-dead')] });
  const other = made({ day: 12, aim: 'dead', rung: 2, tests: [outcome('isolate', { right: false })] });
  const attempts = aimAttempts([half, good, other]);
  expect(aimResult(attempts, 'dead', 1)).toEqual({ right: 2, done: 2, last: 10 * DAY });
  expect(aimResult(attempts, 'dead', 2)).toEqual({ right: 0, done: 1, last: 12 * DAY });
  expect(aimResult(attempts, 'dead', 3)).toBeNull();
  expect(aimResult(attempts, 'earth', 1)).toBeNull();
});

test('of a scenario on whatever rung: not a guest’s, and not what is unfinished', () => {
  const done = (day: number, right: boolean, own: Partial<About> = {}) =>
    made({ day, rung: day > 5 ? 2 : 1, tests: [outcome('papers'), outcome('isolate', { right })], own });
  expect(scenarioResult([done(3, true), done(9, false)], 'harbour-mews')).toEqual({
    right: 2,
    done: 2,
    last: 9 * DAY,
  });
  const others = [done(3, true, { isGuest: true }), done(9, true, { concluded: false })];
  expect(scenarioResult(others, 'harbour-mews')).toBeNull();
  expect(scenarioResult([done(3, true)], 'fen-barn')).toBeNull();
});

describe('questions that come back', () => {
  const due = [
    { topic: 'offer', kind: null, due: NOW, last: NOW - 9 * DAY },
    { topic: 'offer', kind: 'duty-of-current', due: NOW - DAY, last: NOW - 9 * DAY },
    { topic: 'dead', kind: null, due: NOW - 2 * DAY, last: NOW - 9 * DAY },
  ] as const;
  const later = [{ topic: 'offer', kind: null, due: NOW + 20 * DAY, last: NOW - 9 * DAY }] as const;

  test('come before what was merely not done for long', () => {
    const questions = { kind: 'questions', why: { what: 'due', topics: 2, wrong: 1, assessment: null } };
    expect(next(allDone(10), null, true, due)).toEqual(questions);
    expect(next([], null, true, due)).toEqual(questions);
  });

  test('and not before their day', () => {
    expect(next(allDone(10), null, true, [{ ...due[0], due: NOW + 1 }]).kind).toBe('aim');
  });

  test('but on the day before an assessment, which is said', () => {
    const assessment = NOW + DAY / 2;
    expect(next(allDone(10), null, true, later, NOW + 5 * DAY).kind).toBe('aim');
    const found = next(allDone(10), null, true, later, assessment);
    expect(found).toEqual({ kind: 'questions', why: { what: 'due', topics: 1, wrong: 0, assessment } });
    const text = 'why' in found ? whyText(found.why, () => '24 December') : '';
    expect(text).toBe('One topic comes back today. Your assessment is on 24 December.');
  });

  test('nor before what went wrong on a bench, nor before the first run', () => {
    expect(next([WRONG], null, true, due)).toMatchObject({ why: { what: 'sure and wrong' } });
    expect(next([LEFT], null, true, due)).toMatchObject({ why: { what: 'left out' } });
    expect(next([], null, false, due)).toEqual({ kind: 'first run' });
  });
});
