/** The trace that belongs to a reading, or null: most instruments show a figure alone. */
import type { Reading } from '../../../bench/reading.ts';
import { openingTrace } from './openingTrace.ts';
import { pilotTrace } from './pilotTrace.ts';
import { residualTrace } from './residualTrace.ts';
import type { Trace } from './trace.ts';

/** `took`: bench time that the measurement took, s. */
export function traceOf(reading: Reading, took: number): Trace | null {
  switch (reading.quantity) {
    case 'pilot':
      return pilotTrace(reading);
    case 'residual':
      return residualTrace(reading, took);
    case 'opening-time':
      return openingTrace(reading);
    default:
      return null;
  }
}
