/** What a class makes: who did what, what needs a look, where the group is weak. Worked out from the rows alone. */
import type { AimSum, Calibrated, WeakTopic } from '../attempt/marks/recordSums.ts';
import { aimSums, calibrationOver, weakTopics } from '../attempt/marks/recordSums.ts';
import type { Summary } from '../attempt/marks/summary.ts';
import type { Judged } from '../attempt/record/attempt.ts';
import type { UnsafeId } from '../bench/unsafe.ts';
import { AIMS } from '../scenario/aims.ts';
import type { LineOutcome, Look, Marked, Quizzed, Row } from './collect.ts';
import type { Giving, Note } from './giving.ts';
import { plainWord } from './heldBy.ts';
import type { Answered, Share } from './items.ts';
import { discrimination, shareOf } from './items.ts';
import type { SetOutcome } from './rule.ts';
import { setOutcome } from './rule.ts';

export interface ClassRow {
  readonly row: Row;
  readonly looks: readonly Look[];
  /** Whether it is among the figures of the class: of one learner's attempts at one job the first that came. */
  readonly counts: boolean;
  /** With what a tutor has set aside; null where no pass is stated, or nothing was marked. */
  readonly passed: boolean | null;
  readonly note: Note | null;
}

/** A line in which something was wrong, and who passed over it. */
export interface PassedOver {
  readonly job: string;
  readonly line: LineOutcome;
  readonly by: number;
  readonly of: number;
  /** What most of them said that the unit did. */
  readonly said: Judged | null;
  /** Of those who passed over it: who would have signed for what they expected. */
  readonly signed: number;
  /** One of them, in whose replay it can be shown. */
  readonly row: Marked;
}

export interface LeftOut {
  readonly test: string;
  readonly by: number;
  readonly of: number;
}

/** One line of one job: how hard it was to judge. */
export interface Item {
  readonly job: string;
  readonly line: LineOutcome;
  readonly share: Share;
  /** −1 to 1; null below thirty, or where all did alike. */
  readonly discrimination: number | null;
}

export interface Learner {
  readonly label: string;
  readonly outcome: SetOutcome;
}

export interface Class {
  /** What needs a look first. */
  readonly rows: readonly ClassRow[];
  /** Of the totals of those that count, as a share of 100 each; null where there are none. */
  readonly totals: { readonly median: number; readonly from: number; readonly to: number } | null;
  readonly counted: number;
  readonly passedOver: readonly PassedOver[];
  readonly leftOut: readonly LeftOut[];
  readonly items: readonly Item[];
  readonly topics: readonly WeakTopic[];
  /** Tests wholly right of those done, over all attempts. */
  readonly aims: readonly AimSum[];
  readonly sureness: readonly Calibrated[];
  /** Of each giving-out with a rule, by its id: how every learner stands. */
  readonly sets: ReadonlyMap<string, readonly Learner[]>;
}

/** `givings`: with what the tutor has noted in them. */
export function classOf(rows: readonly Row[], givings: readonly Giving[]): Class {
  const all = besideEachOther(rows).map((one) => ({ ...one, ...judged(one.row, givings) }));
  const counting = all.flatMap(({ row, counts }) => (counts && row.kind === 'marked' ? [row] : []));
  const summaries = counting.map(({ summary }) => summary);
  return {
    rows: all.toSorted(
      (x, y) =>
        rankOf(x) - rankOf(y) || compared(labelOf(x.row), labelOf(y.row)) || compared(x.row.name, y.row.name),
    ),
    totals: totalsOf(counting),
    counted: counting.length,
    passedOver: passedOverIn(counting),
    leftOut: leftOutIn(counting),
    items: itemsOf(counting),
    topics: weakTopics(summaries),
    aims: aimsOver(summaries),
    sureness: calibrationOver(summaries),
    sets: new Map(
      givings.flatMap((giving) =>
        giving.rule === undefined ? [] : [[giving.giving, learnersOf(giving, all)] as const],
      ),
    ),
  };
}

export const labelOf = ({ label, name }: Row): string => label ?? name;

const compared = (x: string, y: string): number => (x < y ? -1 : x > y ? 1 : 0);

/** What a tutor wants to know first: what is dangerous, then what is not to be believed, then what is worth a talk. */
const GRAVEST: readonly Look['id'][] = [
  ...(['verdict-gate', 'critical'] as const),
  ...(['same-log', 'chain', 'total-differs', 'job-differs', 'log-differs', 'marks-differ'] as const),
  ...([
    'rung-differs',
    'same-file',
    'another-try',
    'untimely',
    'engine',
    'not-given-out',
    'not-listed',
  ] as const),
];

/** A quiz of which something does not fit, or of which no copy is here. */
export const isDoubted = (row: Row): boolean =>
  row.kind === 'quiz' && (row.giving === null || row.quiz.doubts.length > 0);

