/**
 * Acts that belong together, as one press: rows that the trainee has done singly in this job, from one reading to the
 * next, and on the first rung the row that comes next in the test's own steps. A row is offered by what the log and the
 * papers say; the log holds its single acts as ever.
 */
import type { Measurement, Operation } from '../../bench/operation.ts';
import { operation } from '../../bench/operation.ts';
import type { Papers, TestAction } from '../../verification/testAction.ts';
import type { Happened } from './bench.ts';

export type ActRow = readonly Operation[];

const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** An act that shows readings of its own: it stands alone. */
export const showsReadings = (act: Operation): boolean =>
  act.op === 'prove-dead' || (act.op === 'check-instruments' && act.known === true);
const isReading = (act: Operation): boolean => act.op === 'measure' || showsReadings(act);

/** A row that the trainee has done in this job. */
interface RowDone {
  readonly row: ActRow;
  /** Where each time began, by its place in `happened`. */
  readonly began: readonly number[];
}

/** Each once, those done most often first, and of those alike in it the newest. */
export function rowsDone(happened: readonly Happened[]): readonly RowDone[] {
  const rows = new Map<string, RowDone>();
  for (const { row, began } of everyRow(happened).toReversed()) {
    const name = JSON.stringify(row);
    rows.set(name, { row, began: [...(rows.get(name)?.began ?? []), began] });
  }
  return [...rows.values()].toSorted((a, b) => b.began.length - a.began.length);
}

/** One for each time, without the wait that it begins with; one in which something was refused is none. */
function everyRow(happened: readonly Happened[]) {
  const rows: { test: string; acts: Operation[]; began: number; isWhole: boolean }[] = [];
  let open: (typeof rows)[number] | null = null;
  for (const [i, { test, operation: act, outcome }] of happened.entries()) {
    if (test === null || act.op === 'measure' || act.op === 'stop' || act.op === 'put-right') {
      open = null;
      continue;
    }
    if (open === null || open.test !== test || showsReadings(act)) {
      open = { test, acts: [], began: i, isWhole: true };
      rows.push(open);
    }
    open.acts.push(act);
    open.isWhole &&= outcome.refused === null;
    if (showsReadings(act)) open = null;
  }
  return rows
    .filter(({ acts, isWhole }) => isWhole && acts.some(({ op }) => op !== 'wait'))
    .map(({ acts, began }) => {
      const waited = acts.findIndex(({ op }) => op !== 'wait');
      return { row: acts.slice(waited), began: began + waited };
    });
}

/** What comes next by a test's own steps: acts as one row, or like readings. */
export type Offered =
  | { readonly kind: 'acts'; readonly row: ActRow }
  | { readonly kind: 'readings'; readonly measurements: readonly Measurement[] };

/** `done`: the acts of this test since its lock, in their order. Null where all of its steps are done. */
export function offeredNext(action: TestAction, papers: Papers, done: readonly Operation[]): Offered | null {
  const steps = action.steps(papers).map(operation);
  const at = done.reduce((next, act) => (alike(steps[next], act) ? next + 1 : next), 0);
  const left = steps.slice(at);
  const [first] = left;
  if (first === undefined) return null;
  if (first.op === 'measure') return { kind: 'readings', measurements: likeFrom(first, left) };
  if (showsReadings(first)) return { kind: 'acts', row: [first] };
  const end = left.findIndex(isReading);
  return { kind: 'acts', row: end < 0 ? left : left.slice(0, end) };
}

/** The readings at the head of the list that one instrument takes as it is set, of other pairs or lines. */
function likeFrom(first: Measurement, list: readonly Operation[]): readonly Measurement[] {
  const like = [first];
  for (const one of list.slice(1)) {
    if (one.op !== 'measure' || !isLike(first, one)) break;
    like.push(one);
  }
  return like;
}

/** Whether two readings stand in one table: the same instrument with the same setting. */
export function isLike(a: Measurement, b: Measurement): boolean {
  const setting = (m: Measurement) => ({ ...m, between: undefined, line: undefined, angle: undefined });
  return alike(setting(a), setting(b)) && a.quantity !== 'pilot' && a.quantity !== 'opening-time';
}
