/**
 * What all copies of the page on one origin shared up to version 2 of the database, copied once into this copy's own;
 * after that only what has gone on there, in a tab of an earlier version. The shared one stays, for the other copies;
 * what is deleted here is deleted there too (deleting.ts).
 */
import type { IDBPDatabase } from 'idb';
import { SHARED } from './copy.ts';
import type { Kept } from './versions.ts';
import { openKept, UPGRADES } from './versions.ts';

const SHARED_VERSION = 2;

/** Null where there is none, or where an earlier version of the page still holds it. */
export async function openShared(): Promise<IDBPDatabase<Kept> | null> {
  const isThere = (await indexedDB.databases()).some(({ name }) => name === SHARED);
  return isThere ? openKept(SHARED, UPGRADES.slice(0, SHARED_VERSION), () => {}) : null;
}

/** The same database, once it holds what was shared. What cannot be read is tried again next time. */
export async function bringingOver(db: IDBPDatabase<Kept>): Promise<IDBPDatabase<Kept>> {
  try {
    const shared = await openShared();
    if (shared === null) return db;
    try {
      const { copyShared } = await import('./copyShared.ts');
      await copyShared(db, shared);
    } finally {
      shared.close();
    }
  } catch {
    // Nothing of it is lost: it stays where it is.
  }
  return db;
}
