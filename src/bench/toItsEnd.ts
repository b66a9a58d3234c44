/**
 * Work that can be done in pieces is a generator that yields between them: a page does a few at a time and stays in
 * hand. Here it is done in one go, for whoever only wants the result.
 */

export function toItsEnd<T>(work: Generator<unknown, T>): T {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
  }
}

/** Such work as a part of other work, which says how far it is in its own way. */
export function* within<P, T>(progress: P, work: Generator<unknown, T>): Generator<P, T> {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
    yield progress;
  }
}
