/** What the residual-current tests share: their readings, and getting the installation ready again. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import type { Range } from '../../laws/quantities.ts';
import { inState, isInside, judgeAll, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { unplug } from '../offer.ts';
import { waitFor } from '../steps.ts';
import type { Finding, Papers } from '../testAction.ts';

export const residualReadings = (o: Observed, waveform: string): readonly Reading[] =>
  readingsOf(o, 'residual', inState('C')).filter(
    (r) => r.waveform === waveform && r.mode === 'ramp' && r.qualifier !== 'unable',
  );

/** Trip current against its band; no trip at all is outside it. */
export const tripsWithin = (readings: readonly Reading[], band: Partial<Range>): Finding =>
  judgeAll(readings, (r) => r.qualifier === null && isInside(r, band));

/** Unplugged, reset as the sheet says, and started again where the unit went dark: ready for the next test. */
export const readyAgain = (
  { site, sheet }: Papers,
  after: 'residual' | 'direct',
): readonly OperationInput[] => [
  ...unplug,
  ...(site.circuit.residualDevice === null ? [] : [{ op: 'reset', what: 'upstream' } as const]),
  { op: 'reset', what: 'unit' },
  ...(sheet.clearsBy[after] === 'supply' ? [{ op: 'reset', what: 'supply' } as const] : []),
  waitFor(sheet.startUp + 2),
];

export const rising = (
  line: 'L1' | 'L2' | 'L3',
  waveform: 'sinusoidal' | 'smooth-dc-positive' | 'smooth-dc-negative',
) => ({ op: 'measure', quantity: 'residual', line, waveform, mode: 'ramp' }) satisfies OperationInput;
