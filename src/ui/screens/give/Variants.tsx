/** The same for all, or equal variants one each: proved by workers before they are given out. */
import { useEffect, useMemo, useState } from 'react';
import { useVariants } from '../../flow/useVariants.ts';
import { Keys } from '../../parts/Keys.tsx';

interface Props {
  readonly jobs: readonly object[];
  readonly word: string;
  /** Those that are given out, by their numbers. */
  readonly variants: readonly number[];
  readonly onVariants: (variants: readonly number[]) => void;
}

/** Neighbours at a table, half a class, a class. */
const COUNTS = ['4', '12', '30'] as const;

export function Variants({ jobs, word, variants, onVariants }: Props) {
  const [count, setCount] = useState<(typeof COUNTS)[number]>('30');
  const [asked, setAsked] = useState<{ jobs: readonly object[]; word: string; count: number } | null>(null);
  const isMeant = asked !== null && asked.jobs === jobs && asked.word === word;
  const { proved, isMeasured, unequal, isOver, failed } = useVariants(
    useMemo(() => (isMeant ? asked : null), [isMeant, asked]),
  );
  // Those of another job or word are none of this one.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the job and the word are the very occasion
  useEffect(() => {
    if (variants.length > 0) onVariants([]);
  }, [jobs, word]);
  const take = () => {
    onVariants(proved);
    setAsked(null);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was proved is the very occasion
  useEffect(() => {
    if (isMeant && isOver && proved.length > 0) take();
  }, [isOver]);
  const isProving = isMeant && !isOver && failed === null;
  return (
    <section className="stack" aria-labelledby="variants-heading">
      <h2 id="variants-heading">The same for all, or one each</h2>
      {variants.length > 0 ? (
        <>
          <p className="prose">
            <strong>
              {variants.length} equal {variants.length === 1 ? 'variant is' : 'variants are'} proved:
            </strong>{' '}
            in each the same tests see it, as many causes are left, and it takes about as long. Which one
            somebody gets follows from the label; two of a class have the same by chance, about one pair in{' '}
            {variants.length}. <i>Collect</i> makes each of them again.
          </p>
          <p className="acts">
            <button type="button" onClick={() => onVariants([])}>
              The same for all
            </button>
          </p>
        </>
      ) : isProving ? (
        <div className="stack">
          <p role="status">
            {isMeasured
              ? `Proving them: ${proved.length} of ${asked.count} equal${unequal === 0 ? '' : `, ${unequal} weighed and not equal`} …`
              : `Weighing ${jobs.length === 1 ? 'the job itself, by which its' : 'the jobs themselves, by which their'} variants are judged …`}
          </p>
          <p className="acts">
            {proved.length === 0 ? null : (
              <button type="button" onClick={take}>
                Use these {proved.length}
              </button>
            )}
            <button type="button" onClick={() => setAsked(null)}>
              Cancel
            </button>
          </p>
        </div>
      ) : (
        <>
          <p className="note prose">
            All get the same job. Or everybody gets other figures on the same cause, so that a neighbour’s
            readings are of no use: voltage, Ze or electrode, lengths of run and cable, how bad it is, and the
            errors of the instruments. What is wrong and where, ratings, tests and words stay the same.
          </p>
          {isMeant && isOver ? (
            <p role="alert">
              <strong>No variant of this job is equal to it:</strong> all get the same.
            </p>
          ) : null}
          {failed === null ? null : (
            <p role="alert">
              <strong>They could not be proved:</strong> {failed}. All get the same.
            </p>
          )}
          <Keys legend="how many" options={COUNTS} value={count} onChange={setCount} />
          <p className="note">Each takes some seconds to prove, a whole verification up to a minute.</p>
          <p className="acts">
            <button
              type="button"
              disabled={jobs.length === 0}
              onClick={() => setAsked({ jobs, word, count: Number(count) })}
            >
              Make equal variants
            </button>
          </p>
        </>
      )}
    </section>
  );
}
