/**
 * What a record of many attempts keeps of one that is concluded: verdict, gates, total, and the right and wrong lines
 * by topic and by sureness. Worked out from a debrief, so always by replay; which log and which engine it holds for is
 * written into it. What several of them add up to is in recordSums.ts.
 */
import { FAMILIES } from '../../faults/families.ts';
import type { Sure, Verdict } from '../record/attempt.ts';
import { ENGINE } from '../record/attempt.ts';
import type { Debrief, DebriefLine, DebriefTest, TopicId } from './debrief.ts';

/** Lines of one topic: how many were predicted and judged, and how many of them wrongly. */
export interface Topic {
  readonly topic: TopicId;
  readonly predicted: number;
  readonly predictedWrong: number;
  readonly judged: number;
  readonly judgedWrong: number;
}

/** How one test went. */
export interface TestOutcome {
  readonly test: string;
  /** False: it was due and left out. */
  readonly done: boolean;
  /** Done, and nothing of it predicted or judged wrongly. */
  readonly right: boolean;
  /** Some line of it was wrongly predicted, and would have been signed for. */
  readonly sureAndWrong: boolean;
}

export interface Summary {
  readonly engine: string;
  /** Last hash of the log that it was worked out from. */
  readonly head: string | null;
  readonly said: Verdict | null;
  readonly verdictRight: boolean;
  readonly criticalActs: number;
  readonly verdictGate: boolean;
  /** Gates that are not met and not set aside: then it is not passed, whatever the total. */
  readonly gatesMet: boolean;
  /** Null where no pass is stated. */
  readonly passed: boolean | null;
  readonly total: number;
  /** What the total is out of. */
  readonly of: number;
  /** In how many places the file and its replay differ, or something came at the wrong time. */
  readonly differs: number;
  readonly topics: readonly Topic[];
  /** Not in what an earlier version kept. */
  readonly tests?: readonly TestOutcome[];
  readonly calibration: readonly { readonly sure: Sure; readonly right: number; readonly of: number }[];
}

export function summaryOf({ run, marks, verdict, tests, calibration }: Debrief): Summary {
  const { critical, verdict: verdictGate } = marks.gates;
  return {
    engine: ENGINE,
    head: run.attempt.entries.at(-1)?.hash ?? null,
    said: verdict.said,
    verdictRight: verdict.right,
    criticalActs: critical.length,
    verdictGate,
    gatesMet: verdictGate && critical.every(({ setAside }) => setAside !== null),
    passed: marks.passed,
    total: marks.total,
    of: Object.values(run.scenario.marking.weights).reduce((sum, weight) => sum + weight, 0) || 100,
    differs: marks.differs.length + marks.untimely.length,
    tests: tests.flatMap((one) => (one.done || one.counts ? [outcomeOf(one)] : [])),
    topics: topicsOf(tests.flatMap(({ lines }) => lines)),
    calibration,
  };
}

/**
 * A summary holds as long as the log and the engine are those it was worked out with, nothing is missing in it, and its
 * topics are ids: earlier ones were kept in words.
 */
export const holdsFor = (summary: Summary | null, head: string | null): summary is Summary =>
  summary !== null &&
  summary.engine === ENGINE &&
  summary.head === head &&
  summary.tests !== undefined &&
  summary.topics.every(({ topic }) => topic === 'untold' || FAMILIES.includes(topic));

function outcomeOf({ test, done, given, lines, figures, limits }: DebriefTest): TestOutcome {
  const isPredicted = (line: DebriefLine) => line.predicted === line.right || line.leftAlone;
  return {
    test,
    done,
    right:
      done &&
      (given || (lines.every(isPredicted) && figures.every(({ isRight }) => isRight))) &&
      lines.every(({ judged, judgement }) => judged === judgement) &&
      limits.every(({ judged, right }) => judged === right),
    sureAndWrong: lines.some(
      ({ predicted, right, sure }) => predicted !== null && predicted !== right && sure === 'would-sign',
    ),
  };
}

const topicsOf = (lines: readonly DebriefLine[]): readonly Topic[] =>
  [...new Set(lines.map((line) => line.topic))].map((topic) => {
    const own = lines.filter((line) => line.topic === topic);
    const predicted = own.filter((line) => line.predicted !== null);
    const judged = own.filter((line) => line.judged !== null && line.judgement !== null);
    return {
      topic,
      predicted: predicted.length,
      predictedWrong: predicted.filter((line) => line.predicted !== line.right).length,
      judged: judged.length,
      judgedWrong: judged.filter((line) => line.judged !== line.judgement).length,
    };
  });
