/** What the database holds (database.ts says what and how long), and how each version of it became the next. */
import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import { openDB } from 'idb';
import type { About } from './about.ts';
import { aboutOf, attemptIn } from './about.ts';
import { notKept } from './keepProblem.ts';

export interface Kept extends DBSchema {
  attempts: { key: string; value: string };
  about: { key: string; value: About; indexes: { first: string } };
  drafts: { key: string; value: unknown };
  other: { key: string; value: unknown };
  questions: { key: string; value: unknown };
  desk: { key: string; value: unknown };
}
export const STORES = ['attempts', 'about', 'drafts', 'other', 'questions', 'desk'] as const;
/** Key of the one attempt in version 1, and its id from then on. */
const ONE = 'current';
const ONE_FROM_THEN = 'from-version-1';

type Upgrading = IDBPTransaction<Kept, (typeof STORES)[number][], 'versionchange'>;
/** What makes each version of the one before it, from none to the first on. None of them loses anything. */
export type Upgrade = (db: IDBPDatabase<Kept>, transaction: Upgrading) => Promise<void> | void;

export const UPGRADES: readonly Upgrade[] = [
  (db) => {
    db.createObjectStore('attempts');
  },
  async (db, transaction) => {
    db.createObjectStore('about').createIndex('first', 'first');
    db.createObjectStore('drafts');
    db.createObjectStore('other');
    await firstOfMany(transaction);
  },
  // The third is named by the copy's folder; what it holds did not change.
  () => {},
  (db) => {
    db.createObjectStore('questions');
    db.createObjectStore('desk');
  },
];

/** Version 1 kept one attempt in `attempts` under `current`; it becomes the first of many. */
async function firstOfMany(transaction: Upgrading): Promise<void> {
  const attempts = transaction.objectStore('attempts');
  const text = await attempts.get(ONE);
  if (text === undefined) return;
  await attempts.delete(ONE);
  await attempts.put(text, ONE_FROM_THEN);
  const attempt = attemptIn(text);
  if (attempt !== null)
    await transaction.objectStore('about').put(aboutOf(ONE_FROM_THEN, attempt), ONE_FROM_THEN);
}

/** A database of this kind, made or brought up to the last of `upgrades`. Rejects where the browser keeps nothing. */
export const openKept = (
  name: string,
  upgrades: readonly Upgrade[],
  onGone: () => void,
): Promise<IDBPDatabase<Kept>> =>
  new Promise((resolve, reject) => {
    openDB<Kept>(name, upgrades.length, {
      upgrade: async (db, from, _, transaction) => {
        for (const upgrade of upgrades.slice(from)) await upgrade(db, transaction);
      },
      // Another tab still runs the version before this one and holds its database.
      blocked: () => reject(notKept('other version')),
      // A later version in another tab may go ahead.
      blocking: (_, __, event) => {
        (event.target as IDBDatabase).close();
        onGone();
      },
      terminated: onGone,
    }).then(resolve, reject);
  });
