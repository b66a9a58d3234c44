/**
 * What the trainee has done in this job and may do again by one press, and what takes back what still stands otherwise than
 * it was found. It comes from the log and from how things stand, never from the test in hand.
 */
import type { Measurement, Operation } from '../../bench/operation.ts';
import { operation } from '../../bench/operation.ts';
import { restore } from '../../verification/actions/penHazard.ts';
import type { Bench, Happened } from './bench.ts';
import { positionsBefore } from './bench.ts';
import type { Position } from './position.ts';
import { positionAfter } from './position.ts';
import type { ActRow } from './rows.ts';
import { isLike, rowsDone } from './rows.ts';

/** So many of each kind stay in sight; all rows are on the sheet of acts. */
export const AT_HAND = { readings: 10, rows: 10, acts: 8 } as const;

const keyOf = (what: unknown): string => JSON.stringify(what);
/** Each once, at the place where it stands first. */
export const once = <T>(list: readonly T[]): readonly T[] => [
  ...new Map(list.map((one) => [keyOf(one), one])).values(),
];

/** Acts whose whole outcome is how things stand then. */
const isSetting = (act: Operation): boolean =>
  ['isolate', 'energise', 'open-cover', 'close-cover', 'vehicle'].includes(act.op) ||
  ((act.op === 'disconnect' || act.op === 'reconnect') && act.what === 'unit');

/** Whether a row comes to something as things stand. */
function tells(row: ActRow, position: Position): boolean {
  let stands = position;
  return row.some((act) => {
    const before = keyOf(stands);
    stands = positionAfter(stands, act, false);
    return isSetting(act) ? keyOf(stands) !== before : act.op !== 'wait';
  });
}

/** What an act or a reading meets: whether the circuit is on, the cover open, the vehicle there. */
const met = ({ supply, main, cover, plugged }: Position) => ({
  isOn: supply === 'on' && main === 'on',
  cover,
  plugged,
});

/**
 * Rows of several acts that were begun as things stand now, and proofs of dead with the circuit on or off as it is now, those
 * done most often first, without those that would change nothing. A row begun otherwise would not be the one that was done.
 */
export function rowsAtHand(bench: Bench): readonly ActRow[] {
  const { happened, position } = bench;
  const before = positionsBefore(bench);
  return rowsDone(happened)
    .filter(({ row, began }) => {
      const isProof = row[0]?.op === 'prove-dead';
      const what = (stands: Position) => keyOf(isProof ? met(stands).isOn : met(stands));
      const now = what(position);
      const isAsThen = began.some((i) => what(before[i] ?? position) === now);
      return (isProof || row.length > 1) && isAsThen && tells(row, position);
    })
    .map(({ row }) => row);
}

/** What has a place of its own; and what puts the supply on again, which no finger must meet that wanted its neighbour. */
const STANDS_APART: readonly Operation['op'][] = [
  'measure',
  'prove-dead',
  'wait',
  'stop',
  'put-right',
  'energise',
];

/** Single acts: first what takes back what stands, then the trainee’s own, the newest first. */
export function actsAtHand(happened: readonly Happened[], position: Position): readonly Operation[] {
  const own = happened
    .filter(
      ({ test, operation: act, outcome }) =>
        test !== null && outcome.refused === null && !STANDS_APART.includes(act.op),
    )
    .map(({ operation: act }) => act)
    .toReversed();
  return once([...takingBack(happened, position), ...own]).filter((act) => tells([act], position));
}

/** One act for each thing that was put in, taken off, bent, disturbed or made faulty and is so still. */
function takingBack(happened: readonly Happened[], position: Position): readonly Operation[] {
  const open = new Map<string, Operation>();
  for (const { operation: act, outcome } of happened)
    if (outcome.refused === null)
      for (const [what, back] of takenBackBy(act)) {
        if (back === null) open.delete(what);
        else open.set(what, back);
      }
  const { pilot, diode, earth, load, leakage } = position;
  const standIn: Operation[] = [
    ...(pilot === 'sound' ? [] : [{ op: 'vehicle', pilot: 'sound' } as const]),
    ...(diode === 'sound' ? [] : [{ op: 'vehicle', diode: 'sound' } as const]),
    ...(earth === 'sound' ? [] : [{ op: 'vehicle', earth: 'sound' } as const]),
    ...(load === 0 ? [] : [{ op: 'vehicle', load: 0 } as const]),
    ...(leakage === null ? [] : [{ op: 'vehicle', leakage: null } as const]),
  ];
  return [...open.values(), ...standIn];
}

