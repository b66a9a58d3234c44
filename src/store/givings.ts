/** What a tutor gave out, kept whole with the notes on what came of it; and the draft that another screen makes. */
import type { Giving } from '../desk/giving.ts';
import { inOne } from './database.ts';

const OF_GIVING = 'given:';

/** Newest first. */
export const keptGivings = async (): Promise<readonly Giving[]> =>
  (
    (await inOne('readonly', (all) =>
      all.objectStore('desk').getAll(IDBKeyRange.bound(OF_GIVING, `${OF_GIVING}\uffff`)),
    )) as Giving[]
  ).sort((x, y) => (y.tutor?.at ?? 0) - (x.tutor?.at ?? 0));

export const keepGiving = (giving: Giving): Promise<void> =>
  inOne('readwrite', async (all) => {
    await all.objectStore('desk').put(giving, `${OF_GIVING}${giving.giving}`);
  });

/** Changes what is kept at this moment, whichever tab changed it last; its own content where it was not kept. */
export const changeGiving = (giving: Giving, change: (kept: Giving) => Giving): Promise<Giving> =>
  inOne('readwrite', async (all) => {
    const key = `${OF_GIVING}${giving.giving}`;
    const kept = ((await all.objectStore('desk').get(key)) as Giving | undefined) ?? giving;
    const changed = change(kept);
    await all.objectStore('desk').put(changed, key);
    return changed;
  });

export const deleteGiving = (id: string): Promise<void> =>
  inOne('readwrite', (all) => all.objectStore('desk').delete(`${OF_GIVING}${id}`));
