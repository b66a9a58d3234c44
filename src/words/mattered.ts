/** What mattered most in an attempt, each in one sentence that names test, line and figure, and the goal that follows. */

import type { Debrief, DebriefLine } from '../attempt/marks/debrief.ts';
import type { Mattered } from '../attempt/marks/mattered.ts';
import type { Showing } from '../attempt/marks/showing.ts';
import type { Answer, Judged, LimitJudged, Verdict } from '../attempt/record/attempt.ts';
import type { TruthOfLimit } from '../attempt/record/truth.ts';
import type { Typed } from '../attempt/record/typed.ts';
import type { Reading } from '../bench/reading.ts';
import { lineText } from './actions.ts';
import { answerText, LIMIT_WORDS } from './answers.ts';
import { causeTitle } from './causeTitles.ts';
import { pairText, readingTitle } from './readings.ts';
import { testTitle } from './testTitles.ts';
import { UNSAFE_ACT_WORDS } from './unsafeActs.ts';
import { VERDICT_WORDS } from './verdicts.ts';

/** How figures are written, which is the screen's business. */
export interface Figures {
  /** As the instrument shows it. */
  readonly shown: (reading: Reading) => string;
  /** As it was written down. */
  readonly typed: (record: Typed) => string;
  readonly time: (seconds: number, unit: 'ms' | 's', decimals: number) => string;
}

/** What a faultless trainee does whose verdict it is. */
export const TRUTH_WORDS: Readonly<Record<Verdict, string>> = {
  fit: 'finds nothing broken here and finishes: fit for service.',
  'not-fit': 'finds something broken here: not fit for service.',
  'could-not-finish': 'cannot tell with the tests that are allowed here: could not finish.',
  'nothing-wrong': 'does every test of this job and finds nothing wrong.',
  'as-designed': 'does every test of this job and finds nothing wrong: the papers say why it behaves so.',
  'something-wrong': 'finds something wrong by the tests of this job.',
  'cannot-tell': 'cannot tell with the tests of this job.',
};

export interface Reason {
  /** The test that it is about, where it is about one. */
  readonly test: string | null;
  readonly text: string;
}

/** What happened: the test by its title, and one plain sentence. */
export function reasonOf(one: Mattered, { verdict }: Pick<Debrief, 'verdict'>, as: Figures): Reason {
  switch (one.what) {
    case 'critical act':
      return about(one.test, `You did what is never safe: ${UNSAFE_ACT_WORDS[one.act].act}.`);
    case 'called fit':
      return one.showing === null
        ? about(null, `${saidText(verdict.said)}, and no test that you did shows it.`)
        : about(
            one.showing.test,
            `${saidText(verdict.said)}${one.done ? '' : ' and left this test out'}: ${readAgainst(one.showing, as)}.`,
          );
    case 'verdict':
      return about(null, `${saidText(verdict.said)}; a faultless trainee ${TRUTH_WORDS[verdict.truth]}`);
    case 'wrong cause':
      return about(
        null,
        `You would have signed for the cause “${causeTitle(one.cause)}”, and nothing that you did points there.`,
      );
    case 'wrong line': {
      const { predicted, right, sure } = one.line;
      const signed = sure === 'would-sign' ? 'signed for' : 'said';
      return about(
        one.line.test,
        `${quoted(one.line)}: you ${signed} “${predicted === null ? 'nothing' : answerText(predicted)}”, right is “${answerText(right)}”${wrote(one.written, as)}.`,
      );
    }
    case 'misjudged line':
      return about(one.line.test, `${quoted(one.line)}: ${judgedText(one.line)}${wrote(one.written, as)}.`);
    case 'misjudged limit':
      return about(
        one.test,
        `You ${limitJudged(one.limit, one.judged, as)}; it is ${LIMIT_WORDS[one.limit.right]}.`,
      );
    case 'misread':
      return about(one.test, misreadText(one.taken.reading, one.typed, as));
    case 'repeats':
      return about(null, `After putting it right you did not repeat ${listed(one.tests)}.`);
    case 'tests left out':
      return about(null, `You left out ${listed(one.tests)}.`);
  }
}

const about = (test: string | null, text: string): Reason => ({
  test: test === null ? null : testTitle(test),
  text,
});

