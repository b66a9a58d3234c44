/** The same for all, or equal variants one each: proved by workers before they are given out. */
import { useEffect, useMemo, useState } from 'react';
import { MOST_LABELS, MOST_VARIANTS } from '../../../desk/giving.ts';
import { plainWord } from '../../../desk/heldBy.ts';
import { sharing } from '../../../desk/variantOf.ts';
import { useVariants } from '../../flow/useVariants.ts';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';

interface Props {
  readonly jobs: readonly object[];
  readonly word: string;
  /** Those that are given out, by their numbers. */
  readonly variants: readonly number[];
  readonly onVariants: (variants: readonly number[]) => void;
  /** The labels to deal them out to, as they are typed. */
  readonly labels: string;
  readonly onLabels: (labels: string) => void;
}

/** As a label may be in an attempt. */
const LONGEST_LABEL = 60;
/** Neighbours at a table, half a class, a class. */
const COUNTS = ['4', '12', '30'] as const;

const BETWEEN = /[\n,;]/;

/** One a line, or with commas between; each once, and none that no attempt could have. */
export const labelsIn = (text: string): readonly string[] => [
  ...new Map(
    text
      .split(BETWEEN)
      .map((label) => label.trim())
      .filter((label) => label !== '' && label.length <= LONGEST_LABEL)
      .map((label) => [plainWord(label), label]),
  ).values(),
];

export function Variants({ jobs, word, variants, onVariants, labels, onLabels }: Props) {
  const listed = labelsIn(labels);
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
  const wanted = listed.length > 0 ? Math.min(listed.length, MOST_VARIANTS) : Number(count);
  const tooLong = labels.split(BETWEEN).find((label) => label.trim().length > LONGEST_LABEL);
  const labelsField = (
    <TextField
      label="everybody’s labels, one a line (may stay empty): then no two get the same"
      value={labels}
      lines
      maxLength={20_000}
      error={
        listed.length > MOST_LABELS
          ? `At most ${MOST_LABELS} labels are dealt out to.`
          : tooLong === undefined
            ? null
            : `“${tooLong.trim().slice(0, LONGEST_LABEL)}…” is longer than a label may be (${LONGEST_LABEL} characters).`
      }
      onChange={onLabels}
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
