/**
 * What is kept on this device, and nothing else is:
 *
 *   what                      where                                        how long
 *   the attempt last worked   IndexedDB charge-point-trainer, `attempts`,  until another is begun, opened or
 *   on, as its exported text  key `current`                                put away, or the browser clears it
 *   light or dark paper       local storage (theme.ts)                     until chosen anew
 *
 * Whoever calls says in words what is lost when keeping fails; exporting never needs this file.
 */
import type { IDBPDatabase } from 'idb';
import { openDB } from 'idb';

const STORE = 'attempts';
const KEY = 'current';

let opened: Promise<IDBPDatabase> | null = null;

const database = (): Promise<IDBPDatabase> => {
  opened ??= openDB('charge-point-trainer', 1, { upgrade: (db) => void db.createObjectStore(STORE) });
  return opened;
};

/** Resolves once the text is safely kept; rejects where the browser keeps nothing or is full. */
export async function keepAttempt(text: string): Promise<void> {
  await (await database()).put(STORE, text, KEY);
}

/** The kept text, or null where there is none. */
export async function keptAttempt(): Promise<string | null> {
  const text: unknown = await (await database()).get(STORE, KEY);
  return typeof text === 'string' ? text : null;
}

export async function putAwayAttempt(): Promise<void> {
  await (await database()).delete(STORE, KEY);
}
