/**
 * Step four of a test: each line as it should, not as it should, or not shown; each limit against the value that was
 * written down. Whether that is right is told afterwards, or in the debrief.
 */
import type { FormEvent } from 'react';
import { useState } from 'react';
import type { EntryOf, Judged, LimitJudged } from '../../../attempt/attempt.ts';
import { JUDGEMENTS, LIMIT_JUDGEMENTS } from '../../../attempt/attempt.ts';
import type { Line } from '../../../attempt/lines.ts';
import type { Run } from '../../../attempt/run.ts';
import type { TruthOfLimit } from '../../../attempt/truth.ts';
import { sourceText } from '../../../verification/sources.ts';
import { useKept } from '../../flow/useKept.ts';
import { Keys } from '../../parts/Keys.tsx';
import { answerText } from '../../words/answers.ts';
import { readingTitle } from '../../words/trade.ts';
import { recordOf, recordText } from '../observe/records.ts';
import { SUBJECT_WORDS } from './Predict.tsx';

/** A limit and the reading that it is held against. */
type LimitLine = Pick<TruthOfLimit, 'limit' | 'reading'>;

interface Judgement {
  readonly lines: { id: string; judged: Judged }[];
  readonly limits: { id: string; reading: number; judged: LimitJudged }[];
}

const keyOf = ({ limit, reading }: LimitLine): string => `${limit.id} ${reading}`;

interface Props {
  readonly run: Run;
  readonly lines: readonly Line[];
  readonly limits: readonly LimitLine[];
  readonly prediction: EntryOf<'prediction'> | undefined;
  readonly onJudged: (judgement: Judgement) => void;
  readonly onBack: () => void;
}

export function Judge({ run, lines, limits, prediction, onJudged, onBack }: Props) {
  const [judged, setJudged] = useKept<Readonly<Record<string, Judged>>>('judged', {}, JUDGEMENTS);
  const [limitJudged, setLimitJudged] = useKept<Readonly<Record<string, LimitJudged>>>(
    'limits judged',
    {},
    LIMIT_JUDGEMENTS,
  );
  const [tried, setTried] = useState(false);
  const left =
    lines.filter(({ id }) => judged[id] === undefined).length +
    limits.filter((limit) => limitJudged[keyOf(limit)] === undefined).length;
  const saidOf = (id: string) => {
    const said = prediction?.lines.find((line) => line.id === id)?.answer;
    return said === undefined ? 'nothing' : answerText(said);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (left > 0) return;
    onJudged({
      lines: lines.flatMap(({ id }) => (judged[id] === undefined ? [] : [{ id, judged: judged[id] }])),
      limits: limits.flatMap((limit) => {
        const word = limitJudged[keyOf(limit)];
        return word === undefined ? [] : [{ id: limit.limit.id, reading: limit.reading, judged: word }];
      }),
    });
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
      <div>
        {lines.map(({ id, text, subject }) => (
          <div key={id} className="judge-line">
            <Keys
              legend={
                <>
                  <span className="note">{SUBJECT_WORDS[subject]} </span>
                  {text}
                  <span className="note">
                    {' '}
                    · {prediction?.given ? 'given' : 'you said'}: {saidOf(id)}
                  </span>
                </>
              }
              options={JUDGEMENTS}
              value={judged[id] ?? null}
              onChange={(word) => setJudged({ ...judged, [id]: word })}
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
                    {line.limit.text}:{' '}
                    <strong>{record === undefined ? 'not written down' : recordText(record)}</strong>
                    <span className="note">
                      {' '}
                      {taken === undefined ? '' : readingTitle(taken.reading)} · limit: {line.limit.sum} (
                      {sourceText(line.limit.source)})
                    </span>
                  </>
                }
                options={LIMIT_JUDGEMENTS}
                value={limitJudged[keyOf(line)] ?? null}
                onChange={(word) => setLimitJudged({ ...limitJudged, [keyOf(line)]: word })}
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
        <button type="submit" className="main">
          Judge {lines.length + limits.length} lines
        </button>
        <button type="button" className="plain" onClick={onBack}>
          Back to the readings
        </button>
      </div>
    </form>
  );
}
