/**
 * Step four of a test, open with step three: each line by what the unit did: it did, it did not, or not shown; each limit
 * against the value that was written down. The line that is judged last ends the test, unless something is still to be written
 * down or to be thought over; then its button does. Whether it is right is told afterwards, or in the debrief.
 */

import type { FormEvent } from 'react';
import { useState } from 'react';
import type { EntryOf, Judged, LimitJudged } from '../../../attempt/attempt.ts';
import { JUDGEMENTS, LIMIT_JUDGEMENTS } from '../../../attempt/attempt.ts';
import type { Line } from '../../../attempt/lines.ts';
import type { Run } from '../../../attempt/run.ts';
import type { TruthOfLimit } from '../../../attempt/truth.ts';
import { sourceText } from '../../../verification/sources.ts';
import type { InWords } from '../../../words/actions.ts';
import { limitSum, limitText } from '../../../words/actions.ts';
import { useKept } from '../../flow/useKept.ts';
import { Keys } from '../../parts/Keys.tsx';
import { answerText, JUDGED_WORDS, LIMIT_WORDS } from '../../words/answers.ts';
import { readingTitle } from '../../words/trade.ts';
import { recordOf, recordText } from '../observe/records.ts';
import { OWN_WORDS } from './Predict.tsx';

/** A limit and the reading that it is held against. */
type LimitLine = Pick<TruthOfLimit, 'limit' | 'reading'>;

interface Judgement {
  readonly lines: { id: string; judged: Judged }[];
  readonly limits: { id: string; reading: number; judged: LimitJudged }[];
}

const keyOf = ({ limit, reading }: LimitLine): string => `${limit.id} ${reading}`;

interface Props {
  readonly run: Run;
  /** The test that is judged, by its id. */
  readonly test: string;
  readonly lines: readonly InWords<Line>[];
  readonly limits: readonly LimitLine[];
  readonly prediction: EntryOf<'prediction'> | undefined;
  /** Readings that are not written down yet. */
  readonly unwritten: number;
  /** What was judged before, to be judged once more. */
  readonly before?: EntryOf<'judgement'> | undefined;
  readonly onJudged: (judgement: Judgement) => void;
}

type Words = {
  readonly lines: Readonly<Record<string, Judged>>;
  readonly limits: Readonly<Record<string, LimitJudged>>;
};

const wordsOf = (before: EntryOf<'judgement'> | undefined): Words => ({
  lines: Object.fromEntries(before?.lines.map(({ id, judged }) => [id, judged]) ?? []),
  limits: Object.fromEntries(
    before?.limits.map(({ id, reading, judged }) => [`${id} ${reading}`, judged]) ?? [],
  ),
});

export function Judge({ run, test, lines, limits, prediction, unwritten, before, onJudged }: Props) {
  const [judged, setJudged] = useKept<Words['lines']>('judged', () => wordsOf(before).lines, JUDGEMENTS);
  const [limitJudged, setLimitJudged] = useKept<Words['limits']>(
    'limits judged',
    () => wordsOf(before).limits,
    LIMIT_JUDGEMENTS,
  );
  const [tried, setTried] = useState(false);
  const leftOf = (words: Words): number =>
    lines.filter(({ id }) => words.lines[id] === undefined).length +
    limits.filter((limit) => words.limits[keyOf(limit)] === undefined).length;
  const now: Words = { lines: judged, limits: limitJudged };
  const left = leftOf(now);
  const count = lines.length + limits.length;
  const saidOf = (id: string) => {
    const said = prediction?.lines.find((line) => line.id === id)?.answer;
    return said === undefined ? 'nothing' : answerText(said);
  };
  const judge = (words: Words) =>
    onJudged({
      lines: lines.flatMap(({ id }) => {
        const word = words.lines[id];
        return word === undefined ? [] : [{ id, judged: word }];
      }),
      limits: limits.flatMap((limit) => {
        const word = words.limits[keyOf(limit)];
        return word === undefined ? [] : [{ id: limit.limit.id, reading: limit.reading, judged: word }];
      }),
    });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (left === 0) judge(now);
  };
  const take = (change: Partial<Words>, isPressed: boolean) => {
    const next = { ...now, ...change };
    setJudged(next.lines);
    setLimitJudged(next.limits);
    if (isPressed && left > 0 && leftOf(next) === 0 && unwritten === 0) judge(next);
  };
  return (
    <form className="stack second-step" onSubmit={submit} noValidate aria-label="Judge">
      {before === undefined ? (
        <div>
          <h3>Judge</h3>
          <p className="note">The line that you judge last ends the test; until then any can be changed.</p>
        </div>
      ) : null}
      <div>
        {lines.map(({ id, text, subject }) => (
          <div key={id} className="judge-line">
            <Keys
              legend={
                <>
                  <span className="note">{OWN_WORDS[subject]} </span>
                  {text}
                  <span className="note">
                    {' '}
                    · {prediction?.given ? 'given' : 'you said'}: {saidOf(id)}
                  </span>
                </>
              }
              options={JUDGEMENTS}
              words={JUDGED_WORDS}
              value={judged[id] ?? null}
              onChange={(word, isPressed) => take({ lines: { ...judged, [id]: word } }, isPressed)}
            />
          </div>
        ))}
        {limits.map((line) => {
          const record = recordOf(run, line.reading);
          const taken = run.readings[line.reading];
          return (
            <div key={keyOf(line)} className="judge-line">
              <Keys
                legend={
                  <>
                    {limitText(test, line.limit)}:{' '}
                    <strong>{record === undefined ? 'not written down' : recordText(record)}</strong>
                    <span className="note">
                      {' '}
                      {taken === undefined ? '' : readingTitle(taken.reading)} · limit:{' '}
                      {limitSum(test, line.limit)} ({sourceText(line.limit.source)})
                    </span>
                  </>
                }
                options={LIMIT_JUDGEMENTS}
                words={LIMIT_WORDS}
                value={limitJudged[keyOf(line)] ?? null}
                onChange={(word, isPressed) =>
                  take({ limits: { ...limitJudged, [keyOf(line)]: word } }, isPressed)
                }
              />
            </div>
          );
        })}
      </div>
      {tried && left > 0 ? (
        <p className="error" role="alert">
          <strong>Not yet.</strong>
          {left === 1 ? 'One line is' : `${left} lines are`} not judged.
        </p>
      ) : null}
      <div className="acts apart">
        <button type="submit" className={left === 0 ? 'main' : ''}>
          Judge {count} {count === 1 ? 'line' : 'lines'}
        </button>
        <span className="note">
          {unwritten === 0 ? '' : `${unwritten} ${unwritten === 1 ? 'reading' : 'readings'} not written down`}
        </span>
      </div>
    </form>
  );
}
