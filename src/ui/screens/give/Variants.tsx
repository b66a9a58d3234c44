/** The same for all, or equal variants one each: proved by workers before they are given out. */
import { useEffect, useMemo, useState } from 'react';
import { MOST_VARIANTS } from '../../../desk/giving.ts';
import { sharing } from '../../../desk/variantOf.ts';
import { useVariants } from '../../flow/useVariants.ts';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';
import type { Labels } from './labels.ts';

interface Props {
  readonly jobs: readonly object[];
  readonly word: string;
  /** Those that are given out, by their numbers. */
  readonly variants: readonly number[];
  readonly onVariants: (variants: readonly number[]) => void;
  /** The labels to deal them out to, as they are typed, and what they are. */
  readonly typed: string;
  readonly labels: Labels;
  readonly onTyped: (typed: string) => void;
}

/** Neighbours at a table, half a class, a class. */
const COUNTS = ['4', '12', '30'] as const;

export function Variants({ jobs, word, variants, onVariants, typed, labels, onTyped }: Props) {
  const { listed, error } = labels;
  const [count, setCount] = useState<(typeof COUNTS)[number]>('30');
  const [asked, setAsked] = useState<{ jobs: readonly object[]; word: string; count: number } | null>(null);
  const isMeant = asked !== null && asked.jobs === jobs && asked.word === word;
  const { proved, isMeasured, unequal, isOver, failed } = useVariants(
    useMemo(() => (isMeant ? asked : null), [isMeant, asked]),
  );
  const take = () => {
    onVariants(proved);
    setAsked(null);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was proved is the very occasion
  useEffect(() => {
    if (isMeant && isOver && proved.length > 0) take();
  }, [isOver]);
  const wanted = listed.length > 0 ? Math.min(listed.length, MOST_VARIANTS) : Number(count);
  const labelsField = (
    <TextField
      label="everybody’s labels, one a line (may stay empty): then no two get the same"
      value={typed}
      lines
      maxLength={20_000}
      error={error}
      onChange={onTyped}
    />
  );
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
            in each the same tests see it, as many causes are left, and it takes about as long.{' '}
            {whoGetsWhich(variants.length, listed.length)} <i>Collect</i> makes each of them again.
          </p>
          {labelsField}
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
          {labelsField}
          {listed.length > 0 ? null : (
            <Keys legend="how many" options={COUNTS} value={count} onChange={setCount} />
          )}
          <p className="note">Each takes some seconds to prove, a whole verification up to a minute.</p>
          <p className="acts">
            <button
              type="button"
              disabled={jobs.length === 0}
              onClick={() => setAsked({ jobs, word, count: wanted })}
            >
              Make {listed.length > 0 ? `${wanted} ` : ''}equal variants
            </button>
          </p>
        </>
      )}
    </section>
  );
}

/** Whether two may have the same, in plain words. */
function whoGetsWhich(variants: number, labels: number): string {
  if (labels > variants)
    return `They are dealt out to your ${labels} labels in turn: each goes to at most ${Math.ceil(labels / variants)}.`;
  if (labels > 0) return `Each of your ${labels} labels gets another one.`;
  const same = Math.round(sharing(variants, variants));
  return `Which one somebody gets follows from the label by chance: of ${variants} people about ${same} have the same as somebody else. List the labels, and no two do.`;
}
