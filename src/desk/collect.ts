/**
 * Collecting: what was handed in, a row each, and none is lost. Nothing that a file says is believed: its log is replayed
 * on the tutor's own copy of the job, and where it says otherwise that is named.
 */
import type { Debrief, DebriefLine } from '../attempt/marks/debrief.ts';
import { debriefing } from '../attempt/marks/debrief.ts';
import type { Marks } from '../attempt/marks/mark.ts';
import type { Summary } from '../attempt/marks/summary.ts';
import { summaryOf } from '../attempt/marks/summary.ts';
import type { Attempt, Judged, Sure, Verdict } from '../attempt/record/attempt.ts';
import { brokenLinks, digestOf, headOf } from '../attempt/record/attempt.ts';
import { lackingIn, notReplayed, readLog } from '../attempt/record/file.ts';
import { asGiven, differencesFromGiven, scenarioHash, withIdOf } from '../attempt/record/origin.ts';
import type { Rung } from '../attempt/record/rung.ts';
import { rungOf } from '../attempt/record/rung.ts';
import { endOf } from '../attempt/record/untimely.ts';
import type { UnsafeId } from '../bench/unsafe.ts';
import type { MarkedQuiz } from '../quiz/markQuiz.ts';
import { markedQuiz } from '../quiz/markQuiz.ts';
import type { SetQuiz } from '../quiz/setQuiz.ts';
import { looksLikeQuizAttempt, readQuizAttempt } from '../quiz/setQuiz.ts';
import { parseJson } from '../scenario/json.ts';
import type { Parsed, Problem } from '../scenario/problems.ts';
import { readingScenario } from '../scenario/readScenario.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Job, ReadGiving } from './giving.ts';
import { isListed, nthVariant, variantFor } from './variantOf.ts';
import type { Came } from './zip.ts';

/** Why an attempt that could be read is not marked. */
export type NotHere = 'job-not-here' | 'not-of-this-giving';

/** What a tutor should look at in one attempt, by what it is about. `entry`: its place in the log, where it has one. */
export type Look =
  | { readonly id: 'verdict-gate' }
  | { readonly id: 'critical'; readonly act: UnsafeId; readonly entry: number; readonly at: number }
  | { readonly id: 'sure-and-wrong'; readonly times: number; readonly entry: number }
  | { readonly id: 'total-differs'; readonly said: unknown; readonly is: number }
  | { readonly id: 'marks-differ'; readonly count: number }
  | { readonly id: 'chain'; readonly entry: number }
  | { readonly id: 'log-differs'; readonly entry: number }
  | { readonly id: 'engine'; readonly said: string }
  | { readonly id: 'job-differs'; readonly count: number }
  | { readonly id: 'rung-differs'; readonly said: Rung }
  | { readonly id: 'untimely'; readonly entry: number; readonly count: number }
  | { readonly id: 'reads-alike'; readonly cause: string }
  | { readonly id: 'stopped'; readonly entry: number; readonly at: number; readonly why: string }
  | { readonly id: 'not-concluded' }
  | { readonly id: 'not-given-out' }
  | { readonly id: 'not-listed' }
  // Told only beside the others that came.
  | { readonly id: 'same-file'; readonly as: string }
  | { readonly id: 'same-log'; readonly as: string }
  | { readonly id: 'another-try'; readonly as: string };

/** How one line of a test went. */
export interface LineOutcome {
  readonly test: string;
  readonly id: string;
  readonly values: DebriefLine['values'];
  /** Whom it speaks of. */
  readonly subject: DebriefLine['subject'];
  /** Null where it was not answered or not asked. */
  readonly predicted: boolean | null;
  readonly judged: boolean | null;
  readonly said: Judged | null;
  readonly sure: Sure | null;
  /** The unit was not as it should be in it. */
  readonly isBroken: boolean;
}

export interface Marked {
  readonly kind: 'marked';
  readonly name: string;
  readonly label: string | null;
  /** The giving-out that decides; null where it is a job as it comes with this program. */
  readonly giving: string | null;
  readonly job: { readonly id: string; readonly title: string; readonly sha256: string };
  /** Which of the equal variants; null where all got the same. */
  readonly variant: number | null;
  readonly code: string;
  /** Of the moments at which each step was taken: what two have in common who handed in one piece of work. */
  readonly log: string;
  readonly rung: Rung;
  readonly marks: Marks;
  readonly verdict: { readonly said: Verdict | null; readonly right: boolean; readonly truth: Verdict };
  readonly summary: Summary;
  readonly lines: readonly LineOutcome[];
  readonly looks: readonly Look[];
}