function rankOf({ row, looks }: Pick<ClassRow, 'row' | 'looks'>): number {
  if (row.kind === 'refused') return -1;
  if (isDoubted(row)) return GRAVEST.length;
  if (looks.length === 0) return GRAVEST.length + 1;
  return Math.min(...looks.map(({ id }) => (GRAVEST.includes(id) ? GRAVEST.indexOf(id) : GRAVEST.length)));
}

type Beside = Extract<Look['id'], 'same-file' | 'same-log' | 'another-try'>;

/** What two rows have in common: one file twice, one piece of work under two labels, a second try. */
function besideEachOther(rows: readonly Row[]): readonly Pick<ClassRow, 'row' | 'looks' | 'counts'>[] {
  const first = new Map<string, string>();
  return rows.map((row) => {
    if (row.kind === 'refused') return { row, looks: [], counts: false };
    const keys = commonIn(row);
    const found = (Object.entries(keys) as [keyof typeof keys, string][]).find(([, key]) => first.has(key));
    const own = row.kind === 'marked' ? row.looks : [];
    const looks: readonly Look[] =
      found === undefined ? own : [{ id: found[0], as: first.get(found[1]) as string } as Look, ...own];
    for (const key of Object.values(keys)) if (!first.has(key)) first.set(key, row.name);
    const isFirst = found === undefined || found[0] === 'same-log';
    return { row, looks, counts: row.kind === 'marked' && isFirst };
  });
}

/** What a row has in common with another that is the same file, the same work, or a second try. */
function commonIn(row: Marked | Quizzed): Readonly<Partial<Record<Beside, string>>> {
  const [job, code, log] =
    row.kind === 'marked'
      ? [row.job.id, row.code, row.log]
      : [`quiz ${row.quiz.quiz.title}`, `${row.quiz.record} ${row.label}`, null];
  return {
    'same-file': `code ${code} ${log}`,
    ...(log === null ? {} : { 'same-log': `log ${log}` }),
    ...(row.label === null ? {} : { 'another-try': `whose ${row.giving} ${job} ${plainWord(row.label)}` }),
  };
}

function judged(row: Row, givings: readonly Giving[]): Pick<ClassRow, 'passed' | 'note'> {
  if (row.kind !== 'marked') return { passed: null, note: null };
  const note = givings.find(({ giving }) => giving === row.giving)?.tutor?.notes[row.code] ?? null;
  return { note, passed: passedWith(row, note) };
}

/** The verdict's gate, by its name in a note; any other is the id of a critical act. */
export const VERDICT_GATE = 'verdict';

export interface GateNotMet {
  readonly gate: typeof VERDICT_GATE | UnsafeId;
  /** Why it is set aside, by the tutor or in the job; null: it counts. */
  readonly reason: string | null;
}

/** Each once, in the order in which a tutor would want to know. */
export function gatesNotMet({ marks: { gates } }: Marked, note: Note | null): readonly GateNotMet[] {
  const byTutor = (gate: string) => note?.setAside.find((one) => one.gate === gate)?.reason ?? null;
  const acts = new Map(gates.critical.map(({ id, setAside }) => [id, byTutor(id) ?? setAside]));
  return [
    ...(gates.verdict ? [] : [{ gate: VERDICT_GATE, reason: byTutor(VERDICT_GATE) } as const]),
    ...[...acts].map(([gate, reason]) => ({ gate, reason })),
  ];
}

/** The verdict of a unit that was called sound is wrong as well: with its gate the hurdle is set aside. */
function passedWith(row: Marked, note: Note | null): boolean | null {
  const { passed, hurdles, total, pass } = row.marks;
  if (passed === null) return null;
  const gates = gatesNotMet(row, note);
  const isAside = gates.some(({ gate, reason }) => gate === VERDICT_GATE && reason !== null);
  const left = hurdles.filter((hurdle) => !(hurdle === 'verdict' && isAside));
  return left.length === 0 && total >= pass && gates.every(({ reason }) => reason !== null);
}

function totalsOf(rows: readonly Marked[]): Class['totals'] {
  const totals = rows.map(({ summary: { total, of } }) => (100 * total) / of).sort((x, y) => x - y);
  const [from] = totals;
  const to = totals.at(-1);
  if (from === undefined || to === undefined) return null;
  const upper = totals[Math.floor(totals.length / 2)] as number;
  const lower = totals[Math.floor((totals.length - 1) / 2)] as number;
  return { median: (lower + upper) / 2, from, to };
}

interface Told {
  readonly row: Marked;
  readonly line: LineOutcome;
}

/** The sums of every attempt together. */
function aimsOver(summaries: readonly Summary[]): readonly AimSum[] {
  const all = summaries.flatMap((summary) => aimSums([summary]));
  return AIMS.flatMap(({ id }) => {
    const own = all.filter(({ aim }) => aim === id);
    if (own.length === 0) return [];
    const sum = (of: (one: AimSum) => number) => own.reduce((total, one) => total + of(one), 0);
    return [{ aim: id, right: sum((one) => one.right), of: sum((one) => one.of) }];
  });
}

