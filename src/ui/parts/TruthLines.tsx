/** Lines of one test as they were answered and as they are, with why and source. Never a bare tick. */
import type { Judged, LimitJudged } from '../../attempt/record/attempt.ts';
import { JUDGED_WORDS, LIMIT_WORDS } from '../../words/answers.ts';

export interface TruthPair {
  readonly of: string;
  readonly you: string;
  readonly truth: string;
  /** Where `you` and `truth` cannot be compared as text. */
  readonly agrees?: boolean;
}

export const judgedPair = (judged: Judged | null | undefined, right: Judged): TruthPair => ({
  of: 'judged',
  you: judged == null ? 'nothing' : JUDGED_WORDS[judged],
  truth: JUDGED_WORDS[right],
});

export const limitPair = (judged: LimitJudged | null | undefined, right: LimitJudged): TruthPair => ({
  of: 'judged',
  you: judged == null ? 'nothing' : LIMIT_WORDS[judged],
  truth: LIMIT_WORDS[right],
});

export interface TruthLine {
  readonly id: string;
  readonly text: string;
  readonly pairs: readonly TruthPair[];
  readonly why: string;
  /** What a unit or a circuit that is faulty in this shows. */
  readonly otherwise?: string | null;
  readonly source: string;
}

const agreesIn = ({ you, truth, agrees }: TruthPair): boolean => agrees ?? you === truth;
/** Whether all that was said of the line is true. */
export const isAsSaid = ({ pairs }: TruthLine): boolean => pairs.every(agreesIn);

export function TruthLines({ lines }: { readonly lines: readonly TruthLine[] }) {
  return (
    <div>
      {lines.map((line) => (
        <div key={line.id} className={isAsSaid(line) ? 'judge-line' : 'judge-line differs'}>
          <p>
            <strong>{line.text}</strong>
          </p>
          <Truth line={line} />
        </div>
      ))}
    </div>
  );
}

const Truth = ({ line }: { readonly line: TruthLine }) => (
  <dl className="told">
    {line.pairs.map((pair) => (
      <Pair key={pair.of} pair={pair} />
    ))}
    <dt>why</dt>
    <dd>{line.why}</dd>
    {line.otherwise == null || isAsSaid(line) ? null : (
      <>
        <dt>if faulty</dt>
        <dd>you would see {line.otherwise}</dd>
      </>
    )}
    <dt>source</dt>
    <dd>{line.source}</dd>
  </dl>
);

function Pair({ pair }: { readonly pair: TruthPair }) {
  const { of, you, truth } = pair;
  return (
    <>
      <dt>{of}</dt>
      <dd>
        {agreesIn(pair) ? (
          you === 'given' ? (
            <>given: {truth}</>
          ) : (
            <>you: {you}; that is true</>
          )
        ) : (
          <>
            you: {you}; true: <strong>{truth}</strong>
          </>
        )}
      </dd>
    </>
  );
}
