/**
 * What was still to be kept of an attempt when its page went. A database takes longer than a page that is closed is given;
 * the local storage takes a text at once, and what is in it goes into the database as soon as the page is opened again.
 * Lost where the browser has no room for it there.
 */
import type { IDBPDatabase } from 'idb';
import type { Written } from '../attempt/record/written.ts';
import { asWritten } from '../attempt/record/written.ts';
import type { About } from './about.ts';
import { aboutOf } from './about.ts';
import { THIS_COPY } from './copy.ts';
import type { Change } from './putChange.ts';
import { putChange } from './putChange.ts';
import type { Kept } from './versions.ts';
import { STORES } from './versions.ts';

interface Left {
  readonly holder: string;
  readonly change: Change<Written>;
  /** Of one of which nothing is kept yet: what is to be kept beside its log. */
  readonly begun: Partial<About> | null;
}

const PREFIX = `${THIS_COPY} left behind `;

/** With the log, where nothing is kept of it yet. */
export function leaveBehind(id: string, { change, ...left }: Left): void {
  const { attempt, ...rest } = change;
  const written = attempt === undefined ? rest : { ...rest, attempt: asWritten(attempt) };
  try {
    localStorage.setItem(PREFIX + id, JSON.stringify({ ...left, change: written }));
  } catch {
    // Full, or a browser that keeps nothing.
  }
}

/** What has been kept after all, or is to be kept no longer: of one attempt, or of all. */
export function forgetLeft(id?: string): void {
  for (const key of keysOfLeft()) if (id === undefined || key === PREFIX + id) localStorage.removeItem(key);
}

function keysOfLeft(): readonly string[] {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(PREFIX));
  } catch {
    return [];
  }
}

/** The same database, once it holds what was left behind. What cannot be read goes: no more is lost than was before. */
export async function takingUpLeft(db: IDBPDatabase<Kept>): Promise<IDBPDatabase<Kept>> {
  for (const key of keysOfLeft()) {
    try {
      await takeUp(db, key.slice(PREFIX.length), JSON.parse(localStorage.getItem(key) ?? ''));
    } catch {
      // No text that this page has written, or no room.
    }
    localStorage.removeItem(key);
  }
  return db;
}

/** Nothing of what was deleted meanwhile, is another tab's by now, or was kept before the page was gone. */
async function takeUp(db: IDBPDatabase<Kept>, id: string, { holder, change, begun }: Left): Promise<void> {
  const all = db.transaction(STORES, 'readwrite');
  const kept = await all.objectStore('about').get(id);
  if (kept !== undefined) {
    const isNewer = kept.holder === holder && kept.changed < (change.about.changed ?? 0);
    if (isNewer) await putChange(all, kept, change);
  } else if (begun !== null && change.attempt !== undefined)
    await putChange(all, aboutOf(id, change.attempt, { ...begun, holder }), change);
  await all.done;
}
