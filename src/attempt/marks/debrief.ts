/**
 * What a trainee is told at the end: whether the verdict was right, the gates, where one was sure and wrong, and
 * every line with its truth, reason and source.
 */

import { toItsEnd } from '../../bench/toItsEnd.ts';
import { faultsAmong } from '../../faults/catalogue.ts';
import type { Family } from '../../faults/families.ts';
import type { Fault, NextStep, Tell } from '../../faults/fault.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Verified } from '../../scenario/verify.ts';
import { verifyingOnce } from '../../scenario/verify.ts';
import { ACTIONS } from '../../verification/actions.ts';
import type { Source } from '../../verification/sources.ts';
import type { Advice, Expectation, Figure, TestAction } from '../../verification/testAction.ts';
import type { Answer, Attempt, Judged, LimitJudged, Sure, Verdict } from '../record/attempt.ts';
import { SURENESS } from '../record/attempt.ts';
import type { Line } from '../record/lines.ts';
import { isLeftAlone, isRightFigure, testFigures } from '../record/lines.ts';
import { repairedIn } from '../record/repeats.ts';
import type { Run } from '../record/run.ts';
import { lastSitting } from '../record/sitting.ts';
import type { TruthOfLimit } from '../record/truth.ts';
import { judgedRight, truthOf } from '../record/truth.ts';
import { countingEntries, firstPrediction } from '../record/untimely.ts';
import { isConverted } from '../record/written.ts';
import type { Marks } from './mark.ts';
import { isGiven, marking } from './mark.ts';
import { isDone, lastOccasion } from './occasions.ts';
import { dueSteps } from './reasons.ts';
import type { Showing } from './showing.ts';
import { showingOf } from './showing.ts';
import { conclusionOf, isRightVerdict, rightVerdict, verdictIsAbout } from './verdict.ts';

export interface DebriefLine {
  readonly test: string;
  readonly id: string;
  readonly values: Line['values'];
  readonly subject: Expectation['of'];
  readonly predicted: Answer | null;
  readonly right: Answer;
  /** How sure of this very line. */
  readonly sure: Sure | null;
  readonly judged: Judged | null;
  readonly judgement: Judged | null;
  /** What was seen of it, as typed, is not as it should be. */
  readonly isBroken: boolean;
  /** Rightly not taken among those that the test tells, where those were to be chosen. */
  readonly leftAlone: boolean;
  /** Of what the test cannot tell: the tests that do, by their ids. */
  readonly toldBy: readonly string[];
  readonly source: Source;
  readonly own?: Line['own'];
  readonly topic: TopicId;
}

/** What lies behind a wrong prediction, by what was said and what is true. */
export type Misconception =
  | 'reads-too-much'
  | 'expects-a-fault'
  | 'forbids-what-is-sound'
  | 'misses-what-it-tells';

/** What a line is about: where it points, or that a test cannot tell it. */
export type TopicId = Family | 'untold';

/** Wrong lines that have the same behind them. */
export interface WrongGroup {
  readonly misconception: Misconception;
  readonly topic: TopicId;
  readonly lines: readonly DebriefLine[];
}

export interface DebriefTest {
  readonly test: string;
  readonly done: boolean;
  /** Whether it is marked: a faultless trainee would have done it here. */
  readonly counts: boolean;
  readonly sure: Sure | null;
  /** Its lines were filled in by the page: then nobody predicted them. */
  readonly given: boolean;
  readonly lines: readonly DebriefLine[];
  readonly figures: readonly (Figure & { readonly said: number | null; readonly isRight: boolean })[];
  readonly limits: readonly (TruthOfLimit & { readonly judged: LimitJudged | null })[];
}

export interface Debrief {
  readonly run: Run;
  readonly marks: Marks;
  /** What was said, and what a faultless trainee says. */
  readonly verdict: { readonly said: Verdict | null; readonly right: boolean; readonly truth: Verdict };
  readonly stopped: Verified['stopped'];
  readonly causes: readonly Fault[];
  /** Where it first shows to a faultless trainee; null where nothing is wrong, or nothing that is allowed shows it. */
  readonly showing: Showing | null;
  /** What was to be written down and advised, though nothing was broken by it. */
  readonly advice: readonly (Advice & { readonly test: string })[];
  /** What the trainee put right, and whether anything was wrong there. */
  readonly repaired: readonly { readonly what: string; readonly wasWrong: boolean }[];
  readonly due: { readonly next: readonly NextStep[]; readonly tell: readonly Tell[] };
  /** Every test that was due or begun. */
  readonly tests: readonly DebriefTest[];
  /** Predictions made as one would sign for that were wrong, grouped by misconception, the largest group first. */
  readonly sureAndWrong: readonly WrongGroup[];
  /** All others that were wrong, in the same way. */
  readonly unsureAndWrong: readonly WrongGroup[];
  /** The cause that was named as one would sign for, where it is neither right nor of the right block. */
  readonly wrongCause: string | null;
  /** All predictions were filled in by the page. */
  readonly given: boolean;
  /** How often each sureness was right: right lines of all lines. Those of format 1 had other shares and are not counted. */
  readonly calibration: readonly { readonly sure: Sure; readonly right: number; readonly of: number }[];
}

export const debriefOf = (scenario: Scenario, attempt: Attempt): Debrief =>
  toItsEnd(debriefing(scenario, attempt));

