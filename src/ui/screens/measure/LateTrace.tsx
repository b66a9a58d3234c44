/**
 * The trace of a reading. What draws it comes to the page with the first bench on which a test reads one, long before
 * anything is read; elsewhere when somebody reads one all the same.
 */
import { useEffect, useState } from 'react';
import type { Quantity } from '../../../bench/readings/quantity.ts';
import { stepsOn } from '../../../verification/onPapers.ts';
import type { Papers, TestAction } from '../../../verification/testAction.ts';
import type { TraceProps } from '../../drawing/traces/ReadingTrace.tsx';
import { loaded } from '../../flow/loading.ts';

const TRACED: readonly Quantity[] = ['pilot', 'residual', 'opening-time'];

/** Whether a trace belongs to what is read of it. */
export const hasTrace = (quantity: Quantity): boolean => TRACED.includes(quantity);

/** Whether this test, done as it is meant, reads something that has a trace. */
export const readsTrace = (action: TestAction, papers: Papers): boolean =>
  stepsOn(action, papers).some((step) => step.op === 'measure' && hasTrace(step.quantity));

type Traces = typeof import('../../drawing/traces/ReadingTrace.tsx');

let here: Traces | null = null;

/** What draws traces, loaded as soon as it is wanted. */
export function useTraces(isWanted: boolean): Traces | 'to come' | 'missing' {
  const [found, setFound] = useState<Traces | 'to come' | 'missing'>(here ?? 'to come');
  useEffect(() => {
    if (!isWanted || here !== null) return;
    let isShown = true;
    loaded(() => import('../../drawing/traces/ReadingTrace.tsx')).then(
      (traces) => {
        here = traces;
        if (isShown) setFound(traces);
      },
      () => isShown && setFound('missing'),
    );
    return () => {
      isShown = false;
    };
  }, [isWanted]);
  return here ?? found;
}

export function LateTrace({ reading, took }: TraceProps) {
  const isTraced = hasTrace(reading.quantity) && reading.qualifier !== 'unable';
  const traces = useTraces(isTraced);
  if (!isTraced) return null;
  return typeof traces === 'string' ? (
    <p className="place-to-come note" role="status">
      {traces === 'missing'
        ? 'The trace did not come. The figures above are all there.'
        : 'Drawing the trace …'}
    </p>
  ) : (
    <traces.ReadingTrace reading={reading} took={took} />
  );
}
