/** The class: a row an attempt, what needs a look first; each reason leads to its moment in the replay. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { ClassRow } from '../../../desk/class.ts';
import { isDoubted, jobTitles, labelOf } from '../../../desk/class.ts';
import type { Quizzed, Row } from '../../../desk/collect.ts';
import { visible } from '../../../scenario/quoted.ts';
import {
  gatesWords,
  lookText,
  passedWords,
  quizLooks,
  quizTopics,
  verdictWords,
  whyNotMarked,
} from '../../../words/collect.ts';
import { recordNumber } from '../../format/figures.ts';
import { claimedTotal } from './claimed.ts';
import { addressOf } from './place.ts';

interface Props {
  readonly rows: readonly ClassRow[];
  readonly placeOf: (row: Row) => number;
}

/** Those that need no look, and are more than this, fold to a line. */
const SHOWN = 5;
const HEADS = ['label', 'job', 'record code', 'verdict', 'gates', 'total', 'needs a look'] as const;

export function ClassTable({ rows, placeOf }: Props) {
  const [isWhole, setWhole] = useState(false);
  const toSee = rows.filter(({ row, looks }) => row.kind === 'refused' || looks.length > 0 || isDoubted(row));
  const others = rows.filter((one) => !toSee.includes(one));
  const isOneJob = jobTitles(rows).length <= 1;
  const shown = isWhole || others.length <= SHOWN ? others : others.slice(0, SHOWN);
  return (
    <>
      <table className="class">
        <caption className="unseen">The class, what needs a look first</caption>
        <thead>
          <tr>
            {HEADS.map((head) => (
              <th key={head} scope="col" className={head === 'total' ? 'amount' : ''}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody className={others.length > 0 && toSee.length > 0 ? 'to-see' : ''}>
          {toSee.map((one) => (
            <OneRow key={placeOf(one.row)} one={one} place={placeOf(one.row)} isOneJob={isOneJob} />
          ))}
        </tbody>
        <tbody>
          {shown.map((one) => (
            <OneRow key={placeOf(one.row)} one={one} place={placeOf(one.row)} isOneJob={isOneJob} />
          ))}
        </tbody>
        <tbody className="only-printed">
          {others.slice(shown.length).map((one) => (
            <OneRow key={placeOf(one.row)} one={one} place={placeOf(one.row)} isOneJob={isOneJob} />
          ))}
        </tbody>
      </table>
      {shown.length === others.length ? null : (
        <button type="button" className="plain not-printed" onClick={() => setWhole(true)}>
          {others.length - shown.length} more, none needs a look
        </button>
      )}
    </>
  );
}

/** A quiz has no verdict and no gates: what was right, by topic. */
function QuizRow({
  row,
  one,
  label,
}: {
  readonly row: Quizzed;
  readonly one: ClassRow;
  readonly label: string;
}) {
  const { quiz, right, of, record } = row.quiz;
  const looks = quizLooks(row, one.looks);
  return (
    <tr>
      <th scope="row" data-label="label">
        <span>{row.label === null ? '–' : label}</span>
      </th>
      <td data-label="quiz">
        <span>
          {visible(quiz.title)}{' '}
          <span className="note">
            {quiz.count} questions, seed {quiz.seed}
          </span>
        </span>
      </td>
      <td data-label="record code" className="code">
        <span>{recordNumber(record)}</span>
      </td>
      <td data-label="by topic" colSpan={2}>
        <span>{quizTopics(row.quiz)}</span>
      </td>
      <td data-label="right" className="amount">
        <span>
          {right} of {of}
        </span>
      </td>
      <td data-label="needs a look">
        <span className={looks === '' ? 'note' : ''}>{looks === '' ? 'no' : looks}</span>
      </td>
    </tr>
  );
}

interface RowProps {
  readonly one: ClassRow;
  readonly place: number;
  /** All are of one job, which stands above the table. */
  readonly isOneJob: boolean;
}

/** What is `usual` is left out where each row takes several lines, on a phone. */
function OneRow({ one, place, isOneJob }: RowProps) {
  const { row, looks, passed, note } = one;
  const label = visible(labelOf(row));
  if (row.kind === 'refused')
    return (
      <tr>
        <th scope="row" data-label="label">
          <span>{row.label === null ? '–' : label}</span>
        </th>
        <td data-label="file">
          <span>{visible(row.name)}</span>
        </td>
        <td colSpan={5} data-label="not marked">
          <strong>Not marked: {whyNotMarked(row)}</strong>
        </td>
      </tr>
    );
  if (row.kind === 'quiz') return <QuizRow row={row} one={one} label={label} />;
  const { marks, summary } = row;
  const claimed = claimedTotal(looks);
  const gates = gatesWords(one);
  return (
    <tr>
      <th scope="row" data-label="label">
        <Link href={addressOf(place)}>{label}</Link>
      </th>
      <td data-label="job" className={isOneJob && row.variant === null ? 'job usual' : 'job'}>
        <span>
          {row.job.title}
          {row.variant === null ? '' : `, variant ${row.variant + 1}`}
        </span>
      </td>
      <td data-label="record code" className="code">
        <span>{recordNumber(row.code)}</span>
      </td>
      <td data-label="verdict">
        <span>{verdictWords(row)}</span>
      </td>
      <td data-label="gates" className={gates === 'met' ? 'usual' : ''}>
        {gates === 'met' ? <span>met</span> : <strong>{gates}</strong>}
      </td>
      <td data-label="total" className="amount">
        <span>
          {claimed === null ? '' : `filed ${claimed}, is `}
          {marks.total}
          {summary.of === 100 ? '' : ` of ${summary.of}`}
          <span className="note"> {passedWords(passed)}</span>
        </span>
      </td>
      <td data-label="needs a look" className={looks.length === 0 && note === null ? 'usual' : ''}>
        {looks.length === 0 ? (
          <span className="note">no</span>
        ) : (
          <span>
            {looks.map((look, i) => (
              <span key={look.id + ('entry' in look ? look.entry : '')}>
                {i === 0 ? '' : '; '}
                <Link href={addressOf(place, 'entry' in look ? look.entry : null)}>{lookText(look)}</Link>
              </span>
            ))}
          </span>
        )}
        {note === null || note.comment === '' ? null : <span className="note"> “{note.comment}”</span>}
      </td>
    </tr>
  );
}
