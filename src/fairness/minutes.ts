/**
 * How long tests take a fluent person, for whoever sets a job: taps as they were counted, and its lines read. The same
 * sum that the aims state their minutes by (src/words/aims.ts). A design choice, no measurement of learners.
 */
import type { Seconds } from '../laws/quantities.ts';
import { pairsOf } from '../site/part.ts';
import { livesOf } from '../site/site.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import { TAPS } from './taps.ts';
import LINES from './testLines.json' with { type: 'json' };

/** How much support there is; each is one of the rungs from 1 to 4. */
export const SUPPORTS = ['guided', 'practice', 'harder practice', 'assessment'] as const;
export type Support = (typeof SUPPORTS)[number];

const A_TAP: Seconds = 1.2;
const WORDS_A_MINUTE = 250;
/** To begin and to conclude. */
export const ROUND_ABOUT: Seconds = 90;
/** Like readings are rows of one table. */
const TAPS_A_ROW = 2;
/** Lines among which those that matter are chosen. */
const CHOSEN_AMONG = 10;
/** Of the taps at practice: medians over all tests of a single-phase job were counted at 12 and 23. */
const GUIDED_SHARE = 12 / 23;

interface Counted {
  /** Where taps were counted, or on a site like that. */
  readonly readings: number;
  /** Of its lines at practice. */
  readonly lines: number;
  readonly words: number;
}

const countedOf = (test: string): Counted =>
  (LINES as Readonly<Record<string, Counted>>)[test] ?? { readings: 1, lines: 3, words: 60 };

/** Readings that its own steps take on an installation with these papers. */
export const readingsIn = (action: TestAction, papers: Papers): number =>
  action.steps(papers).reduce((sum, step) => {
    if (step.op === 'measure') return sum + 1;
    return step.op === 'prove-dead' ? sum + pairsOf([...livesOf(papers.site), 'PE']).length : sum;
  }, 0);

/** Time that one test takes, s. */
export function secondsOf(action: TestAction, papers: Papers, support: Support = 'practice'): Seconds {
  const { readings, lines, words } = countedOf(action.id);
  const rows = Math.max(0, readingsIn(action, papers) - readings);
  const taps = (TAPS[action.id] ?? 30) + TAPS_A_ROW * rows;
  const read = (60 * words) / WORDS_A_MINUTE;
  switch (support) {
    // The lines are filled in: they are read once, to judge by.
    case 'guided':
      return A_TAP * taps * GUIDED_SHARE + read;
    case 'practice':
    case 'assessment':
      return A_TAP * taps + 2 * read;
    case 'harder practice':
      return A_TAP * taps + 2 * read * Math.max(1, CHOSEN_AMONG / lines);
  }
}

/** How much dearer a minute is beside live parts. A design choice. */
const LIVE = 1.25;

/** What one test costs of time and risk, in seconds of dead work at practice: by it ways to a cause are compared. */
export const costOf = (action: TestAction, papers: Papers): Seconds =>
  secondsOf(action, papers) * (action.from === 'energised' ? LIVE : 1);

/** Whole minutes that a job of these tests takes, with what it takes to begin and to conclude. */
export const minutesOf = (
  actions: readonly TestAction[],
  papers: Papers,
  support: Support = 'practice',
): number =>
  Math.round(
    (ROUND_ABOUT + actions.reduce((sum, action) => sum + secondsOf(action, papers, support), 0)) / 60,
  );

/** The same on every rung. */
export const minutesByRung = (
  actions: readonly TestAction[],
  papers: Papers,
): Readonly<Record<Support, number>> =>
  Object.fromEntries(SUPPORTS.map((support) => [support, minutesOf(actions, papers, support)])) as Record<
    Support,
    number
  >;
