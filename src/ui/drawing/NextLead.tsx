/**
 * While leads can be put on: which lead goes on with the next tap, and what came of the last one. A terminal that a lead of
 * this test was on before can be tapped here too, whichever part of the drawing is shown.
 */
import type { Terminal } from '../../bench/terminals.ts';
import { terminalText } from '../../words/terminals.ts';
import { LEAD_ENDS, leadOn } from '../flow/leads.ts';
import { hasLeads } from '../flow/measurement.ts';
import type { Measuring } from '../flow/useMeasuring.ts';
import { Keys } from '../parts/Keys.tsx';

const NEXT_WORDS = { first: 'first', joined: 'join to first', second: 'second' } as const;
/** So many terminals stay in sight. */
const MOST = 4;

interface Props {
  readonly measuring: Measuring;
  /** The last first. */
  readonly touched: readonly Terminal[];
}

export function NextLead({ measuring, touched }: Props) {
  const { draft, next, said, setNext, tap } = measuring;
  const free = touched.filter((terminal) => leadOn(draft, terminal) === null);
  return (
    <div className="next-lead not-printed">
      {hasLeads(draft.instrument) ? (
        <>
          <Keys
            legend="lead that the next tap puts on"
            options={LEAD_ENDS}
            words={NEXT_WORDS}
            value={next}
            onChange={setNext}
          />
          <div className="wait-keys">
            {free.slice(0, MOST).map((terminal) => (
              <button key={terminal} type="button" onClick={() => tap(terminal)}>
                on {terminalText(terminal)} again
              </button>
            ))}
          </div>
        </>
      ) : null}
      <p role="status" className="note">
        {said}
      </p>
    </div>
  );
}
