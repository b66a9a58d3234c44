/** What is said of attempts that were collected: what needs a look, why a file is not marked, and the table as CSV. */

import type { ClassRow, Learner } from '../desk/class.ts';
import { gatesNotMet, VERDICT_GATE } from '../desk/class.ts';
import type { Look, Quizzed, Refused, Row } from '../desk/collect.ts';
import type { Field } from '../desk/csv.ts';
import { MOST_FILES, MOST_UNPACKED } from '../desk/zip.ts';
import type { MarkedQuiz, QuizDoubt } from '../quiz/markQuiz.ts';
import { NOT_JSON } from '../scenario/jsonText.ts';
import { countOf, listed } from '../scenario/problem.ts';
import { shortened } from '../scenario/quoted.ts';
import type { PartName } from '../scenario/tasks.ts';
import { AIM_WORDS } from './aims.ts';
import { benchTime } from './benchTime.ts';
import { causeTitle } from './causeTitles.ts';
import { inWords } from './problems.ts';
import { RUNG_NAMES } from './rungs.ts';
import { HURDLE_WORDS, sumText } from './sums.ts';
import { unsafeActText } from './unsafeActs.ts';
import { VERDICT_WORDS } from './verdicts.ts';

/** Why somebody should look at it, in a few words. */
export function lookText(look: Look): string {
  switch (look.id) {
    case 'verdict-gate':
      return 'called fit what is not shown to be sound';
    case 'critical':
      return `${benchTime(look.at)}, critical act: ${unsafeActText(look.act)}`;
    case 'sure-and-wrong':
      return `sure and wrong in ${look.times} lines`;
    case 'total-differs':
      return `the file says ${shortened(String(look.said))}, it is ${look.is}`;
    case 'marks-differ':
      return `${look.count} of its own figures differ`;
    case 'chain':
      return `changed after it was written, from entry ${look.entry + 1} on`;
    case 'log-differs':
      return `times in the file are not those of its replay, from entry ${look.entry + 1} on`;
    case 'engine':
      return `made by version ${shortened(look.said)} of the simulation`;
    case 'job-differs':
      return `its copy of the job differs from yours in ${look.count} ${look.count === 1 ? 'place' : 'places'}; yours decided`;
    case 'rung-differs':
      return `says ${RUNG_NAMES[look.said]}; marked as it was given out`;
    case 'untimely':
      return `${look.count} ${look.count === 1 ? 'entry' : 'entries'} at the wrong time earned nothing`;
    case 'reads-alike':
      return `names “${causeTitle(look.cause)}”, which reads the same: accepted`;
    case 'stopped':
      return `stopped at ${benchTime(look.at)}: ${shortened(look.why)}`;
    case 'not-concluded':
      return 'not concluded';
    case 'not-given-out':
      return 'of no giving-out that is here; marked as the job comes with the page';
    case 'not-listed':
      return 'its label is none of those that you listed: who is it, and did somebody else have this variant?';
    case 'same-file':
      return `the same as ${look.as}: counted once`;
    case 'same-log':
      return `the same work as ${look.as}, under another label`;
    case 'another-try':
      return `another try at this job, after ${look.as}: the first counts`;
  }
}

const REFUSAL_WORDS: Readonly<Record<Extract<Refused['why'], string>, string>> = {
  'job-not-here': 'its job is none of yours: open the giving-out that it is of, then drop it again',
  'not-of-this-giving': 'its giving-out is here, and this job is not in it',
  'no-attempt-file': 'no attempt: a file that ends in .json is expected',
  'too-large': 'larger than 1 MB: an attempt is far smaller',
  'packed-too-tightly': 'packed more than a hundredfold: no attempt packs so small, it was not unpacked',
  'says-another-size': 'holds more or less than it says: it was not read',
  'climbs-out': 'its path leads out of the zip: it was not read',
  encrypted: 'closed by a password: unpack it first',
  'packed-in-another-way': 'packed in a way that is not read here: pack it as a plain zip',
  'zip-within': 'a zip within the zip: unpack it first',
  damaged: 'the zip is damaged here',
  'no-zip': 'no zip that can be read',
  'too-many-files': `more than ${MOST_FILES} files: nothing of it was read`,
  'too-much-in-all': `would be more than ${MOST_UNPACKED / 1_000_000} MB unpacked: nothing of it was read`,
  'not-read': 'cannot be read from this device',
};

/** Why a file is not marked; the first reason, and how many more. */
export function whyNotMarked({ why }: Refused): string {
  if (typeof why === 'string') return REFUSAL_WORDS[why];
  const [first, ...more] = listed(inWords(why));
  if (first === undefined) return 'cannot be read';
  if (first.message.startsWith(NOT_JSON))
    return `cut short, or none that the trainer saved (${first.message}): ask for it once more, as it was saved`;
  const place = first.path === '' ? '' : `${first.path}: `;
  return `${place}${first.message}${more.length === 0 ? '' : ` (and ${countOf(more)} more)`}`;
}

export const verdictWords = (row: Extract<Row, { kind: 'marked' }>): string =>
  row.verdict.said === null
    ? 'none'
    : `“${VERDICT_WORDS[row.verdict.said]}”: ${row.verdict.right ? 'right' : 'not right'}`;

/** A gate, as what was done against it. */
export const gateText = (gate: string): string =>
  gate === VERDICT_GATE ? 'called fit, not shown to be sound' : unsafeActText(gate);

