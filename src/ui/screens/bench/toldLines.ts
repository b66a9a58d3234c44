/**
 * What is told of a test as soon as it is finished: of each line, figure and limit what was said, read and is true, and what
 * in it was wrong. Made of papers, log and what was measured alone, never of what is wrong with the unit.
 */
import type { Answer, EntryOf, Judged, LimitJudged, Sure } from '../../../attempt/record/attempt.ts';
import { isLeftAlone, isRightFigure, testFigures } from '../../../attempt/record/lines.ts';
import { restsOn } from '../../../attempt/record/restsOn.ts';
import { entriesAbout } from '../../../attempt/record/run.ts';
import type { Sitting } from '../../../attempt/record/sitting.ts';
import { lastSitting, readingsIn } from '../../../attempt/record/sitting.ts';
import type { TruthOfLimit, TruthOfLine } from '../../../attempt/record/truth.ts';
import { judgedRight, truthOf } from '../../../attempt/record/truth.ts';
import type { Family } from '../../../faults/families.ts';
import type { Figure, TestAction } from '../../../verification/testAction.ts';
import { figureInWords, limitSum, limitText, lineInWords } from '../../../words/actions.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS, SURE_WORDS } from '../../../words/answers.ts';
import { readingTitle } from '../../../words/readings.ts';
import { sourceText } from '../../../words/sources.ts';
import { OWN_WORDS, SUBJECT_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Bench } from '../../flow/bench.ts';
import { perceived } from '../../flow/whatIsKnown.ts';
import { figureText } from '../../format/figures.ts';
import { whyText } from '../../parts/whyText.ts';
import { recordOf, recordText } from '../measure/records.ts';

/** Something said that is not true: before the test, or of what the unit did. */
interface Said {
  readonly as: 'said' | 'judged';
  readonly you: string;
  readonly truth: string;
}

export interface ToldLine {
  readonly id: string;
  readonly text: string;
  /** What to take away of it, as a heading; null where all that was said is true. */
  readonly takeaway: string | null;
  readonly said: readonly Said[];
  /** How sure the prediction was, and whether it was right; null where none was asked. */
  readonly prediction: { readonly sure: Sure; readonly isRight: boolean } | null;
  readonly read: readonly string[];
  readonly so: string;
  /** Completes "you would see". */
  readonly otherwise: string | null;
  readonly limit: string | null;
  readonly source: string;
  /** Of what is wrong: the entry of the log whose place is shown, and the families that a broken line points to. */
  readonly place: { readonly entry: number; readonly points: readonly Family[] } | null;
}

interface About {
  readonly bench: Bench;
  readonly action: TestAction;
  readonly sitting: Sitting;
  readonly prediction: EntryOf<'prediction'> | undefined;
  readonly judgement: EntryOf<'judgement'> | undefined;
}

/** What was judged wrong first, then what was said wrong beforehand, then what is right; each in the order of the test. */
export function toldLines(
  bench: Bench,
  action: TestAction,
  prediction: EntryOf<'prediction'> | undefined,
): readonly ToldLine[] {
  const { run } = bench;
  const sitting = lastSitting(run, action.id);
  const judgement = entriesAbout(run.attempt, 'judgement', action.id).at(-1);
  const about: About = { bench, action, sitting, prediction, judgement };
  const truth = truthOf(run, action, sitting);
  const all = [
    ...truth.limits.map((limit) => limitTold(about, limit)),
    ...truth.lines.map((line) => lineTold(about, line)),
    ...testFigures(run.scenario, action).map((figure) => figureTold(about, figure)),
  ];
  return all.toSorted((a, b) => rankOf(a) - rankOf(b));
}

const rankOf = ({ takeaway, said }: ToldLine): number =>
  takeaway === null ? 2 : said.some((one) => one.as === 'judged') ? 0 : 1;

function lineTold(about: About, line: TruthOfLine): ToldLine {
  const { bench, action, sitting, prediction, judgement } = about;
  const { text, subject, right, why, otherwise, source, toldBy, id, finding } = lineInWords(action.id, line);
  const answered = prediction?.lines.find((one) => one.id === id);
  const sure = answered?.sure ?? prediction?.sure ?? null;
  const isAsked = prediction?.given !== true && !isLeftAlone(bench.run, line, prediction);
  const isPredicted = !isAsked || answered?.answer === right;
  const judged = judgement?.lines.find((one) => one.id === id)?.judged;
  const rightly = finding === null ? null : judgedRight(line);
  const isJudged = rightly === null || judged === rightly;
  const rests = rightly === null ? [] : restsOn(bench.run, action, sitting, id);
  return {
    id,
    text: `${OWN_WORDS[subject]} ${text}`,
    takeaway: !isJudged
      ? judgedTakeaway(judged, rightly)
      : !isPredicted
        ? predictedTakeaway(answered?.answer, right, SUBJECT_WORDS[subject])
        : null,
    said: [
      ...(isPredicted
        ? []
        : [
            {
              as: 'said' as const,
              you: [
                answered === undefined ? 'nothing' : answerText(answered.answer),
                ...(sure === null ? [] : [SURE_WORDS[sure]]),
              ].join(', '),
              truth: answerText(right),
            },
          ]),
      ...(isJudged || rightly === null
        ? []
        : [
            {
              as: 'judged' as const,
              you: judged === undefined ? 'nothing' : JUDGED_WORDS[judged],
              truth: JUDGED_WORDS[rightly],
            },
          ]),
    ],
    prediction: !isAsked || sure === null ? null : { sure, isRight: isPredicted },
    read: rightly === null ? [] : readText(about, rests),
    so: whyText(why, toldBy.map(testTitle)),
    otherwise,
    limit: null,
    source: sourceText(source),
    place: rightly === null ? null : placeOf(about, rests.at(-1), line.points),
  };
}

