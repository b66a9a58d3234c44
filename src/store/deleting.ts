/** Deletes what is kept, here and in what all copies shared once: there too it would otherwise stay. */

import { BROUGHT_OVER, OF_AN_ATTEMPT, SHARED_STORES } from './copy.ts';
import { inOne } from './database.ts';
import { remove } from './keptAttempt.ts';
import { forgetLeft } from './leftBehind.ts';
import { openShared } from './sharedOnce.ts';

export async function deleteAttempt(id: string): Promise<void> {
  await inOne('readwrite', (all) => remove(all, id));
  forgetLeft(id);
  await deleteShared([id]);
}

export async function deleteEverything(): Promise<void> {
  const ids = await inOne('readwrite', async (all) => {
    const gone = await all.objectStore('attempts').getAllKeys();
    for (const name of all.objectStoreNames) await all.objectStore(name).clear();
    // Else what was shared would come over once more.
    await all.objectStore('other').put(true, BROUGHT_OVER);
    return gone;
  });
  forgetLeft();
  await deleteShared(ids, ['goal', 'further']);
}

/** Deletes these there too; an earlier version that holds it keeps them. */
async function deleteShared(ids: readonly string[], also: readonly string[] = []): Promise<void> {
  try {
    const shared = await openShared();
    if (shared === null) return;
    const all = shared.transaction(SHARED_STORES, 'readwrite');
    for (const id of ids) for (const name of OF_AN_ATTEMPT) await all.objectStore(name).delete(id);
    for (const key of also) await all.objectStore('other').delete(key);
    await all.done;
    shared.close();
  } catch {
    // It cannot be opened: the copy of the page that can deletes it.
  }
}
