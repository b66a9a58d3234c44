/** After an act that would do harm on site: a plain record on a full sheet, and one way on. */
import type { UnsafeAct } from '../../../bench/unsafe.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { operationText } from '../../../words/trade.ts';
import { unsafeInWords } from '../../../words/unsafeActs.ts';
import type { Happened } from '../../flow/bench.ts';
import { useSheet } from '../../parts/useSheet.ts';

interface Props {
  readonly acts: readonly UnsafeAct[];
  readonly happened: Happened | undefined;
  readonly onMakeSafe: () => void;
}

export function Harm({ acts, happened, onMakeSafe }: Props) {
  const dialog = useSheet();
  const fuse = happened?.outcome.events.some(({ what }) => what === 'instrument fuse opened') === true;
  return (
    <dialog
      ref={dialog}
      className="harm"
      aria-labelledby="harm-heading"
      onCancel={(event) => event.preventDefault()}
    >
      <div className="wide-stack">
        <h2 id="harm-heading">Stopped</h2>
        {happened === undefined ? null : (
          <p>
            {benchTime(happened.at)}: {operationText(happened.operation)}.
            {fuse ? ' The instrument’s fuse opened.' : ''}
          </p>
        )}
        {acts.map(unsafeInWords).map(({ id, act, why }) => (
          <div key={id}>
            <p>
              <strong>{capital(act)}.</strong>
            </p>
            <p>{why}</p>
          </div>
        ))}
        <p>
          This is a critical act: an attempt with one is not yet passed, whatever its marks. Making it safe
          isolates at the origin, and at the main switch where an earth is off, locks off and proves dead at
          the origin; then the work goes on.
        </p>
        <button type="button" className="main" onClick={onMakeSafe}>
          Make safe and go on
        </button>
      </div>
    </dialog>
  );
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