/** The same in pieces. */
export function* debriefing(scenario: Scenario, attempt: Attempt): Generator<null, Debrief> {
  const { run, expected, marks } = yield* marking(scenario, attempt);
  const { asMet, asNow } = expected;
  const due = expected.counted.map(({ action }) => action.id);
  const begun = new Set(attempt.entries.flatMap((entry) => ('test' in entry ? [entry.test] : [])));
  const tests: DebriefTest[] = [];
  for (const action of ACTIONS.filter(({ id }) => due.includes(id) || begun.has(id))) {
    yield null;
    tests.push(debriefTest(run, action, due.includes(action.id)));
  }
  yield null;
  const said = conclusionOf(run)?.verdict ?? null;
  const about = verdictIsAbout(scenario, expected);
  const sound = scenario.faults.filter((choice) => faultsAmong([choice]).length === 0);
  const isFaulty = sound.length < scenario.faults.length;
  const showing = isFaulty ? showingOf(asMet, yield* verifyingOnce(scenario, { faults: sound })) : null;
  const isSure = ({ sure }: DebriefLine) => sure === 'would-sign';
  const sureAndWrong = groupedWrong(tests, isSure);
  const unsureAndWrong = groupedWrong(tests, (line) => !isSure(line));
  return {
    run,
    marks,
    verdict: { said, right: isRightVerdict(run, said, about), truth: rightVerdict(scenario, about) },
    stopped: asMet.stopped,
    causes: faultsAmong(scenario.faults),
    showing,
    advice: expected.counted.flatMap(({ action, advice }) =>
      advice.map((one) => ({ ...one, test: action.id })),
    ),
    repaired: repairsOf(run),
    due: dueSteps(run, asNow),
    tests,
    sureAndWrong,
    unsureAndWrong,
    given: isGiven(run),
    wrongCause: wrongCauseOf(run, marks),
    calibration: SURENESS.map((sure) => calibrationOf(isConverted(attempt) ? [] : tests, sure)),
  };
}

function repairsOf(run: Run): Debrief['repaired'] {
  const { repaired } = repairedIn(run);
  return run.repairs.map(({ what }) => ({
    what,
    wasWrong: repaired.some(({ id }) => id === what),
  }));
}

function debriefTest(run: Run, action: TestAction, counts: boolean): DebriefTest {
  const locked = firstPrediction(run, action.id);
  const given = locked?.given === true;
  const prediction = given ? undefined : locked;
  const occasion = lastOccasion(run, action.id);
  const judgement = occasion?.judgement ?? countingEntries(run, 'judgement', action.id).at(-1);
  const truth = truthOf(run, action, occasion?.sitting ?? lastSitting(run, action.id));
  return {
    test: action.id,
    done: isDone(run, action.id),
    counts,
    sure: prediction?.sure ?? null,
    given,
    lines: truth.lines.map((line) => {
      const said = prediction?.lines.find(({ id }) => id === line.id);
      return {
        test: action.id,
        id: line.id,
        values: line.values,
        subject: line.subject,
        predicted: said?.answer ?? null,
        right: line.right,
        sure: said?.sure ?? prediction?.sure ?? null,
        judged: judgement?.lines.find(({ id }) => id === line.id)?.judged ?? null,
        judgement: line.finding === null ? null : judgedRight(line),
        isBroken: line.finding === 'broken',
        source: line.source,
        own: line.own,
        leftAlone: isLeftAlone(run, line, prediction),
        toldBy: line.toldBy,
        topic: line.points[0] ?? 'untold',
      };
    }),
    figures: testFigures(run.scenario, action).map((figure) => {
      const said = prediction?.figures.find((f) => f.id === figure.id)?.value ?? null;
      return { ...figure, said, isRight: isRightFigure(figure, said) };
    }),
    limits: truth.limits.map((limit) => ({
      ...limit,
      judged:
        judgement?.limits.find((l) => l.id === limit.limit.id && l.reading === limit.reading)?.judged ?? null,
    })),
  };
}

const isWrong = ({ predicted, right }: DebriefLine): boolean => predicted !== null && predicted !== right;

function groupedWrong(
  tests: readonly DebriefTest[],
  isMeant: (line: DebriefLine) => boolean,
): readonly WrongGroup[] {
  const wrong = tests
    .flatMap(({ lines }) => lines.filter((line) => isWrong(line) && isMeant(line)))
    .map((line) => ({ line, misconception: misconceptionIn(line) }));
  const keyOf = ({ line, misconception }: (typeof wrong)[number]) => `${misconception} ${line.topic}`;
  return [...new Set(wrong.map(keyOf))]
    .map((key) => {
      const group = wrong.filter((one) => keyOf(one) === key);
      const [first] = group as [(typeof wrong)[number]];
      return {
        misconception: first.misconception,
        topic: first.line.topic,
        lines: group.map(({ line }) => line),
      };
    })
    .sort((x, y) => y.lines.length - x.lines.length);
}

const misconceptionIn = ({ predicted, right }: DebriefLine): Misconception =>
  right === 'cant-tell'
    ? 'reads-too-much'
    : predicted === 'cant-tell'
      ? 'misses-what-it-tells'
      : right === 'should'
        ? 'forbids-what-is-sound'
        : 'expects-a-fault';

/** Nothing of the diagnosis was earned, and one was sure. */
function wrongCauseOf(run: Run, { parts }: Marks): string | null {
  const conclusion = conclusionOf(run);
  const counts = run.scenario.marking.weights.diagnosis > 0;
  if (!counts || conclusion?.sure !== 'would-sign' || conclusion.cause === null) return null;
  return parts.diagnosis > 0 ? null : conclusion.cause;
}

function calibrationOf(tests: readonly DebriefTest[], sure: Sure): Debrief['calibration'][number] {
  const lines = tests
    .flatMap((test) => test.lines)
    .filter((line) => line.sure === sure && line.predicted !== null);
  return { sure, right: lines.filter((line) => !isWrong(line)).length, of: lines.length };
}
