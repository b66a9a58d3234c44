/**
 * Step four of a test: each line by what the unit did: it did, it did not, or not shown; each limit against the value
 * that was written down. Any can be changed, and more can be read, until the test is finished by its button. Whether it is
 * right is told afterwards, or in the debrief.
 */

import { useState } from 'react';
import type { Answer, EntryOf, Judged, LimitJudged } from '../../../attempt/record/attempt.ts';
import { JUDGEMENTS, LIMIT_JUDGEMENTS } from '../../../attempt/record/attempt.ts';
import type { Line } from '../../../attempt/record/lines.ts';
import type { Run } from '../../../attempt/record/run.ts';
import type { TruthOfLimit } from '../../../attempt/record/truth.ts';
import type { InWords } from '../../../words/actions.ts';
import { limitSum, limitText } from '../../../words/actions.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS } from '../../../words/answers.ts';
import { readingTitle } from '../../../words/readings.ts';
import { sourceText } from '../../../words/sources.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { useKept } from '../../flow/useKept.ts';
import { BarLine } from '../../parts/BarLine.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { recordOf, recordText } from '../measure/records.ts';
import { StepFrame } from './StepFrame.tsx';

/** A limit and the reading that it is held against. */
type LimitLine = Pick<TruthOfLimit, 'limit' | 'reading'>;

interface Judgement {
  readonly lines: { id: string; judged: Judged }[];
  readonly limits: { id: string; reading: number; judged: LimitJudged }[];
}

const keyOf = ({ limit, reading }: LimitLine): string => `${limit.id} ${reading}`;

/** What a unit did that did as was said of it. */
const AS_SAID: Readonly<Record<Answer, Judged | null>> = {
  should: 'did',
  'should-not': 'did-not',
  'cant-tell': null,
};

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
  /** To the readings; of what is judged once more, away from it. */
  readonly onBack: () => void;
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

export function Judge(props: Props) {
  const { run, test, lines, limits, prediction, unwritten, before, onBack, onJudged } = props;
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
  const answerTo = (id: string) => prediction?.lines.find((line) => line.id === id)?.answer;
  const saidOf = (id: string) => {
    const said = answerTo(id);
    return said === undefined ? 'nothing' : answerText(said);
  };
  // One press for lines that came as they were said; what is judged already stays.
  const asSaid = lines.flatMap(({ id }): [string, Judged][] => {
    const word = AS_SAID[answerTo(id) ?? 'cant-tell'];
    return word === null || judged[id] !== undefined ? [] : [[id, word]];
  });
  const words = new Set(limits.map((limit) => limitJudged[keyOf(limit)] ?? null));
  const [common = null] = words.size === 1 ? words : [];
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
  const finish = () => {
    setTried(true);
    if (left === 0) judge(now);
  };
  const isOnceMore = before !== undefined;
  const bar = (
    <>
      <BarLine
        refused={
          tried && left > 0
            ? {
                what: 'Not yet.',
                why: `${left === 1 ? 'One line is' : `${left} lines are`} not judged.`,
              }
            : null
        }
      >
        {unwritten === 0
          ? 'Any answer can be changed until Finish test.'
          : `${unwritten} ${unwritten === 1 ? 'reading' : 'readings'} not written down.`}
      </BarLine>
      <div className="bar-acts">
        <button type="button" onClick={onBack}>
          {isOnceMore ? 'Leave it as it was judged' : 'Back to the readings'}
        </button>
        <button type="submit" className={left === 0 ? 'main' : 'unready'}>
          Finish test{left === 0 ? '' : `: ${left} ${left === 1 ? 'line' : 'lines'} open`}
        </button>
      </div>
    </>
  );
  return (
    <StepFrame bar={bar} form={{ label: 'Judge', onSubmit: finish }}>
      <div>
        {asSaid.length < 2 ? null : (
          <button
            type="button"
            className="row-key"
            onClick={() => setJudged({ ...judged, ...Object.fromEntries(asSaid) })}
          >
            {asSaid.length} lines as {prediction?.given ? 'given' : 'you said'}
          </button>
        )}
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
              onChange={(word) => setJudged({ ...judged, [id]: word })}
            />
          </div>
        ))}
        {limits.length < 2 ? null : (
          <div className="judge-line">
            <Keys
              legend={`All ${limits.length} limits alike`}
              options={LIMIT_JUDGEMENTS}
              words={LIMIT_WORDS}
              value={common}
              onChange={(word) =>
                setLimitJudged(Object.fromEntries(limits.map((limit) => [keyOf(limit), word])))
              }
            />
          </div>
        )}
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
                onChange={(word) => setLimitJudged({ ...limitJudged, [keyOf(line)]: word })}
              />
            </div>
          );
        })}
      </div>
    </StepFrame>
  );
}
