/**
 * Attempts kept on this device: begun, changed, listed, read; deleted by deleting.ts. One tab at a time may change one: it claims it
 * by its name, and what it wants to keep after another tab has claimed it is refused. Which tab may claim what is the
 * business of whoever calls; the database itself is in database.ts.
 */
import type { Attempt } from '../attempt/record/attempt.ts';
import { asWritten } from '../attempt/record/written.ts';
import type { About } from './about.ts';
import { aboutOf } from './about.ts';
import type { Transaction } from './database.ts';
import { inOne } from './database.ts';
import { notKept } from './keepProblem.ts';
import type { Change } from './putChange.ts';
import { putChange } from './putChange.ts';

export interface KeptAttempt {
  readonly about: About;
  readonly text: string;
  readonly draft: unknown;
}

/** Newest first. */
export const keptAttempts = async (): Promise<readonly About[]> =>
  (await inOne('readonly', (all) => all.objectStore('about').getAll())).sort((x, y) => y.changed - x.changed);

/** How many are kept of which nothing is known but a text that cannot be read; they are in no list. */
export const countUnlisted = (): Promise<number> =>
  inOne('readonly', async (all) => {
    const listed = new Set(await all.objectStore('about').getAllKeys());
    return (await all.objectStore('attempts').getAllKeys()).filter((id) => !listed.has(id)).length;
  });

export const keptAttempt = (id: string): Promise<KeptAttempt | null> =>
  inOne('readonly', (all) => read(all, id));

async function read(
  all: Transaction<'readonly'> | Transaction<'readwrite'>,
  id: string,
): Promise<KeptAttempt | null> {
  const about = await all.objectStore('about').get(id);
  const text = await all.objectStore('attempts').get(id);
  const draft: unknown = await all.objectStore('drafts').get(id);
  return about === undefined || text === undefined ? null : { about, text, draft: draft ?? null };
}

/** From now on only this tab may change it. Null where there is no such attempt. */
export const claimAttempt = (id: string, holder: string): Promise<KeptAttempt | null> =>
  inOne('readwrite', async (all) => {
    const kept = await read(all, id);
    if (kept === null) return null;
    const about = { ...kept.about, holder, putAway: false };
    await all.objectStore('about').put(about, id);
    return { ...kept, about };
  });

/** After which one that nothing was done in is nobody's any more, ms. */
const FORGOTTEN = 86_400_000;

/** Keeps a new one. Those in which nothing was ever done go, unless another tab has just begun them. */
export const beginAttempt = (
  id: string,
  attempt: Attempt,
  own: Pick<About, 'changed' | 'holder'> & Partial<About>,
): Promise<void> =>
  inOne('readwrite', async (all) => {
    for (const { id: other, entries, holder, changed } of await all.objectStore('about').getAll()) {
      const isEmpty = entries === 0 && (await all.objectStore('drafts').getKey(other)) === undefined;
      if (isEmpty && (holder === own.holder || changed < own.changed - FORGOTTEN)) await remove(all, other);
    }
    await all.objectStore('attempts').put(JSON.stringify(asWritten(attempt)), id);
    await all.objectStore('about').put(aboutOf(id, attempt, own), id);
  });

/** Resolves once it is safely kept. */
export const keepAttempt = (id: string, holder: string, change: Change): Promise<void> =>
  inOne('readwrite', async (all) => {
    const before = await all.objectStore('about').get(id);
    if (before === undefined) throw notKept('deleted');
    if (before.holder !== holder) throw notKept('taken over');
    await putChange(all, before, change);
  });

/** Changes what is kept beside the log, whichever tab holds it; nothing happens where it is gone. */
export const changeAbout = (id: string, change: Partial<Omit<About, 'id'>>): Promise<void> =>
  inOne('readwrite', async (all) => {
    const before = await all.objectStore('about').get(id);
    if (before !== undefined) await all.objectStore('about').put({ ...before, ...change }, id);
  });

/** One with all that is kept of it. */
export async function remove(all: Transaction<'readwrite'>, id: string): Promise<void> {
  await all.objectStore('attempts').delete(id);
  await all.objectStore('about').delete(id);
  await all.objectStore('drafts').delete(id);
}

/** Of shared computers: what was handed in goes, so that whoever sits down next finds nothing of it. */
export const clearHandedIn = (): Promise<void> =>
  inOne('readwrite', async (all) => {
    for (const { id, given, handedIn } of await all.objectStore('about').getAll())
      if (given?.clears === true && handedIn !== null) await remove(all, id);
  });