export interface Refused {
  readonly kind: 'refused';
  readonly name: string;
  readonly label: string | null;
  readonly why: NotHere | Exclude<Came, { text: string }>['problem'] | readonly Problem[];
}

/** An attempt at a tutor's quiz: every question made again, every answer judged again. */
export interface Quizzed {
  readonly kind: 'quiz';
  readonly name: string;
  readonly label: string | null;
  /** The giving-out whose quiz decides; null: none is here, and the attempt's own questions were asked. */
  readonly giving: string | null;
  readonly quiz: MarkedQuiz;
}

export type Row = Marked | Refused | Quizzed;

/** By what an attempt is marked: made once for each job, rung and variant. */
interface Copy extends Job {
  readonly giving: ReadGiving | null;
  /** Nobody gave it out: it is a job as it comes with the program. */
  readonly isOwn: boolean;
  readonly variant: number | null;
  readonly sha256: string;
}

/** Who would sign is right nineteen times in twenty; below three in four of so many lines somebody should ask. */
const SIGNED_RIGHT = 0.75;
const SIGNED_LINES = 8;

/** The copies that decide, made when they are first asked for. */
export class Copies {
  readonly #givings: readonly ReadGiving[];
  readonly #shipped: readonly object[];
  readonly #against: readonly object[];
  readonly #made = new Map<string, Parsed<Copy>>();

  /**
   * `shipped`: the scenario files that come with the program, for what was not given out. `against`: those that decide by
   * their ids, whatever an attempt carries.
   */
  constructor(givings: readonly ReadGiving[], shipped: readonly object[], against: readonly object[] = []) {
    this.#givings = givings;
    this.#shipped = shipped;
    this.#against = against;
  }

  /** The tutor's own copy of the job that an attempt says it is of; why there is none. */
  *of(attempt: Attempt): Generator<null, Parsed<Copy> | NotHere> {
    const id = (attempt.scenario as { id?: unknown } | null)?.id;
    const giving = this.#givings.find(({ giving: { giving } }) => giving === attempt.given?.id);
    if (giving === undefined) return yield* this.#shippedCopy(attempt, id);
    const job = giving.jobs.find(({ scenario }) => scenario.id === id);
    if (job === undefined) return 'not-of-this-giving';
    const { giving: own, variants, word } = giving.giving;
    if (variants.length === 0)
      // biome-ignore lint/correctness/useYield: it was read with its giving-out
      return yield* this.#once(`${own} ${job.scenario.id}`, function* () {
        const value = { ...job, giving, isOwn: false, variant: null, sha256: scenarioHash(job.file) };
        return { ok: true, value };
      });
    const variant = variantFor(giving.giving, attempt.trainee ?? '');
    return yield* this.#once(`${own} ${job.scenario.id} ${variant}`, () =>
      reading(nthVariant(job.file, word, variants[variant] as number), { giving, isOwn: false, variant }),
    );
  }

  /** The quiz that was given out, or the last one under its title; null where there is none. */
  ofQuiz(quiz: SetQuiz): { readonly giving: string; readonly quiz: SetQuiz } | null {
    const given = this.#givings.flatMap(({ giving: { giving, quiz } }) =>
      quiz === undefined ? [] : [{ giving, quiz }],
    );
    const digest = digestOf(quiz);
    return (
      given.find((one) => digestOf(one.quiz) === digest) ??
      given.find((one) => one.quiz.title === quiz.title) ??
      null
    );
  }

  /** One that decides by its id, or a job as it comes with the program, unchanged; any other is nobody's. */
  *#shippedCopy(attempt: Attempt, id: unknown): Generator<null, Parsed<Copy> | NotHere> {
    const deciding = withIdOf(attempt, this.#against) as object | undefined;
    const own = deciding ?? (withIdOf(attempt, this.#shipped) as object | undefined);
    if (own === undefined) return 'job-not-here';
    if (deciding === undefined && scenarioHash(own) !== scenarioHash(attempt.scenario)) return 'job-not-here';
    const support = supportIn(attempt.scenario);
    const file = asGiven(own, { support });
    return yield* this.#once(`${String(id)} ${support}`, () =>
      reading(file, { giving: null, isOwn: deciding === undefined, variant: null }),
    );
  }

  *#once(key: string, make: () => Generator<null, Parsed<Copy>>): Generator<null, Parsed<Copy>> {
    const before = this.#made.get(key);
    if (before !== undefined) return before;
    const made = yield* make();
    this.#made.set(key, made);
    return made;
  }
}

