/** One difference between the unit and its twin, explained, and the keys to the next; and what this step told. */
import type { Difference } from '../../../attempt/opened/differences.ts';
import type { Elimination } from '../../../attempt/opened/elimination.ts';
import type { Lockstep, Progress } from '../../../attempt/opened/twin.ts';
import { causePlace } from '../../../words/causes.ts';
import { valueText, whatText, whyText } from '../../../words/differences.ts';
import type { Sliced } from '../../flow/useSliced.ts';
import { betterAt, betterText } from './told.ts';

interface Props {
  readonly list: readonly Difference[];
  readonly ring: number;
  readonly onRing: (ring: number) => void;
  readonly elimination: Sliced<Progress, Elimination>;
  readonly lockstep: Lockstep;
  readonly step: number;
}

export function Differences({ list, ring, onRing, elimination, lockstep, step }: Props) {
  const shown = list[ring];
  return (
    <section className="stack" aria-label="Difference">
      {shown === undefined ? (
        <p>No difference: this unit is as its twin.</p>
      ) : (
        <>
          <div aria-live="polite">
            <p>
              <strong>
                {ring + 1} of {list.length}: {whatText(shown.what)}.
              </strong>{' '}
              This unit: <strong>{valueText(shown.unit)}</strong>. Twin: {valueText(shown.twin)}.
            </p>
            <p>{explanation(shown)}</p>
          </div>
          {list.every(({ kind }) => kind === 'cause') ? (
            <p className="note">Nothing that stands, reads, looks or sounds differs at this step.</p>
          ) : null}
          {list.length < 2 ? null : (
            <div className="acts difference-acts">
              <button type="button" onClick={() => onRing((ring + list.length - 1) % list.length)}>
                Previous difference
              </button>
              <button type="button" onClick={() => onRing((ring + 1) % list.length)}>
                Next difference
              </button>
            </div>
          )}
        </>
      )}
      <LeftHere elimination={elimination} lockstep={lockstep} step={step} />
    </section>
  );
}

/** Why they differ, and of a cause where it sits and what brings it about, once. */
const explanation = ({ why, fault, again }: Difference): string =>
  [
    why === null ? '' : whyText(why),
    fault === null ? '' : again ? 'It belongs to the same fault.' : causePlace(fault),
  ]
    .filter((text) => text !== '')
    .join(' ');

/** How many causes were left after this step; until that is known, how far the working out of it is. */
function LeftHere({ elimination, lockstep, step }: Pick<Props, 'elimination' | 'lockstep' | 'step'>) {
  if (elimination.result === null) return <Working work={elimination} />;
  const left = elimination.result.left[step];
  if (left === undefined) return null;
  const better = betterAt(elimination.result, lockstep, step);
  return (
    <p>
      <strong>
        {left === 1 ? '1 cause' : `${left} causes`} left after it
        {better === null ? '.' : `; ${betterText(better)}.`}
      </strong>
    </p>
  );
}

function Working({ work }: { readonly work: Props['elimination'] }) {
  return (
    <p className="acts note not-printed">
      {work.failed !== null ? (
        <>What each test told cannot be worked out: {work.failed}. All else stands.</>
      ) : work.cancelled ? (
        <>
          What each test told was not worked out.{' '}
          <button type="button" onClick={work.again}>
            Work it out
          </button>
        </>
      ) : (
        <>
          <span>
            Working out what each test told
            {work.progress === null ? ' …' : `: ${work.progress.done} of ${work.progress.of} causes`}
          </span>
          <button type="button" onClick={work.cancel}>
            Cancel
          </button>
        </>
      )}
    </p>
  );
}
