/**
 * Whether a named cause reads the same as the true one: the trainee's own log is replayed with it, and no reading and
 * nothing seen may differ by more than the instruments could tell.
 */
import { perform } from '../bench/perform.ts';
import type { Reading } from '../bench/reading.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import { designsAmong, entryNamed, faultsAmong } from '../faults/catalogue.ts';
import type { CatalogueEntry } from '../faults/fault.ts';
import { beginning } from '../scenario/scenario.ts';
import type { Run } from './run.ts';
import { replaying } from './run.ts';

/** The answer that nothing is wrong. */
export const NOTHING = 'nothing';

export type DiagnosisGrade = 'right' | 'block' | 'wrong';

/** In pieces, one an operation: the log is done once more for every severity of the cause. */
export function* gradingDiagnosis(
  run: Run,
  cause: string | null,
  family: string | null,
): Generator<null, DiagnosisGrade> {
  const faults = faultsAmong(run.scenario.faults);
  if (faults.length === 0) return cause === NOTHING ? 'right' : 'wrong';
  if (cause !== null && faults.some(({ id }) => id === cause)) return 'right';
  if (cause !== null && (yield* readsTheSame(yield* asMet(run), cause))) return 'right';
  return faults.some((fault) => fault.family === family) ? 'block' : 'wrong';
}

/** The attempt up to the first repair: a diagnosis is about the unit as it was met. */
function* asMet(run: Run): Generator<null, Run> {
  const [first] = run.repairs;
  if (first === undefined) return run;
  return yield* replaying(run.scenario, {
    ...run.attempt,
    entries: run.attempt.entries.slice(0, first.entry),
  });
}

function* readsTheSame(run: Run, cause: string): Generator<null, boolean> {
  const entry = entryNamed(cause);
  if (cause !== NOTHING && (entry?.kind !== 'fault' || entry.alter !== undefined)) return false;
  // A wrong design stands in the papers: nothing else reads like it, and whatever is wrong besides is held against it.
  const designs = designsAmong(run.scenario.faults);
  if (designs.length > 0 && (cause === NOTHING || designs.length === faultsAmong(run.scenario.faults).length))
    return false;
  const candidates: readonly (readonly FaultChoice[])[] =
    entry === undefined ? [[]] : severities(entry).map((values) => [...designs, { fault: cause, values }]);
  for (const faults of candidates)
    if (isPossible(run, faults) && (yield* followsLog(run, faults))) return true;
  return false;
}

/** Acts the log out with these faults, as far as everything reads and looks the same. */
function* followsLog({ scenario, samples }: Run, faults: readonly FaultChoice[]): Generator<null, boolean> {
  const { world } = yield* beginning(scenario, faults);
  for (const { sample } of samples) {
    yield null;
    const { readings, seen } = perform(world, sample.operation);
    const isSame =
      sameReadings(sample.readings, readings) &&
      sample.seen.indicator === seen.indicator &&
      sample.seen.plug === seen.plug;
    if (!isSame) return false;
  }
  return true;
}

/** The parameter's range in a few steps, and the values that the scenario itself uses. */
function severities(entry: CatalogueEntry): readonly FaultChoice['values'][] {
  const [parameter] = entry.parameters;
  if (parameter === undefined) return [{}];
  const { name, min, max } = parameter;
  return [0, 0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 1].map((share) => ({
    [name]: Math.round(1000 * (min + share * (max - min))) / 1000,
  }));
}

const isPossible = ({ papers }: Run, faults: readonly FaultChoice[]): boolean =>
  faultsAmong(faults).every(
    (fault, i) => (fault.impossible?.(papers, faults[i]?.values ?? {}) ?? null) === null,
  );

const sameReadings = (x: readonly Reading[], y: readonly Reading[]): boolean =>
  x.length === y.length && x.every((reading, i) => alike(reading, y[i] as Reading));

function alike(x: Reading, y: Reading): boolean {
  if (x.qualifier !== y.qualifier || x.trippedWhat !== y.trippedWhat) return false;
  const margin = (x.uncertainty ?? 0) + (y.uncertainty ?? 0);
  const near = (a: number | null | undefined, b: number | null | undefined) =>
    a == null || b == null ? a === b : Math.abs(a - b) <= margin;
  return (
    near(x.value, y.value) &&
    near(x.low, y.low) &&
    ((x.duty ?? null) === null) === ((y.duty ?? null) === null)
  );
}
