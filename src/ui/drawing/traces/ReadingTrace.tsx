/** The trace of a reading, where it has one. */
import { memo } from 'react';
import type { Reading } from '../../../bench/reading.ts';
import { TraceView } from './TraceView.tsx';
import { traceOf } from './traceOf.ts';

export interface TraceProps {
  readonly reading: Reading;
  /** Bench time that its act took, s. */
  readonly took: number;
}

/** Typing beside it does not draw it anew. */
export const ReadingTrace = memo(function ReadingTrace({ reading, took }: TraceProps) {
  const trace = traceOf(reading, took);
  return trace === null ? null : <TraceView trace={trace} />;
});
