/** Benches that are made in slices, and whatever else names lines of tests: shown only when their words are there. */
import type { AimId } from '../../scenario/aims.ts';
import type { Bench } from './bench.ts';
import { inSlices } from './inSlices.ts';
import { afterEngine, loaded } from './loading.ts';
import type { Refused, Taken } from './start.ts';

/** What the work comes to, a bench with the words of its tests; null where it was left before. Rejects with `NotLoaded`. */
export async function madeReady<R extends Refused | Taken | { readonly kind: 'scenario' | 'given' }>(
  work: Generator<null, R>,
  signal: AbortSignal,
): Promise<R | null> {
  const result = await inSlices(work, signal);
  if (result?.kind === 'attempt') await wordsCome(result.bench);
  return signal.aborted ? null : result;
}

/** The same where the work comes to a bench whatever happens. */
export async function benchReady(work: Generator<null, Bench>, signal: AbortSignal): Promise<Bench | null> {
  const bench = await inSlices(work, signal);
  if (bench !== null) await wordsCome(bench);
  return signal.aborted ? null : bench;
}

async function wordsCome(bench: Bench): Promise<void> {
  const { wordsAt } = await loaded(() => import('./testWords.ts'));
  await wordsAt(bench);
}

/** A screen that names lines of tests of these aims; of any where none is named. */
export const withWords = <T>(load: () => Promise<T>, aims?: readonly AimId[]): Promise<T> =>
  afterEngine(async () => {
    const { wordsOf } = await import('./testWords.ts');
    const [screen] = await Promise.all([load(), wordsOf(aims)]);
    return screen;
  });
