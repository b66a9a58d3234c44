/**
 * What a tutor gives out, as one file: one job or a set of several, for a group, with a word for the board; or a quiz. The learner's
 * file and the tutor's own are of the same shape; the tutor's alone has `tutor` in it. A page that runs a job holds its
 * answer, so a giving-out is no secret kept: it says what is asked, and by which copy of the job it is marked.
 */
import * as v from 'valibot';
import { digestOf } from '../attempt/record/attempt.ts';
import type { Rung } from '../attempt/record/rung.ts';
import { RUNGS, supportOf } from '../attempt/record/rung.ts';
import type { SetQuiz } from '../quiz/setQuiz.ts';
import { quizSchema } from '../quiz/setQuiz.ts';
import type { Parsed, Problem } from '../scenario/problems.ts';
import { check } from '../scenario/problems.ts';
import { newerFormat, readingScenario } from '../scenario/readScenario.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { ruleSchema } from './rule.ts';

/** Most jobs in one set: a grade needs about ten. */
const MOST_JOBS = 20;
/** Most different variants of one giving-out. */
export const MOST_VARIANTS = 40;
/** Most labels that variants are dealt out to. */
export const MOST_LABELS = 500;
/** Longest time that a lesson is meant to take. */
export const LONGEST_MINUTES = 480;
/** Largest giving-out that is read, characters: twenty jobs, and a tutor's notes on five hundred attempts. */
export const LARGEST_GIVING = 5_000_000;

const LONGEST_LINE = 60;
const line = v.pipe(v.string(), v.trim(), v.maxLength(LONGEST_LINE));
const setAside = v.object({
  gate: v.pipe(v.string(), v.maxLength(60)),
  reason: v.pipe(v.string(), v.minLength(1), v.maxLength(300)),
});
/** What a tutor says of one attempt, by its record code. */
const noteSchema = v.object({
  comment: v.optional(v.pipe(v.string(), v.maxLength(1000)), ''),
  setAside: v.optional(v.pipe(v.array(setAside), v.maxLength(20)), []),
});
export type Note = v.InferOutput<typeof noteSchema>;

const tutorSchema = v.object({
  /** The word that opens the debriefs, where they are held. */
  second: v.optional(v.pipe(v.string(), v.maxLength(60))),
  /** Whether link and file were sealed; left out, nobody knows. The passphrase is kept nowhere. */
  sealed: v.optional(v.boolean()),
  /** When it was given out, ms since 1970. */
  at: v.optional(v.number()),
  /** Those that variants were dealt out to, as they were listed. */
  labels: v.optional(v.pipe(v.array(line), v.maxLength(MOST_LABELS))),
  notes: v.optional(
    v.pipe(v.record(v.pipe(v.string(), v.maxLength(64)), noteSchema), v.maxEntries(5000)),
    {},
  ),
});

const givingSchema = v.looseObject({
  format: v.literal(1),
  /** Its id, by which an attempt says what it is of. */
  giving: v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,60}$/, 'small letters, digits and hyphens are expected')),
  group: v.optional(line, ''),
  word: v.pipe(line, v.minLength(1)),
  /** The rung of support that every one of its jobs is done on. */
  rung: v.picklist(RUNGS),
  /** Scenario files, whole; each id once. None where a quiz is given out. */
  jobs: v.pipe(v.array(v.unknown()), v.maxLength(MOST_JOBS)),
  /** The tutor's own copy of a quiz, by which what is handed in of it is marked. */
  quiz: v.optional(quizSchema),
  rule: v.optional(ruleSchema),
  /** How long it is meant to take: said, and in no mark. */
  minutes: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(LONGEST_MINUTES))),
  /** Hash of the word that opens the debriefs; without it they are shown at once. */
  held: v.optional(v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/, 'a hash of 32 digits is expected'))),
  /** Numbers of equal variants, which follow from them and the word; without them all get the same. */
  variants: v.optional(
    v.pipe(
      v.array(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2_147_483_647))),
      v.maxLength(MOST_VARIANTS),
    ),
    [],
  ),
  /** Who gets which of them without repetition: the listed labels, not to be read in it (variantOf.ts). */
  dealt: v.optional(
    v.pipe(
      v.array(v.pipe(v.string(), v.regex(/^[0-9a-f]{6}$/, 'a hash of 6 digits is expected'))),
      v.maxLength(MOST_LABELS),
    ),
  ),
  /** Shared computers: a code in place of a name, and nothing stays after handing in. */
  clears: v.optional(v.boolean(), false),
  tutor: v.optional(tutorSchema),
});
export type Giving = v.InferOutput<typeof givingSchema>;

