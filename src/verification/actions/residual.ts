/** What the residual-current tests share: which device is meant, their readings, and getting ready again. */

import type { OperationInput } from '../../bench/operation.ts';
import type { Reading, ReadingOf } from '../../bench/reading.ts';
import { isOf } from '../../bench/reading.ts';
import type { TrippedWhat } from '../../bench/readings/choices.ts';
import type { Line } from '../../laws/conductors.ts';
import type { Amps, Range, Seconds } from '../../laws/quantities.ts';
import type { Delay, DeviceType } from '../../laws/residualLimits.ts';
import { NON_TRIPPING_SHARE } from '../../laws/residualLimits.ts';
import { GREATEST_UNLOCK_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { inState, isInside, judgeAll, readingsOf, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { permission, untilSupplied } from '../offer.ts';
import { waitFor } from '../steps.ts';
import type { Finding, Papers } from '../testAction.ts';

export interface TestedDevice {
  readonly type: DeviceType;
  readonly rated: Amps;
  readonly delay: Delay;
  readonly of: 'unit' | 'circuit';
}

/** The device that gives additional protection, by the papers: the unit's own, else the one upstream. */
export function testedDevice({ site, sheet }: Papers): TestedDevice | null {
  const { type, rated } = sheet.residual;
  if (type !== null) return { type, rated: rated ?? 0.03, delay: 'general', of: 'unit' };
  const { residualDevice } = site.circuit;
  return residualDevice === null ? null : { ...residualDevice, of: 'circuit' };
}

/**
 * What may open at a test current, by the papers. Two general devices in series may both act; an upstream one stays
 * closed if its own half rating is not reached, or if it is delayed and of three times the rating
 * (BS 7671 536.4.1.4, from memory).
 */
export function mayTrip({ site, sheet }: Papers, amps: Amps): readonly TrippedWhat[] {
  const upstream = site.circuit.residualDevice;
  if (sheet.residual.type === null) return ['upstream'];
  const selective =
    upstream === null ||
    amps <= NON_TRIPPING_SHARE * upstream.rated ||
    (upstream.delay === 'S' && upstream.rated >= 3 * (sheet.residual.rated ?? 0.03));
  return selective ? ['unit'] : ['unit', 'both', 'upstream'];
}

/** A residual test at the outlet: one at the origin tells of the device there alone. */
export const atTheOutlet = (r: Reading): r is ReadingOf<'residual'> =>
  r.quantity === 'residual' && r.place === undefined;

/** Readings of residual tests of one waveform and mode, made while supplying; a test that was refused is none. */
const residualReadingsIn = (o: Observed, waveform: string, mode: string): readonly ReadingOf<'residual'>[] =>
  readingsOf(o, 'residual', inState('C')).filter(
    (r) => atTheOutlet(r) && r.waveform === waveform && r.mode === mode && r.qualifier !== 'unable',
  );

export const residualReadings = (o: Observed, waveform: string): readonly ReadingOf<'residual'>[] =>
  residualReadingsIn(o, waveform, 'ramp');

/**
 * Tests at a fixed current: the current shown comes out up to 5 % high, so the setting is looked at. One that was ended
 * before its time was up, with nothing tripped, tells nothing.
 */
export function fixedReadings(
  o: Observed,
  waveform: string,
  amps: Amps,
  greatest: Seconds = 0,
): readonly ReadingOf<'residual'>[] {
  const all = residualReadingsIn(o, waveform, 'fixed');
  return o.samples.flatMap(({ operation, readings }) =>
    operation.op === 'measure' &&
    operation.quantity === 'residual' &&
    Math.abs((operation.amps ?? Infinity) - amps) < 0.01 * amps
      ? readings
          .filter((r) => isOf(r, 'residual'))
          .filter(
            (r) => all.includes(r) && (r.qualifier === null || (operation.seconds ?? greatest) >= greatest),
          )
      : [],
  );
}

/** Trip current against its band; no trip at all is outside it. */
export const tripsWithin = (readings: readonly ReadingOf<'residual'>[], band: Partial<Range>): Finding =>
  judgeAll(readings, (r) => r.qualifier === null && isInside(r, band));

/** Tripped, and in this time; the instrument's own 2 ms are allowed for. */
export const tripsInTime = (
  readings: readonly ReadingOf<'residual'>[],
  { least = 0, greatest = Infinity }: Partial<Range>,
) =>
  judgeAll(
    readings,
    ({ qualifier, tripMs }) =>
      qualifier === null &&
      (tripMs ?? Infinity) <= 1000 * greatest + 2 &&
      (tripMs ?? Infinity) >= 1000 * least - 2,
  );

/** Samples that come after a test current has made something trip, and before anything was reset. */
export const afterTrip =
  (o: Observed): When =>
  (_, sample) => {
    const before = o.samples.slice(0, o.samples.indexOf(sample));
    const tripped = before.findLastIndex(({ readings }) =>
      readings.some((r) => r.quantity === 'residual' && r.qualifier === null),
    );
    const reset = [...before, sample].findLastIndex(({ operation }) => operation.op === 'reset');
    return tripped >= 0 && reset < tripped;
  };

/** What has to be reset after a trip, and the start-up where the unit went dark. */
const resets = ({ site, sheet }: Papers, after: 'residual' | 'direct'): readonly OperationInput[] => [
  ...(site.circuit.residualDevice === null ? [] : [{ op: 'reset', what: 'upstream' } as const]),
  { op: 'reset', what: 'unit' },
  ...(sheet.clearsBy[after] === 'supply' ? [{ op: 'reset', what: 'supply' } as const] : []),
  waitFor(sheet.startUp + 2),
];

/** The vehicle gone, reset as the sheet says, and unplugged last: a unit with no power keeps its plug. */
export const readyAgain = (papers: Papers, after: 'residual' | 'direct'): readonly OperationInput[] => [
  { op: 'vehicle', state: 'A' },
  waitFor(1),
  ...resets(papers, after),
  ...(papers.sheet.outlet === 'socket' ? [waitFor(GREATEST_UNLOCK_AFTER_UNPLUGGING)] : []),
  { op: 'vehicle', plugged: false },
];

/** Supplied again for the next test current, with the request left standing where the sheet does not ask for state A. */
export const suppliedAgain = (papers: Papers, after: 'residual' | 'direct'): readonly OperationInput[] =>
  papers.sheet.clearsBy[after] === 'state-A'
    ? [...readyAgain(papers, after), ...untilSupplied(papers)]
    : [...resets(papers, after), ...permission(papers), waitFor(5)];

/** Several test currents one after another, each from a supplied outlet, and ready again after the last. */
export const oneAfterAnother = (
  papers: Papers,
  after: 'residual' | 'direct',
  tests: readonly (readonly OperationInput[])[],
): readonly OperationInput[] => [
  ...untilSupplied(papers),
  ...tests.flatMap((test, i) => [...(i === 0 ? [] : suppliedAgain(papers, after)), ...test]),
  ...readyAgain(papers, after),
];

type Waveform = Extract<OperationInput, { quantity: 'residual' }>['waveform'];

export const rising = (line: Line, waveform: Waveform) =>
  ({ op: 'measure', quantity: 'residual', line, waveform, mode: 'ramp' }) satisfies OperationInput;

export const atOnce = (
  line: Line,
  waveform: Waveform,
  amps: Amps,
  more: { readonly seconds?: Seconds; readonly angle?: 0 | 180 } = {},
) =>
  ({
    op: 'measure',
    quantity: 'residual',
    line,
    waveform,
    mode: 'fixed',
    amps,
    ...more,
  }) satisfies OperationInput;
