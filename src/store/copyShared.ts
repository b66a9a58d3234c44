/** Copies what all copies of the page shared once into this copy's own database; it comes where there is such a thing (sharedOnce.ts). */
import type { IDBPDatabase } from 'idb';
import { attemptIn } from './about.ts';
import { continues } from './continues.ts';
import { BROUGHT_OVER, OF_AN_ATTEMPT, SHARED_STORES } from './copy.ts';
import type { Kept } from './versions.ts';
import { STORES } from './versions.ts';

export async function copyShared(db: IDBPDatabase<Kept>, shared: IDBPDatabase<Kept>): Promise<void> {
  const wasBrought = (await db.get('other', BROUGHT_OVER)) === true;
  await copyInto(db, wasBrought, wasBrought ? await goneOn(db, shared) : await everythingIn(shared));
}

interface Entry {
  readonly store: (typeof STORES)[number];
  readonly key: string;
  readonly value: unknown;
}

async function everythingIn(shared: IDBPDatabase<Kept>): Promise<readonly Entry[]> {
  const all = shared.transaction(SHARED_STORES);
  const found = await Promise.all(
    SHARED_STORES.map(async (store) => {
      const [keys, values] = await Promise.all([
        all.objectStore(store).getAllKeys(),
        all.objectStore(store).getAll(),
      ]);
      return keys.map((key, i): Entry => ({ store, key, value: values[i] }));
    }),
  );
  return found.flat();
}

/** Attempts that were brought over while a tab of an earlier version still worked on them, and have gone on there since. */
async function goneOn(db: IDBPDatabase<Kept>, shared: IDBPDatabase<Kept>): Promise<readonly Entry[]> {
  const here = new Map((await db.getAll('about')).map(({ id, entries }) => [id, entries]));
  const longer = (await shared.getAll('about')).filter(
    ({ id, entries }) => entries > (here.get(id) ?? Infinity),
  );
  const found = await Promise.all(
    longer.map(async ({ id }) => {
      const [there, own] = [await shared.get('attempts', id), await db.get('attempts', id)];
      if (!goesOn(there, own)) return [];
      return Promise.all(
        OF_AN_ATTEMPT.map(
          async (store): Promise<Entry> => ({ store, key: id, value: await shared.get(store, id) }),
        ),
      );
    }),
  );
  return found.flat().filter(({ value }) => value !== undefined);
}

function goesOn(there = '', own = ''): boolean {
  const [longer, shorter] = [attemptIn(there), attemptIn(own)];
  return longer !== null && shorter !== null && continues(longer, shorter);
}

/** In one transaction: all of it or nothing, and nothing where another tab has done it meanwhile. */
async function copyInto(
  db: IDBPDatabase<Kept>,
  wasBrought: boolean,
  entries: readonly Entry[],
): Promise<void> {
  const into = db.transaction(STORES, 'readwrite', { durability: 'strict' });
  const isBrought = (await into.objectStore('other').get(BROUGHT_OVER)) === true;
  if (isBrought === wasBrought)
    for (const { store, key, value } of entries) await into.objectStore(store).put(value as never, key);
  await into.objectStore('other').put(true, BROUGHT_OVER);
  await into.done;
}