function* reading(
  file: object,
  about: Pick<Copy, 'giving' | 'isOwn' | 'variant'>,
): Generator<null, Parsed<Copy>> {
  const read = yield* readingScenario(file);
  return read.ok
    ? { ok: true, value: { ...about, file, scenario: read.scenario, sha256: scenarioHash(file) } }
    : read;
}

function supportIn(scenario: unknown): Scenario['support'] {
  const { support } = (scenario ?? {}) as { support?: unknown };
  return support === 'assessment' || support === 'guided' ? support : 'practice';
}

/** What an attempt is held against, and the attempt on the rung that was given: a file cannot choose an easier one. */
export interface Held {
  readonly attempt: Attempt;
  readonly copy: Copy;
}

/** An attempt's file with the copy that decides; what is wrong with it, or that there is none. */
export const heldAgainst = (text: string, copies: Copies): Generator<null, Held | Refused['why']> =>
  holding(parseJson(text), copies);

function* holding(json: Parsed<unknown>, copies: Copies): Generator<null, Held | Refused['why']> {
  if (!json.ok) return json.problems;
  const read = readLog(json.value);
  if (!read.ok) return read.problems;
  const copy = yield* copies.of(read.value);
  if (typeof copy === 'string') return copy;
  if (!copy.ok) return copy.problems;
  const lacking = lackingIn(read.value, copy.value.scenario);
  return lacking.length > 0 ? lacking : { attempt: read.value, copy: copy.value };
}

/** On the rung that was given out; an attempt of another giving is on the rung that it chose. */
export function asGivenOut({ attempt, copy }: Held): Attempt {
  const rung = copy.giving?.giving.rung ?? attempt.rung;
  return rung === attempt.rung ? attempt : { ...attempt, rung };
}

/** One file that came, as a row; in pieces. */
export function* collecting(came: Came, copies: Copies): Generator<null, Row> {
  const { name } = came;
  if ('problem' in came) return { kind: 'refused', name, label: null, why: came.problem };
  const json = parseJson(came.text);
  if (json.ok && looksLikeQuizAttempt(json.value))
    return quizzed(name, came.text, labelIn(json.value), copies);
  const held = yield* holding(json, copies);
  if (typeof held === 'string' || !('copy' in held))
    return { kind: 'refused', name, label: json.ok ? labelIn(json.value) : null, why: held };
  try {
    return yield* marked(name, held);
  } catch (error) {
    return { kind: 'refused', name, label: held.attempt.trainee ?? null, why: [notReplayed(error)] };
  }
}

function quizzed(name: string, text: string, label: string | null, copies: Copies): Quizzed | Refused {
  const read = readQuizAttempt(text);
  if (!read.ok) return { kind: 'refused', name, label, why: read.problems };
  const own = copies.ofQuiz(read.value.quiz);
  const { trainee } = read.value;
  return {
    kind: 'quiz',
    name,
    label: trainee,
    giving: own?.giving ?? null,
    quiz: markedQuiz(read.value, own?.quiz),
  };
}

/** Of a file that cannot be marked; it is only shown. */
function labelIn(value: unknown): string | null {
  const { trainee } = (value ?? {}) as { trainee?: unknown };
  return typeof trainee === 'string' ? trainee.slice(0, 60) : null;
}

function* marked(name: string, held: Held): Generator<null, Marked> {
  const { attempt, copy } = held;
  const told = yield* debriefing(copy.scenario, asGivenOut(held));
  const { giving, variant, scenario, sha256 } = copy;
  return {
    kind: 'marked',
    name,
    label: attempt.trainee ?? null,
    giving: giving?.giving.giving ?? null,
    job: { id: scenario.id, title: scenario.title, sha256 },
    variant,
    code: headOf(attempt),
    log: logOf(attempt),
    rung: rungOf(scenario.support, told.run.attempt),
    marks: told.marks,
    verdict: told.verdict,
    summary: summaryOf(told),
    lines: told.tests.flatMap(({ lines, counts }) => (counts ? lines.map(outcomeOf) : [])),
    looks: looksAt(told, held),
  };
}

/** Two people never take the same time over every step, to the millisecond. */
const logOf = ({ entries }: Attempt): string => digestOf(entries.map(({ wall }) => wall).join()).slice(0, 16);

const outcomeOf = (line: DebriefLine): LineOutcome => ({
  test: line.test,
  id: line.id,
  values: line.values,
  subject: line.subject,
  predicted:
    line.predicted === null && !line.leftAlone ? null : line.leftAlone || line.predicted === line.right,
  judged: line.judged === null || line.judgement === null ? null : line.judged === line.judgement,
  said: line.judged,
  sure: line.sure,
  isBroken: line.isBroken,
});

