/** Lines of one test as they were answered and as they are: you, true, why, source. Never a bare tick. */
export interface TruthPair {
  readonly of: string;
  readonly you: string;
  readonly truth: string;
  /** Where `you` and `truth` cannot be compared as text. */
  readonly agrees?: boolean;
}

export interface TruthLine {
  readonly id: string;
  readonly text: string;
  readonly pairs: readonly TruthPair[];
  readonly why: string;
  readonly source: string;
}

export function TruthLines({ lines }: { readonly lines: readonly TruthLine[] }) {
  return (
    <div>
      {lines.map(({ id, text, pairs, why, source }) => (
        <div key={id} className="judge-line">
          <p>
            <strong>{text}</strong>
          </p>
          <dl className="told">
            {pairs.map((pair) => (
              <Pair key={pair.of} {...pair} />
            ))}
            <dt>why</dt>
            <dd>{why}</dd>
            <dt>source</dt>
            <dd>{source}</dd>
          </dl>
        </div>
      ))}
    </div>
  );
}

function Pair({ of, you, truth, agrees = you === truth }: TruthPair) {
  return (
    <>
      <dt>you {of}</dt>
      <dd>{you}</dd>
      <dt>true</dt>
      <dd className={agrees ? '' : 'true'}>
        {truth}
        {agrees ? '' : ' (you differ)'}
      </dd>
    </>
  );
}
