/** What comes from a file: a record that is merged into what is here, and an attempt of a file of its own. */
import type { Attempt } from '../attempt/record/attempt.ts';
import { asWritten } from '../attempt/record/written.ts';
import { aboutOf, attemptIn } from './about.ts';
import type { Transaction } from './database.ts';
import { inOne } from './database.ts';
import { mergeQuestions } from './keepQuestions.ts';
import type { Belongs, Identified } from './merge.ts';
import { belongs, freeId } from './merge.ts';
import type { RecordItem } from './recordItem.ts';
import type { KeptRecord } from './recordText.ts';

export interface Merged {
  readonly added: number;
  readonly longer: number;
  readonly keptAlready: number;
}

/** All of it or, where the device is full, nothing. */
export const mergeRecord = ({ items, unreadable, goal, questions, further }: KeptRecord): Promise<Merged> =>
  inOne('readwrite', async (all) => {
    const counts = { another: 0, longer: 0, 'kept already': 0 };
    for (const item of items) {
      const place = belongs(item, await alike(all, item));
      counts[place.as] += 1;
      await putIn(all, place, item);
    }
    for (const { id, text } of unreadable) {
      const attempts = all.objectStore('attempts');
      // As it came, for a version that can read it; never over anything.
      if (!(await attempts.getAll(IDBKeyRange.bound(id, `${id}-\uffff`))).includes(text))
        await attempts.put(text, freeId(id, await attempts.getAllKeys()));
    }
    const other = all.objectStore('other');
    if (goal !== null && (await other.get('goal')) === undefined) await other.put(goal, 'goal');
    await mergeQuestions(all, questions);
    const before = (await other.get('further')) as KeptRecord['further'] | undefined;
    await other.put({ ...further, ...before }, 'further');
    return { added: counts.another, longer: counts.longer, keptAlready: counts['kept already'] };
  });

/** An attempt opened from a file of its own: kept as somebody's, until it is worked on here. Its id here. */
export const keepOpened = (id: string, attempt: Attempt, now: number): Promise<string> =>
  inOne('readwrite', async (all) => {
    const item = { id, attempt: asWritten(attempt) };
    const place = belongs(item, await alike(all, item));
    await putIn(all, place, {
      ...item,
      began: now,
      changed: now,
      handedIn: null,
      putAway: false,
      stands: null,
      isGuest: true,
      draft: null,
      further: {},
    });
    return place.id;
  });

/** Those kept with the same first entry, or under this id or one made from it. */
async function alike(
  all: Transaction<'readwrite'>,
  { id, attempt }: Identified,
): Promise<readonly Identified[]> {
  const about = all.objectStore('about');
  const first = attempt.entries[0]?.hash;
  const ids = new Set([
    ...(await about.getAllKeys(IDBKeyRange.bound(id, `${id}-\uffff`))),
    ...(first === undefined ? [] : await about.index('first').getAllKeys(first)),
  ]);
  const found: Identified[] = [];
  for (const one of ids) {
    const kept = attemptIn((await all.objectStore('attempts').get(one)) ?? '');
    if (kept !== null) found.push({ id: one, attempt: kept });
  }
  return found;
}

async function putIn(all: Transaction<'readwrite'>, { as, id }: Belongs, item: RecordItem): Promise<void> {
  const about = all.objectStore('about');
  const before = as === 'another' ? undefined : await about.get(id);
  // Whoever brings it as its own makes it so, even where it was opened from a file before.
  const isGuest = item.isGuest && (before?.isGuest ?? true);
  if (as === 'kept already') {
    if (before !== undefined && before.isGuest !== isGuest) await about.put({ ...before, isGuest }, id);
    return;
  }
  const { began, changed, handedIn, putAway, stands, further, attempt, draft } = item;
  await all.objectStore('attempts').put(JSON.stringify(attempt), id);
  await about.put(
    aboutOf(id, attempt, {
      ...before,
      began: before?.began ?? began,
      changed,
      handedIn: handedIn ?? before?.handedIn ?? null,
      putAway,
      isGuest,
      further: { ...before?.further, ...further },
      stands,
      // The tab that has the shorter one may not write over the longer, and its sum no longer holds.
      holder: null,
      summary: null,
    }),
    id,
  );
  if (draft === null) await all.objectStore('drafts').delete(id);
  else await all.objectStore('drafts').put(draft, id);
}
