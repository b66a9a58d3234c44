/** One attempt on paper, on one page: marks by part, the answers that they were lost by, the comment, and what to ask. */
import { Fragment } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import type { ClassRow } from '../../../desk/class.ts';
import type { Marked } from '../../../desk/collect.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import { gatesWords, lookText, passedWords, verdictWords } from '../../../words/collect.ts';
import { TRUTH_WORDS } from '../../../words/mattered.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { HURDLE_WORDS, sumText } from '../../../words/sums.ts';
import { recordNumber } from '../../format/figures.ts';
import { SheetBlock } from '../give/SheetBlock.tsx';
import type { Lost } from './lost.ts';
import { lostIn, lostTitle } from './lost.ts';
import { wholeText } from './PartsLost.tsx';

interface Props {
  readonly told: Debrief;
  readonly one: ClassRow;
  readonly row: Marked;
  readonly word: string | null;
  readonly questions: readonly string[];
}

/** What somebody talks about first. */
const ORDER: readonly PartName[] = [
  'judgement',
  'observation',
  'record',
  'prediction',
  'diagnosis',
  'reasons',
];
/** So many characters of single answers fill the page beside all else; a comment takes its share of them. */
const FILLS = 3600;

export function AttemptSheet({ told, one, row, word, questions }: Props) {
  const { marks } = told;
  const lost = ORDER.flatMap((part) => lostIn(told).filter((item) => item.part === part));
  const comment = one.note?.comment ?? '';
  const shown = fitting(lost, FILLS - comment.length);
  return (
    <article className="only-printed attempt-sheet">
      <h2>{verdictWords(row)}</h2>
      <p>
        A faultless trainee {TRUTH_WORDS[row.verdict.truth]}{' '}
        <strong>
          {marks.total} of {row.summary.of}
        </strong>
        , {passedWords(one.passed)}. Gates: {gatesWords(one)}.{' '}
        {marks.hurdles.length === 0
          ? ''
          : `Not yet: ${marks.hurdles.map((hurdle) => HURDLE_WORDS[hurdle]).join('; ')}.`}
      </p>
      {one.looks.length === 0 ? null : <p>Needs a look: {one.looks.map(lookText).join('; ')}.</p>}
      {comment === '' ? null : (
        <p>
          <strong>Comment:</strong> {comment}
        </p>
      )}
      <div className="attempt-parts">
        {ORDER.map((part) => {
          const own = shown.filter((item) => item.part === part);
          const left = lost.filter((item) => item.part === part).length - own.length;
          return (
            <Fragment key={part}>
              <h3>
                {part} {marks.parts[part]} of {marks.weights[part]}: {sumText(marks, part)}
              </h3>
              {wholeText(told, part) === null ? null : <p>{wholeText(told, part)}</p>}
              <ul>
                {own.map((item) => (
                  <li key={item.key}>{answerText(item)}</li>
                ))}
                {left === 0 ? null : (
                  <li>{own.length === 0 ? left : `${left} more`}, which stand on the screen</li>
                )}
              </ul>
            </Fragment>
          );
        })}
      </div>
      <p>
        <strong>To be asked:</strong> {questions.join(' ')}
      </p>
      <SheetBlock
        title={`${row.job.title}, ${RUNG_NAMES[row.rung]}, record ${recordNumber(row.code).slice(0, 9)}`}
        word={word ?? '–'}
        rules={told.run.scenario.rules}
        page={1}
        of={1}
      />
    </article>
  );
}

const answerText = (item: Lost): string =>
  [
    `${lostTitle(item)}: ${item.line}: said ${item.said}, true ${item.truth}.`,
    // What was expected is held against no reading.
    ...(item.part === 'prediction' || item.read.length === 0 ? [] : [`Read: ${item.read.join('; ')}.`]),
    ...(item.source === null ? [] : [`${item.source}.`]),
  ].join(' ');

/** As many as fit, in their order. */
function fitting(lost: readonly Lost[], fills: number): readonly Lost[] {
  let length = 0;
  return lost.filter((item) => {
    length += answerText(item).length + 20;
    return length <= fills;
  });
}