function limitTold(about: About, { limit, reading, right }: TruthOfLimit): ToldLine {
  const { action, judgement } = about;
  const judged = judgement?.limits.find((l) => l.id === limit.id && l.reading === reading)?.judged;
  const isRight = judged === right;
  return {
    id: `limit ${limit.id} ${reading}`,
    text: limitText(action.id, limit),
    takeaway: isRight ? null : limitTakeaway(judged, right),
    said: isRight
      ? []
      : [
          {
            as: 'judged',
            you: judged === undefined ? 'nothing' : LIMIT_WORDS[judged],
            truth: LIMIT_WORDS[right],
          },
        ],
    prediction: null,
    read: readText(about, [reading]),
    so: LIMIT_SO[right],
    otherwise: null,
    limit: limitSum(action.id, limit),
    source: sourceText(limit.source),
    place: placeOf(about, reading, limit.points),
  };
}

function figureTold({ action, prediction }: About, figure: Figure): ToldLine {
  const { id, text, unit, value, tolerance, why, source } = figureInWords(action.id, figure);
  const said = prediction?.figures.find((one) => one.id === id)?.value;
  const isRight = prediction?.given === true || isRightFigure(figure, said);
  return {
    id: `figure ${id}`,
    text: `A sound circuit ${text}`,
    takeaway: isRight ? null : 'One figure comes out otherwise',
    said: isRight
      ? []
      : [
          {
            as: 'said',
            you: said == null ? 'nothing' : figureText(said, unit),
            truth: `${figureText(value, unit)}, ±${figureText(tolerance, unit)} counts as right`,
          },
        ],
    prediction: null,
    read: [],
    so: why,
    otherwise: null,
    limit: null,
    source: sourceText(source),
    place: null,
  };
}

const LIMIT_SO: Readonly<Record<LimitJudged, string>> = {
  within: 'The reading keeps the limit, and its uncertainty does not reach over it.',
  outside: 'The reading breaks the limit, and its uncertainty does not reach back over it.',
  'too-close': 'The uncertainty of the reading reaches over the limit: the true value may be on either side.',
};

function limitTakeaway(judged: LimitJudged | undefined, right: LimitJudged): string {
  if (right === 'too-close') return 'One reading is too close to its limit to call';
  if (judged === 'too-close') return `One reading is clear of its limit: ${LIMIT_WORDS[right]}`;
  return right === 'outside' ? 'One reading is outside its limit' : 'One reading is within its limit';
}

function judgedTakeaway(judged: Judged | undefined, right: Judged | null): string {
  if (right === 'not-shown') return 'One line says more than you read';
  return judged === 'not-shown'
    ? 'You read enough to judge one line'
    : 'One line says the opposite of what you read';
}

function predictedTakeaway(said: Answer | undefined, right: Answer, subject: string): string {
  if (right === 'cant-tell') return 'This test cannot tell one of its lines';
  if (said === 'cant-tell') return 'This test tells one line that you left open';
  const who = `${subject.charAt(0).toUpperCase()}${subject.slice(1)}`;
  return right === 'should'
    ? `${who} does one thing that you did not expect`
    : `${who} does not do one thing that you expected`;
}

/** So many readings, or things seen and heard, stand in a row. */
const MOST = 3;

const shortened = (texts: readonly string[]): readonly string[] =>
  texts.length <= MOST + 1 ? texts : [...texts.slice(0, MOST), `and ${texts.length - MOST} more`];

/** The readings that a finding rests on, as they were written down; where none alone decides it, all that was noticed. */
function readText({ bench, sitting }: About, rests: readonly number[]): readonly string[] {
  const { run, happened } = bench;
  const own = readingsIn(run, sitting).filter(({ index }) => rests.length === 0 || rests.includes(index));
  const readings = own.map(({ index, reading }) => {
    const record = recordOf(run, index);
    return `${readingTitle(reading)}: ${record === undefined ? 'not written down' : recordText(record)}`;
  });
  const first = happened.findIndex(({ entry, test }) => entry > sitting.after && test === sitting.test);
  const noticed = rests.length > 0 || first < 0 ? [] : perceived(happened, first).map(({ text }) => text);
  const all = [...shortened(readings), ...shortened(noticed)];
  return all.length === 0 ? ['nothing'] : all;
}

/** Where the reading was taken that it rests on, else the last of the sitting. */
function placeOf(
  { bench, sitting }: About,
  reading: number | undefined,
  points: readonly Family[],
): ToldLine['place'] {
  const index = reading ?? readingsIn(bench.run, sitting).at(-1)?.index;
  const taken = index === undefined ? undefined : bench.run.readings[index];
  return taken === undefined ? null : { entry: taken.entry, points };
}