/** Every line of every attempt, by job, test and line. */
function byLine(rows: readonly Marked[]): readonly (readonly Told[])[] {
  const groups = new Map<string, Told[]>();
  for (const row of rows)
    for (const line of row.lines) {
      const key = `${row.job.id} ${line.test} ${line.id}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [{ row, line }]);
      else group.push({ row, line });
    }
  return [...groups.values()];
}

const passedOverIn = (rows: readonly Marked[]): readonly PassedOver[] =>
  byLine(rows)
    .flatMap((group): readonly PassedOver[] => {
      const looked = group.filter(({ line }) => line.isBroken && line.judged !== null);
      const missed = looked.filter(({ line }) => line.judged === false);
      const [first] = missed;
      if (first === undefined) return [];
      const signed = missed.filter(({ line }) => line.sure === 'would-sign').length;
      return [
        {
          job: first.row.job.title,
          line: first.line,
          by: missed.length,
          of: looked.length,
          said: mostSaid(missed),
          signed,
          row: first.row,
        },
      ];
    })
    .sort((x, y) => y.by - x.by || y.signed - x.signed);

function mostSaid(told: readonly Told[]): Judged | null {
  const said = told.flatMap(({ line }) => (line.said === null ? [] : [line.said]));
  const times = (one: Judged) => said.filter((other) => other === one).length;
  return said.toSorted((x, y) => times(y) - times(x))[0] ?? null;
}

function leftOutIn(rows: readonly Marked[]): readonly LeftOut[] {
  const due = rows.flatMap(({ summary }) => summary.tests ?? []);
  return [...new Set(due.map(({ test }) => test))]
    .map((test) => {
      const own = due.filter((one) => one.test === test);
      return { test, by: own.filter(({ done }) => !done).length, of: own.length };
    })
    .filter(({ by }) => by > 0)
    .sort((x, y) => y.by - x.by);
}

/** The hardest first. */
function itemsOf(rows: readonly Marked[]): readonly Item[] {
  const restOf = new Map(
    rows.map((row) => {
      const answered = row.lines.filter(({ judged }) => judged !== null);
      return [row, { right: answered.filter(({ judged }) => judged).length, of: answered.length }];
    }),
  );
  return byLine(rows)
    .flatMap((group): readonly Item[] => {
      const answered = group.filter(({ line }) => line.judged !== null);
      const [first] = answered;
      if (first === undefined) return [];
      const answers = answered.map(({ row, line }): Answered => {
        const all = restOf.get(row) ?? { right: 0, of: 1 };
        const right = line.judged === true;
        return { right, rest: all.of <= 1 ? 0 : (all.right - (right ? 1 : 0)) / (all.of - 1) };
      });
      return [
        {
          job: first.row.job.title,
          line: first.line,
          share: shareOf(answers.filter(({ right }) => right).length, answers.length),
          discrimination: discrimination(answers),
        },
      ];
    })
    .sort((x, y) => x.share.right / x.share.of - y.share.right / y.share.of);
}

function learnersOf(giving: Giving, all: readonly ClassRow[]): readonly Learner[] {
  const { rule } = giving;
  if (rule === undefined) return [];
  const own = all.filter(
    ({ row, counts }) =>
      counts && row.kind === 'marked' && row.giving === giving.giving && row.label !== null,
  );
  const labels = [...new Set(own.map(({ row }) => plainWord(labelOf(row))))].sort();
  return labels.map((label) => {
    const theirs = own.filter(({ row }) => plainWord(labelOf(row)) === label);
    const jobs = giving.jobs.map((job) => {
      const one = theirs.find(
        ({ row }) => row.kind === 'marked' && row.job.id === (job as { id?: unknown }).id,
      );
      if (one?.row.kind !== 'marked') return null;
      const { marks, verdict } = one.row;
      const left = gatesNotMet(one.row, one.note).filter(({ reason }) => reason === null);
      const unsoundAccepted = left.some(({ gate }) => gate === VERDICT_GATE);
      const critical = marks.gates.critical.filter(({ id }) => left.some(({ gate }) => gate === id)).length;
      const isAside = !unsoundAccepted && !marks.gates.verdict;
      // Of one aim no pass is stated: then what was right is what is wanted.
      const passed = one.passed ?? ((verdict.right || isAside) && left.length === 0);
      return { passed, critical, unsoundAccepted };
    });
    return { label: labelOf((theirs[0] as ClassRow).row), outcome: setOutcome(rule, jobs) };
  });
}

/** The jobs that were marked, each once, by their titles. */
export const jobTitles = (rows: Class['rows']): readonly string[] => [
  ...new Set(rows.flatMap(({ row }) => (row.kind === 'marked' ? [row.job.title] : []))),
];
