/**
 * When an offer is due, and of what, by the sheet alone: permission and random delay first, then the least of unit,
 * cable and setting (IEC 61851-1:2017 6.3.1.6).
 */
import type { OperationInput } from '../bench/operation.ts';
import { greatestOffer } from '../laws/pilotDuty.ts';
import type { Amps } from '../laws/quantities.ts';
import type { LatchReason } from '../unit/design.ts';
import type { Observed, Sample } from './observed.ts';
import type { Papers } from './testAction.ts';

/** A; the cable's coding counts at a socket-outlet only. */
export const offerDue = ({ sheet }: Papers): Amps =>
  greatestOffer(
    sheet.ratedCurrent,
    sheet.setCurrent,
    ...(sheet.loadLimit === null ? [] : [sheet.loadLimit]),
    ...(sheet.outlet === 'socket' ? [sheet.cable.coding] : []),
  );

/** Whether the sheet lets the unit keep the vehicle waiting at this sample. */
export function mayWait({ sheet }: Papers, observed: Observed, sample: Sample): boolean {
  const before = observed.samples.slice(0, observed.samples.indexOf(sample));
  const pressed = (button: string) =>
    before.some(({ operation }) => operation.op === 'press' && operation.button === button);
  if (sheet.permission === 'held') return true;
  if (sheet.permission === 'authorise' && !pressed('authorise')) return true;
  return sheet.startDelay > 0 && !pressed('override-delay') && sample.setUp.settled < sheet.startDelay;
}

/** Plug in, give permission, take the delay away, and let it settle: an offer stands after this. */
export const untilOffered = ({ sheet }: Papers): readonly OperationInput[] => [
  { op: 'vehicle', plugged: true, state: 'B' },
  { op: 'wait', seconds: 2 },
  ...(sheet.permission === 'authorise' ? [{ op: 'press', button: 'authorise' } as const] : []),
  ...(sheet.startDelay > 0 ? [{ op: 'press', button: 'override-delay' } as const] : []),
  { op: 'wait', seconds: 2 },
];

export const untilSupplied = (papers: Papers): readonly OperationInput[] => [
  ...untilOffered(papers),
  { op: 'vehicle', state: 'C' },
  { op: 'wait', seconds: 3 },
];

/**
 * What the sheet asks for before the unit is ready again after it has latched, once the cause is gone and nothing is
 * plugged in.
 */
export function cleared({ sheet }: Papers, reason: LatchReason): readonly OperationInput[] {
  const by = sheet.clearsBy[reason];
  if (by === 'reset')
    return [
      { op: 'reset', what: 'unit' },
      { op: 'wait', seconds: 2 },
    ];
  if (by === 'supply')
    return [
      { op: 'reset', what: 'supply' },
      { op: 'wait', seconds: sheet.startUp + 2 },
    ];
  return [{ op: 'wait', seconds: 2 }];
}

/** Back to nothing plugged in: state A first, so that a held plug is let go (IEC 61851-1:2017 Table A.6, 5 s). */
export const unplug: readonly OperationInput[] = [
  { op: 'vehicle', state: 'A', pilot: 'sound', diode: 'sound', earth: 'sound' },
  { op: 'wait', seconds: 5 },
  { op: 'vehicle', plugged: false },
];