/** What stands otherwise after an act, by name, with what takes it back; null where the act itself has done so. */
function takenBackBy(act: Operation): readonly (readonly [what: string, back: Operation | null])[] {
  switch (act.op) {
    case 'link':
      return [[`link ${keyOf(act.between)}`, { op: 'unlink', between: act.between }]];
    case 'unlink':
      return [[`link ${keyOf(act.between)}`, null]];
    case 'disconnect':
      return [[act.what, { op: 'reconnect', what: act.what }]];
    case 'reconnect':
      return [[act.what, null]];
    case 'flex-cable':
      return [['cable', act.on ? { op: 'flex-cable', on: false } : null]];
    case 'supply':
      return disturbanceOf(act);
    default:
      return [];
  }
}

function disturbanceOf(act: Extract<Operation, { op: 'supply' }>) {
  const { pen, voltage, missing, loadLimit, siteLoad, nextPoint } = act;
  const none = (what: string, isOver: boolean, back: Operation) => [what, isOver ? null : back] as const;
  return [
    ...(pen === undefined ? [] : [none('pen', pen === 'sound', operation(restore))]),
    ...(voltage === undefined ? [] : [none('voltage', voltage === null, operation(restore))]),
    ...(missing === undefined ? [] : [none('missing', missing === null, { op: 'supply', missing: null })]),
    ...(loadLimit === undefined
      ? []
      : [none('limit', loadLimit === null, { op: 'supply', loadLimit: null })]),
    ...(siteLoad === undefined ? [] : [none('load', siteLoad === 0, { op: 'supply', siteLoad: 0 })]),
    ...(nextPoint === undefined ? [] : [none('next point', nextPoint === 0, { op: 'supply', nextPoint: 0 })]),
  ];
}

/**
 * Readings that were taken in one press, or one after the other by one setting, with the circuit on or off as it is now, each
 * once: the last of all, then those taken while the vehicle stood as it stands now; of these and of the others those taken
 * most often first, and of those alike in it the newest.
 */
export function readingsAtHand(bench: Bench): readonly (readonly Measurement[])[] {
  const before = positionsBefore(bench);
  const { isOn } = met(bench.position);
  const vehicle = ({ plugged, state }: Position) => keyOf([plugged, state]);
  const groups: { readonly measurements: Measurement[]; readonly isAlike: boolean }[] = [];
  let last: { readonly entry: number; readonly m: Measurement } | null = null;
  for (const [i, { entry, operation: act }] of bench.happened.entries()) {
    const stood = before[i];
    if (act.op !== 'measure' || stood === undefined || met(stood).isOn !== isOn) continue;
    if (last !== null && last.entry === entry - 1 && isLike(last.m, act))
      groups.at(-1)?.measurements.push(act);
    else groups.push({ measurements: [act], isAlike: vehicle(stood) === vehicle(bench.position) });
    last = { entry, m: act };
  }
  // One for each time, and for one as the vehicle stands now as many as there are.
  const worth = new Map<string, number>();
  for (const { measurements, isAlike } of groups) {
    const key = keyOf(measurements);
    worth.set(key, (worth.get(key) ?? 0) + (isAlike ? groups.length : 1));
  }
  const of = (measurements: readonly Measurement[]): number => worth.get(keyOf(measurements)) ?? 0;
  const [newest, ...others] = once(groups.map(({ measurements }) => measurements).toReversed());
  return newest === undefined ? [] : [newest, ...others.toSorted((a, b) => of(b) - of(a))];
}