/** In the order in which a tutor would want to know. */
function looksAt(told: Debrief, { attempt, copy }: Held): readonly Look[] {
  const { marks, run } = told;
  const claimed = marks.differs.flatMap((doubt) => (doubt.id === 'says-otherwise' ? [doubt] : []));
  const total = claimed.find(({ path }) => path === 'marks.total');
  const ofMarks = claimed.filter(({ path }) => path.startsWith('marks.') && path !== 'marks.total');
  const ofLog = claimed.find(({ path }) => path.startsWith('entries['));
  // As the file has it, on the rung that it says: marked on that rung, its chain was looked at already.
  const [chain] =
    run.attempt === attempt
      ? marks.differs.flatMap((doubt) => (doubt.id === 'broken-chain' ? [doubt.entry] : []))
      : brokenLinks(attempt);
  const engine = marks.differs.find((doubt) => doubt.id === 'engine');
  const wrong = told.sureAndWrong.flatMap(({ lines }) => lines);
  const signed = told.calibration.find(({ sure }) => sure === 'would-sign');
  const rung = copy.giving?.giving.rung;
  const said = rungOf(supportIn(attempt.scenario), attempt);
  const entryOf = (path: string): number => Number(/\d+/.exec(path)?.[0] ?? 0);
  const isOver = endOf(attempt) < Infinity;
  const otherSupport = rung !== undefined && supportIn(attempt.scenario) !== copy.scenario.support;
  const otherwise =
    differencesFromGiven(copy.file, attempt.scenario).length + (otherSupport && rung === said ? 1 : 0);
  return [
    ...(marks.gates.verdict || !isOver ? [] : [{ id: 'verdict-gate' } as const]),
    ...marks.gates.critical.map(
      ({ id, entry }): Look => ({ id: 'critical', act: id, entry, at: run.times[entry] ?? 0 }),
    ),
    ...(isOver ? [] : [{ id: 'not-concluded' } as const]),
    ...(total === undefined ? [] : [{ id: 'total-differs', said: total.said, is: marks.total } as const]),
    ...(chain === undefined ? [] : [{ id: 'chain', entry: chain } as const]),
    ...(ofLog === undefined ? [] : [{ id: 'log-differs', entry: entryOf(ofLog.path) } as const]),
    ...(ofMarks.length === 0 ? [] : [{ id: 'marks-differ', count: ofMarks.length } as const]),
    ...(otherwise === 0 ? [] : [{ id: 'job-differs', count: otherwise } as const]),
    ...(rung === undefined || rung === said ? [] : [{ id: 'rung-differs', said } as const]),
    ...(engine?.id === 'engine' ? [{ id: 'engine', said: engine.said } as const] : []),
    ...(marks.untimely[0] === undefined
      ? []
      : [{ id: 'untimely', entry: marks.untimely[0].entry, count: marks.untimely.length } as const]),
    ...(copy.isOwn ? [{ id: 'not-given-out' } as const] : []),
    ...(copy.giving === null || isListed(copy.giving.giving, attempt.trainee ?? '')
      ? []
      : [{ id: 'not-listed' } as const]),
    ...readsAlike(told),
    ...stoppedIn(told),
    ...(signed === undefined || signed.of < SIGNED_LINES || signed.right >= SIGNED_RIGHT * signed.of
      ? []
      : [
          {
            id: 'sure-and-wrong',
            times: wrong.length,
            entry: run.attempt.entries.findIndex(
              (entry) => entry.kind === 'prediction' && entry.test === wrong[0]?.test,
            ),
          } as const,
        ]),
  ];
}

/** Another cause was named than the one that is there, and no test that is allowed tells the two apart. */
function readsAlike({ marks, run, causes }: Debrief): readonly Look[] {
  const conclusion = run.attempt.entries.find(({ kind }) => kind === 'conclusion');
  if (conclusion?.kind !== 'conclusion' || conclusion.cause === null) return [];
  const { diagnosis } = marks.sums;
  const isRight = diagnosis.said === 'causes' && diagnosis.grades[0] === 'right';
  return isRight && causes.every(({ id }) => id !== conclusion.cause)
    ? [{ id: 'reads-alike', cause: conclusion.cause }]
    : [];
}

function stoppedIn({ run }: Debrief): readonly Look[] {
  return run.attempt.entries.flatMap((entry, i): readonly Look[] =>
    entry.kind === 'operation' && entry.operation.op === 'stop'
      ? [{ id: 'stopped', entry: i, at: run.times[i] ?? 0, why: entry.operation.why }]
      : [],
  );
}
