/** What has changed of a kept attempt, into the database. */
import type { IDBPTransaction } from 'idb';
import type { Attempt } from '../attempt/record/attempt.ts';
import type { Written } from '../attempt/record/written.ts';
import { asWritten } from '../attempt/record/written.ts';
import type { About } from './about.ts';
import { factsOf } from './about.ts';
import type { Kept, STORES } from './versions.ts';

export interface Change<A extends Written = Attempt> {
  /** The log, where it has changed. */
  readonly attempt?: A;
  /** The place and what is not yet in the log; null once there is nothing of the kind. */
  readonly draft?: unknown;
  readonly about: Partial<Omit<About, 'id' | 'holder'>>;
}

/** `before`: what is kept beside its log up to now. */
export async function putChange(
  all: IDBPTransaction<Kept, typeof STORES, 'readwrite'>,
  before: About,
  { attempt, draft, about }: Change<Written>,
): Promise<void> {
  const { id } = before;
  if (attempt !== undefined) await all.objectStore('attempts').put(JSON.stringify(asWritten(attempt)), id);
  if (draft === null) await all.objectStore('drafts').delete(id);
  else if (draft !== undefined) await all.objectStore('drafts').put(draft, id);
  const facts = attempt === undefined ? {} : factsOf(attempt);
  await all.objectStore('about').put({ ...before, ...about, ...facts }, id);
}
