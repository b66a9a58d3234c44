/** Benches that are made in slices, and whatever else names lines of tests: shown only when these are there. */
import type { AimId } from '../../scenario/aims.ts';
import type { Bench } from './bench.ts';
import { inSlices } from './inSlices.ts';
import { afterEngine, loaded } from './loading.ts';
import type { Refused, Taken } from './start.ts';

/** What the work comes to, a bench with its tests; null where it was left before. Rejects with `NotLoaded`. */
export async function madeReady<R extends Refused | Taken | { readonly kind: 'scenario' | 'given' }>(
  work: Generator<null, R>,
  signal: AbortSignal,
): Promise<R | null> {
  const result = await inSlices(work, signal);
  if (result?.kind === 'attempt') await testsCome(result.bench);
  return signal.aborted ? null : result;
}

/** The same where the work comes to a bench whatever happens. */
export async function benchReady(work: Generator<null, Bench>, signal: AbortSignal): Promise<Bench | null> {
  const bench = await inSlices(work, signal);
  if (bench !== null) await testsCome(bench);
  return signal.aborted ? null : bench;
}

async function testsCome(bench: Bench): Promise<void> {
  const { testsAt } = await loaded(() => import('./loadTests.ts'));
  await testsAt(bench);
}

/** A screen that names lines of tests of these aims; of any where none is named. */
export const withTests = <T>(load: () => Promise<T>, aims?: readonly AimId[]): Promise<T> =>
  afterEngine(async () => {
    const { testsOf } = await import('./loadTests.ts');
    const [screen] = await Promise.all([load(), testsOf(aims)]);
    return screen;
  });
