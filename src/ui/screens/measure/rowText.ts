/** A row of acts, and like readings, in a few words. */
import type { Measurement, Operation } from '../../../bench/operation.ts';
import { applyText } from '../../../words/readings.ts';
import { operationText } from '../../../words/trade.ts';
import type { ActRow } from '../../flow/rows.ts';

/** Waits that follow each other are one. */
export function rowText(row: ActRow): string {
  const shown: Operation[] = [];
  for (const act of row) {
    const last = shown.at(-1);
    if (act.op === 'wait' && last?.op === 'wait')
      shown[shown.length - 1] = { ...act, seconds: last.seconds + act.seconds };
    else shown.push(act);
  }
  return shown.map(operationText).join('; ');
}

export function measurementsText(measurements: readonly Measurement[]): string {
  const [first] = measurements;
  if (first === undefined) return '';
  const text = applyText(first).replace(/^Apply/, 'apply');
  return measurements.length === 1 ? text : `${text}, and ${measurements.length - 1} more like it`;
}
