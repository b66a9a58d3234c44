/** The same for all, or equal variants one each: proved here, in slices, before they are given out. */
import { useEffect, useMemo, useState } from 'react';
import { provingVariants } from '../../../desk/variants.ts';
import { useSliced } from '../../flow/useSliced.ts';

interface Props {
  readonly jobs: readonly object[];
  readonly word: string;
  readonly seeds: readonly number[];
  readonly onSeeds: (seeds: readonly number[]) => void;
}

/** As many as neighbours at a table; each takes some ten seconds to prove. */
const WANTED = 4;

export function Variants({ jobs, word, seeds, onSeeds }: Props) {
  const [asked, setAsked] = useState<{ jobs: readonly object[]; word: string } | null>(null);
  const isMeant = asked !== null && asked.jobs === jobs && asked.word === word;
  const { progress, result, failed, cancelled, cancel, again } = useSliced(
    useMemo(() => (isMeant ? () => provingVariants(jobs, word, WANTED) : null), [isMeant, jobs, word]),
  );
  // Those of another job or word are none of this one.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the job and the word are the very occasion
  useEffect(() => {
    if (seeds.length > 0) onSeeds([]);
  }, [jobs, word]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was proved is the very occasion
  useEffect(() => {
    if (isMeant && result !== null) onSeeds(result);
  }, [result]);
  return (
    <section className="stack" aria-labelledby="variants-heading">
      <h2 id="variants-heading">The same for all, or one each</h2>
      {seeds.length > 0 ? (
        <>
          <p className="prose">
            <strong>{seeds.length} equal variants</strong> are proved: in each the same tests see it, as many
            causes are left, and it takes about as long. The label says who gets which; <i>Collect</i> makes
            each of them again.
          </p>
          <p className="acts">
            <button
              type="button"
              onClick={() => {
                setAsked(null);
                onSeeds([]);
              }}
            >
              The same for all
            </button>
          </p>
        </>
      ) : isMeant && result === null && failed === null && !cancelled ? (
        <p className="acts" role="status">
          <span>
            Proving {(progress?.proved ?? 0) + 1} of {WANTED}
            {progress?.weighing == null
              ? ' …'
              : `: ${progress.weighing.done} of ${progress.weighing.of} causes`}
          </span>
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        </p>
      ) : (
        <>
          <p className="note prose">
            {isMeant && result !== null
              ? 'No variant of this job is equal to it: all get the same.'
              : 'All get the same job. Or everybody gets other figures on the same cause, so that a neighbour’s readings are of no use.'}
          </p>
          <p className="acts">
            <button
              type="button"
              disabled={jobs.length === 0}
              onClick={() => {
                again();
                setAsked({ jobs, word });
              }}
            >
              Make equal variants
            </button>
          </p>
        </>
      )}
    </section>
  );
}
