/**
 * The one database on this device, and nothing else is kept but the choices of choices.ts:
 *
 *   store      key             what                                              how long
 *   attempts   attempt's id    its log, as the text of an attempt file           until it is deleted
 *   about      attempt's id    what a list shows of it (keptAttempt.ts)          with it
 *   drafts     attempt's id    the place it was left at, and what is not yet     until it is concluded
 *                              in its log: set-up, answers, fields half typed
 *   other      `goal`          the goal for next time                            until it is changed or put away
 *   other      `further`       fields of a record file that this version does    until everything is deleted
 *                              not know
 *
 * Version 1 kept one attempt in `attempts` under `current`; it becomes the first of many. Whoever calls says in words
 * what is lost when keeping fails: `problemOf` tells why.
 */
import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import { openDB } from 'idb';
import type { Attempt } from '../attempt/attempt.ts';
import type { About } from './about.ts';
import { aboutOf } from './about.ts';

interface Kept extends DBSchema {
  attempts: { key: string; value: string };
  about: { key: string; value: About; indexes: { first: string } };
  drafts: { key: string; value: unknown };
  other: { key: string; value: unknown };
}
const STORES = ['attempts', 'about', 'drafts', 'other'] as const;
export type Transaction<M extends IDBTransactionMode> = IDBPTransaction<Kept, typeof STORES, M>;

const NAME = 'charge-point-trainer';
const VERSION = 2;
/** Key of the one attempt in version 1, and its id from then on. */
const ONE = 'current';
const ONE_FROM_THEN = 'from-version-1';

/** Why nothing was kept; the last two are thrown by whoever finds them. */
export const KEEP_PROBLEMS = ['refused', 'full', 'other version', 'taken over', 'deleted'] as const;
export type KeepProblem = (typeof KEEP_PROBLEMS)[number];

class NotKept extends Error {
  readonly problem: KeepProblem;
  constructor(problem: KeepProblem) {
    super(`not kept: ${problem}`);
    this.problem = problem;
  }
}

export const notKept = (problem: KeepProblem): Error => new NotKept(problem);

export function problemOf(error: unknown): KeepProblem {
  if (error instanceof NotKept) return error.problem;
  const name = error instanceof Error ? error.name : '';
  return name === 'QuotaExceededError' ? 'full' : name === 'VersionError' ? 'other version' : 'refused';
}

let opened: Promise<IDBPDatabase<Kept>> | null = null;

function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= new Promise<IDBPDatabase<Kept>>((resolve, reject) => {
    openDB<Kept>(NAME, VERSION, {
      upgrade,
      // Another tab still runs the version before this one and holds its database.
      blocked: () => reject(notKept('other version')),
      // A later version in another tab may go ahead.
      blocking: (_, __, event) => {
        (event.target as IDBDatabase).close();
        opened = null;
      },
      terminated: () => {
        opened = null;
      },
    }).then(resolve, reject);
  }).catch((error) => {
    opened = null;
    throw error;
  });
  return opened;
}

async function upgrade(
  db: IDBPDatabase<Kept>,
  from: number,
  _: number | null,
  transaction: IDBPTransaction<Kept, ('attempts' | 'about' | 'drafts' | 'other')[], 'versionchange'>,
): Promise<void> {
  if (from < 1) db.createObjectStore('attempts');
  db.createObjectStore('about').createIndex('first', 'first');
  db.createObjectStore('drafts');
  db.createObjectStore('other');
  if (from < 1) return;
  const attempts = transaction.objectStore('attempts');
  const text = await attempts.get(ONE);
  if (typeof text !== 'string') return;
  const attempt = attemptIn(text);
  await attempts.delete(ONE);
  if (attempt === null) return;
  await attempts.put(text, ONE_FROM_THEN);
  await transaction.objectStore('about').put(aboutOf(ONE_FROM_THEN, attempt), ONE_FROM_THEN);
}

/** An attempt in text that this device kept; null where it is none. */
export function attemptIn(text: string): Attempt | null {
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray((value as { entries?: unknown } | null)?.entries) ? (value as Attempt) : null;
  } catch {
    return null;
  }
}

/**
 * Does its work in one transaction: all of it is kept or none, also when the power fails. Rejects where the browser
 * keeps nothing or is full.
 */
export async function inOne<T, M extends 'readonly' | 'readwrite'>(
  mode: M,
  work: (transaction: Transaction<M>) => Promise<T>,
): Promise<T> {
  const transaction = (await database()).transaction(STORES, mode, { durability: 'strict' });
  const over = transaction.done.then(
    () => null,
    (error: unknown) => error ?? notKept('refused'),
  );
  try {
    const result = await work(transaction);
    const error = await over;
    if (error !== null) throw error;
    return result;
  } catch (error) {
    if (transaction.error === null) {
      try {
        transaction.abort();
      } catch {
        // It is over already.
      }
    }
    // What ended the transaction tells more than that it ended.
    throw transaction.error ?? error;
  }
}