/** What to do otherwise next time; to be understood without the debrief. */
export function goalText(one: Mattered | null, as: Figures): string {
  switch (one?.what) {
    case undefined:
      return 'Do the same on a unit that you have not seen.';
    case 'critical act':
      return `Next time, ${one.test === null ? '' : `in ${test(one.test)}, `}without this: ${UNSAFE_ACT_WORDS[one.act].act}. ${UNSAFE_ACT_WORDS[one.act].why}`;
    case 'called fit':
      return one.showing === null
        ? 'Before you find nothing wrong, name for every test the figure that shows it.'
        : `Before you find nothing wrong, ${one.done ? `hold the figures of ${test(one.showing.test)} against its lines` : `do ${test(one.showing.test)}`}: ${readAgainst(one.showing, as)}.`;
    case 'verdict':
      return 'Before the verdict, go through your tests once more: which figure is outside its limit, and which line is not as it should be?';
    case 'wrong cause':
      return `Before you sign for a cause, name the figure that it alone explains${one.showing === null ? '' : `. Here ${test(one.showing.test)} had it: ${readAgainst(one.showing, as)}`}.`;
    case 'wrong line':
      return `Next time, in ${test(one.line.test)}: ${quoted(one.line)} ${ANSWER_GOAL[one.line.right]}${wrote(one.written, as)}.`;
    case 'misjudged line':
      return `Next time, in ${test(one.line.test)}, hold what you wrote against ${quoted(one.line)}: ${judgedText(one.line)}${wrote(one.written, as)}.`;
    case 'misjudged limit':
      return `${test(one.test)}: you ${limitJudged(one.limit, one.judged, as)}. Next time judge it ${LIMIT_WORDS[one.limit.right]}.`;
    case 'misread':
      return `${test(one.test)}: write the figure that the display shows, with its unit. ${misreadText(one.taken.reading, one.typed, as)}`;
    case 'repeats':
      return `After a repair, repeat the failed test and every earlier one that the fault may have influenced before you call it fit. You left out ${listed(one.tests)}.`;
    case 'tests left out':
      return `Do the tests that you left out: ${listed(one.tests)}.`;
  }
}

const test = (id: string): string => `“${testTitle(id)}”`;
/** Without the figures in brackets, which stand with the line itself below. */
const quoted = (line: DebriefLine): string =>
  `“${lineText(line.test, line).replaceAll(/ \([^()]*\d[^()]*\)/g, '')}”`;

const ANSWER_GOAL: Readonly<Record<Answer, string>> = {
  should: 'should be',
  'should-not': 'should not be',
  'cant-tell': 'is what the test cannot tell',
};

const JUDGED: Readonly<Record<Judged, string>> = {
  did: 'did',
  'did-not': 'did not',
  'not-shown': 'was not shown to',
};
const judgedText = ({ judged, judgement }: DebriefLine): string =>
  `you judged that it ${JUDGED[judged ?? 'not-shown']}, and it ${JUDGED[judgement ?? 'not-shown']}`;

const saidText = (said: Verdict | null): string =>
  said === null ? 'You gave no verdict' : `You said “${VERDICT_WORDS[said]}”`;

/** The limit in the unit and the digits of the instrument that it was read on. */
function limitFigure({ limit, typed }: TruthOfLimit, as: Figures): string {
  const most = limit.kind === 'most' ? 'at most' : 'at least';
  return limit.compares === 'trip time'
    ? `${most} ${as.time(limit.limit, 'ms', 0)}`
    : `${most} ${as.shown({ ...typed, value: limit.limit, qualifier: null })}`;
}

const limitJudged = (limit: TruthOfLimit, judged: LimitJudged, as: Figures): string =>
  `wrote ${as.shown(limit.typed)} against ${limitFigure(limit, as)} and judged it ${LIMIT_WORDS[judged]}`;

const misreadText = (reading: Reading, typed: Typed, as: Figures): string =>
  `The display showed ${as.shown(reading)} (${readingTitle(reading)}), and you wrote ${as.typed(typed)}.`;

/** A pair of conductors stays on one line. */
const unbroken = (pair: string): string => pair.replaceAll('–', '\u2060–\u2060');

/** Two figures are named, of more the first two and how many more. */
const NAMED = 2;
function wrote(written: readonly Reading[], as: Figures): string {
  if (written.length === 0) return '';
  const named = written
    .slice(0, NAMED)
    .map((reading) => `${as.shown(reading)} ${unbroken(pairText(reading))}`.trim());
  const more = written.length - named.length;
  return `; you wrote ${named.join(' and ')}${more === 0 ? '' : ` and ${more} more`}`;
}

const readAgainst = ({ read }: Showing, as: Figures): string =>
  read === null
    ? 'the fault shows there by what is seen, heard or felt'
    : `${readingTitle(read.met)} reads ${as.shown(read.met)}, and ${as.shown(read.due)} on a correct unit`;

function listed(tests: readonly string[]): string {
  const named = tests
    .slice(0, NAMED)
    .map(test)
    .join(tests.length === 2 ? ' and ' : ', ');
  const more = tests.length - NAMED;
  return more <= 0 ? named : `${named} and ${more} more`;
}
