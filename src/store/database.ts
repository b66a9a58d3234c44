/**
 * The one database of this copy of the page, and nothing else is kept but the choices of choices.ts, and what a page that
 * was closed had no time for (leftBehind.ts):
 *
 *   store      key             what                                              how long
 *   attempts   attempt's id    its log, as the text of an attempt file           until it is deleted
 *   about      attempt's id    what a list shows of it (keptAttempt.ts)          with it
 *   drafts     attempt's id    the place it was left at, and what is not yet     until it is concluded
 *                              in its log: set-up, answers, fields half typed
 *   other      `goal`          the goal for next time                            until it is changed or put away
 *   other      `further`       fields of a record file that this version does    until everything is deleted
 *                              not know
 *   questions  what is asked      when it comes back, and how it was answered      until everything is deleted
 *   desk       `draft`         the job that a tutor is making (deskDraft.ts)     until another takes its place
 *   desk       `giving draft`  what is about to be given out (givingDraft.ts)     until it is given out
 *   desk       `given:` its id   what was given out, with the notes on what came   until it is deleted
 *   other      `brought over`  that the database which all copies shared (up     for good
 *                              to version 2) was looked through (sharedOnce.ts)
 *
 * Whoever calls says in words what is lost when keeping fails: `problemOf` tells why.
 */
import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { THIS_COPY } from './copy.ts';
import { notKept } from './keepProblem.ts';
import { takingUpLeft } from './leftBehind.ts';
import { bringingOver } from './sharedOnce.ts';
import type { Kept } from './versions.ts';
import { openKept, STORES, UPGRADES } from './versions.ts';

export type Transaction<M extends IDBTransactionMode> = IDBPTransaction<Kept, typeof STORES, M>;

let opened: Promise<IDBPDatabase<Kept>> | null = null;

function database(): Promise<IDBPDatabase<Kept>> {
  const forget = () => {
    opened = null;
  };
  opened ??= openKept(THIS_COPY, UPGRADES, forget)
    .then(bringingOver)
    .then(takingUpLeft)
    .catch((error) => {
      forget();
      throw error;
    });
  return opened;
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