export interface Job {
  /** The scenario file's own object, on the rung of the giving-out. */
  readonly file: object;
  readonly scenario: Scenario;
}

export interface ReadGiving {
  readonly giving: Giving;
  readonly jobs: readonly Job[];
}

/** Whether a file that was opened is meant as one of these. */
export const looksLikeGiving = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'giving' in value && 'jobs' in value;

/** A job as it is given out: with the support of the rung. */
export const onRung = (file: object, rung: Rung): object => ({ ...file, support: supportOf(rung) });

/** A giving-out from a value that came out of a file, in pieces: every job in it is tried. */
export function* readingGiving(value: unknown): Generator<null, Parsed<ReadGiving>> {
  const newer = newerFormat(value, 'giving-out');
  if (newer !== null) return newer;
  const read = check(givingSchema, value);
  if (!read.ok) return read;
  const giving = read.value;
  const jobs: Job[] = [];
  const problems: Problem[] = [];
  for (const [i, one] of giving.jobs.entries()) {
    yield null;
    const file = typeof one === 'object' && one !== null ? onRung(one, giving.rung) : one;
    const job = yield* readingScenario(file);
    const path = `jobs[${i}]`;
    if (!job.ok)
      problems.push(
        ...job.problems.map((problem) => ({
          ...problem,
          path: problem.path === '' ? path : `${path}.${problem.path}`,
        })),
      );
    else if (jobs.some(({ scenario }) => scenario.id === job.scenario.id))
      problems.push({ path: `${path}.id`, message: `"${job.scenario.id}" is in the set already` });
    else jobs.push({ file: file as object, scenario: job.scenario });
  }
  const most = giving.jobs.length;
  if (most === 0 && giving.quiz === undefined)
    problems.push({ path: 'jobs', message: 'a job is expected, or a quiz beside it' });
  if (giving.rule !== undefined && giving.rule.pass > most)
    problems.push({ path: 'rule.pass', message: `the set has ${most} jobs, and no more can be passed` });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { giving, jobs } };
}

/** The learner's copy: without what is the tutor's alone. */
export function forLearners({ tutor: _, ...giving }: Giving): Giving {
  return giving;
}

export const givingText = (giving: Giving): string => `${JSON.stringify(giving, null, 1)}\n`;

/** What a giving-out says in the attempts that come of it. */
export const labelsOf = ({ giving, word, rung, held, clears }: Giving) => ({
  word,
  rung,
  given: {
    id: giving,
    ...(held === undefined ? {} : { held }),
    ...(clears ? { clears: true as const } : {}),
  },
});

/** A quiz as it is kept when it is given out; once, however often it is. */
export function quizGiving(quiz: SetQuiz, at: number): Giving {
  const word = quiz.title.slice(0, LONGEST_LINE).trim();
  return {
    format: 1,
    giving: givingId(quiz, 'quiz'),
    group: '',
    word: word === '' ? 'quiz' : word,
    rung: 2,
    jobs: [],
    quiz,
    variants: [],
    clears: false,
    tutor: { at, notes: {} },
  };
}

/** The id of a giving-out with this content and these drawn digits. */
export const givingId = (content: unknown, drawn: string): string =>
  digestOf({ content, drawn }).slice(0, 10);
