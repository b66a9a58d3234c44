/** While leads can be put on: which lead goes on with the next tap, and what came of the last one. */
import { LEAD_ENDS } from '../flow/leads.ts';
import { hasLeads } from '../flow/measurement.ts';
import type { Measuring } from '../flow/useMeasuring.ts';
import { Keys } from '../parts/Keys.tsx';

const NEXT_WORDS = { first: 'first', joined: 'join to first', second: 'second' } as const;

export function NextLead({ measuring }: { readonly measuring: Measuring }) {
  const { draft, next, said, setNext } = measuring;
  return (
    <div className="next-lead not-printed">
      {hasLeads(draft.instrument) ? (
        <Keys
          legend="lead that the next tap puts on"
          options={LEAD_ENDS}
          words={NEXT_WORDS}
          value={next}
          onChange={setNext}
        />
      ) : null}
      <p role="status" className="note">
        {said}
      </p>
    </div>
  );
}