/** Gates that are not met, each with whether it is set aside; and so the reason. */
export function gatesWords({ row, note }: ClassRow): string {
  if (row.kind !== 'marked') return '';
  const all = gatesNotMet(row, note).map(
    ({ gate, reason }) => `${gateText(gate)}${reason === null ? '' : ` (set aside: ${reason})`}`,
  );
  return all.length === 0 ? 'met' : `not met: ${all.join('; ')}`;
}

export const passedWords = (passed: boolean | null): string =>
  passed === null ? 'no pass is stated' : passed ? 'passed' : 'not yet';

const PARTS: readonly PartName[] = [
  'prediction',
  'observation',
  'judgement',
  'record',
  'diagnosis',
  'reasons',
];

const QUIZ_DOUBT_WORDS: Readonly<Record<QuizDoubt, string>> = {
  'other-quiz': 'its copy of the quiz differs from yours; yours decided',
  'other-version': 'made by another version of the questions',
  'broken-chain': 'changed after its end',
  'not-asked': 'answers what was not asked',
  'answered-twice': 'a question is answered twice: the first counts',
};

/** What a tutor should look at in a quiz; empty where there is nothing. */
export const quizLooks = (
  { giving, quiz: { doubts, sureAndWrong } }: Quizzed,
  looks: readonly Look[],
): string =>
  [
    ...looks.map(lookText),
    ...(giving === null ? ['of no quiz that was given out here: its own questions decided'] : []),
    ...doubts.map((doubt) => QUIZ_DOUBT_WORDS[doubt]),
    ...(sureAndWrong > 0 ? [`sure and wrong ${sureAndWrong === 1 ? 'once' : `${sureAndWrong} times`}`] : []),
  ].join('; ');

/** `Is it dead? 2 of 3; …`, the weakest first. */
export const quizTopics = ({ topics }: MarkedQuiz): string =>
  topics
    .toSorted((x, y) => x.right / x.of - y.right / y.of)
    .map(({ topic, right, of }) => `${AIM_WORDS[topic].question} ${right} of ${of}`)
    .join('; ');

/** The class as rows of a table, a heading first; of a set with a rule also how each learner stands. */
export function csvRows(
  rows: readonly ClassRow[],
  sets: ReadonlyMap<string, readonly Learner[]>,
): readonly (readonly Field[])[] {
  const head = [
    ...['label', 'job', 'record code', 'verdict', 'verdict right', 'gates', 'total', 'of', 'passed'],
    ...PARTS.flatMap((part) => [part, `${part}, of`, `${part}, how`]),
    ...['hurdles not met', 'rung', 'thinking, s', 'counted', 'needs a look', 'comment', 'set', 'file'],
  ];
  const standing = new Map(
    [...sets].flatMap(([giving, learners]) =>
      learners.map((learner) => [`${giving} ${learner.label}`, setText(learner)] as const),
    ),
  );
  return [head, ...rows.map((one) => csvRow(one, standing))];
}

function csvRow(one: ClassRow, standing: ReadonlyMap<string, string>): readonly Field[] {
  const { row, looks, counts, passed, note } = one;
  if (row.kind === 'refused')
    return [
      ...[row.label ?? '', '', '', '', '', '', '', '', ''],
      ...PARTS.flatMap(() => ['', '', '']),
      ...['', '', '', 'no', `not marked: ${whyNotMarked(row)}`, '', '', row.name],
    ];
  if (row.kind === 'quiz') {
    const { quiz, right, of, record, minutes } = row.quiz;
    return [
      ...[row.label ?? '', quiz.title, record, '', '', '', right, of, ''],
      ...PARTS.flatMap(() => ['', '', '']),
      ...['', '', Math.round(60 * minutes), 'no', quizLooks(row, looks), quizTopics(row.quiz), '', row.name],
    ];
  }
  const { marks, verdict } = row;
  return [
    ...[row.label ?? '', row.job.title, row.code],
    ...[verdict.said === null ? '' : VERDICT_WORDS[verdict.said], verdict.right ? 'yes' : 'no'],
    ...[gatesWords(one), marks.total, row.summary.of, passedWords(passed)],
    ...PARTS.flatMap((part): Field[] => [marks.parts[part], marks.weights[part], sumText(marks, part)]),
    ...[marks.hurdles.map((hurdle) => HURDLE_WORDS[hurdle]).join('; '), RUNG_NAMES[row.rung], marks.thinking],
    ...[counts ? 'yes' : 'no', looks.map(lookText).join('; '), note?.comment ?? ''],
    ...[standing.get(`${row.giving} ${row.label}`) ?? '', row.name],
  ];
}

/** `8 of 10 passed, no critical act, no unsound unit accepted: met`. */
export function setText({ outcome }: Learner): string {
  const { passed, of, handedIn, critical, unsound, met } = outcome;
  const missing = of - handedIn;
  return [
    `${passed} of ${of} passed`,
    ...(missing === 0 ? [] : [`${missing} not handed in`]),
    critical === 0 ? 'no critical act' : `${critical} critical ${critical === 1 ? 'act' : 'acts'}`,
    unsound === 0
      ? 'no unsound unit accepted'
      : `${unsound} unsound ${unsound === 1 ? 'unit' : 'units'} accepted`,
  ]
    .join(', ')
    .concat(met ? ': met' : ': not met');
}
