/**
 * What the summaries of many attempts add up to: topics with the most wrong lines, how the tests of each aim went last,
 * and how often each sureness was right. Which attempts count is the caller's business.
 */
import type { AimId } from '../../scenario/aims.ts';
import { AIMS } from '../../scenario/aims.ts';
import type { Sure } from '../record/attempt.ts';
import { SURENESS } from '../record/attempt.ts';
import type { Summary, Topic } from './summary.ts';

export interface WeakTopic extends Topic {
  /** In how many attempts something of it was wrong. */
  readonly attempts: number;
}

const wrongIn = ({ predictedWrong, judgedWrong }: Topic): number => predictedWrong + judgedWrong;

/** Topics with a wrong line in any attempt, those with the most first; of equally many, by id. */
export function weakTopics(summaries: readonly Summary[]): readonly WeakTopic[] {
  const topics = [...new Set(summaries.flatMap((summary) => summary.topics.map(({ topic }) => topic)))];
  return topics
    .map((topic): WeakTopic => {
      const own = summaries.flatMap((summary) => summary.topics.filter((one) => one.topic === topic));
      const sum = (count: (one: Topic) => number) => own.reduce((total, one) => total + count(one), 0);
      return {
        topic,
        predicted: sum((one) => one.predicted),
        predictedWrong: sum((one) => one.predictedWrong),
        judged: sum((one) => one.judged),
        judgedWrong: sum((one) => one.judgedWrong),
        attempts: own.filter((one) => wrongIn(one) > 0).length,
      };
    })
    .filter((one) => wrongIn(one) > 0)
    .sort((x, y) => wrongIn(y) - wrongIn(x) || (x.topic < y.topic ? -1 : 1));
}

/** How the tests of an aim went when each was last done. */
export interface AimSum {
  readonly aim: AimId;
  /** Wholly right, of so many that were ever done. */
  readonly right: number;
  readonly of: number;
}

/** In the order of the aims, those of which any test was done. `summaries`: the oldest first. */
export function aimSums(summaries: readonly Summary[]): readonly AimSum[] {
  const last = new Map(
    summaries.flatMap(({ tests = [] }) => tests.filter(({ done }) => done).map((one) => [one.test, one])),
  );
  return AIMS.flatMap(({ id, tests }) => {
    const own = tests.flatMap((test) => last.get(test) ?? []);
    return own.length === 0
      ? []
      : [{ aim: id, right: own.filter(({ right }) => right).length, of: own.length }];
  });
}

/**
 * The shares that each sureness claims: about half, three in four, nineteen in twenty, each with room for a line or two
 * of twenty. The room is a design choice.
 */
const CLAIMED: Readonly<Record<Sure, readonly [from: number, to: number]>> = {
  guessing: [0.35, 0.65],
  'fairly-sure': [0.65, 0.85],
  'would-sign': [0.9, 1],
};

/** Below this a share says little: one line more or less moves it by more than ten in a hundred. */
const FEW = 10;

export interface Calibrated {
  readonly sure: Sure;
  readonly claimed: readonly [from: number, to: number];
  readonly right: number;
  readonly of: number;
  /** Share that was right; null where the sureness was never used. */
  readonly share: number | null;
  readonly compared: 'not-used' | 'few-lines' | 'as-often' | 'less-often' | 'more-often';
}

export function calibrationOver(summaries: readonly Summary[]): readonly Calibrated[] {
  return SURENESS.map((sure) => {
    const own = summaries.flatMap(({ calibration }) => calibration.filter((one) => one.sure === sure));
    const right = own.reduce((sum, one) => sum + one.right, 0);
    const of = own.reduce((sum, one) => sum + one.of, 0);
    const share = of === 0 ? null : right / of;
    return {
      sure,
      claimed: CLAIMED[sure],
      right,
      of,
      share,
      compared: comparedWith(CLAIMED[sure], share, of),
    };
  });
}

function comparedWith(
  [from, to]: readonly [number, number],
  share: number | null,
  of: number,
): Calibrated['compared'] {
  if (share === null) return 'not-used';
  if (of < FEW) return 'few-lines';
  return share < from ? 'less-often' : share > to ? 'more-often' : 'as-often';
}
