/** The job that a tutor is making, kept on the device from change to change: it outlives the tab. */
import { inOne } from './database.ts';

const KEY = 'draft';

export interface DeskDraft {
  /** The scenario file's object, as it would be saved. */
  readonly file: object;
  /** Title of the job that it was made from; null: from blank. */
  readonly from: string | null;
  /** What it was before each change, the latest last. */
  readonly before: readonly object[];
  /** When it was last changed, ms. */
  readonly at: number;
  /** One that was made before it, and left for it; null: there was none. */
  readonly previous: Omit<DeskDraft, 'previous'> | null;
}

/** Null where there is none. Rejects where the browser keeps nothing. */
export const keptDraft = (): Promise<DeskDraft | null> =>
  inOne('readonly', async (all) => draftIn(await all.objectStore('desk').get(KEY)));

export const keepDraft = (draft: DeskDraft): Promise<void> =>
  inOne('readwrite', async (all) => {
    await all.objectStore('desk').put(draft, KEY);
  });

/** What another version kept may be anything. */
function draftIn(kept: unknown): DeskDraft | null {
  const one = oneIn(kept);
  return one && { ...one, previous: oneIn((kept as { previous?: unknown }).previous) };
}

function oneIn(kept: unknown): DeskDraft['previous'] {
  if (typeof kept !== 'object' || kept === null) return null;
  const { file, from, before, at } = kept as Partial<Record<keyof DeskDraft, unknown>>;
  if (typeof file !== 'object' || file === null) return null;
  return {
    file,
    from: typeof from === 'string' ? from : null,
    before: Array.isArray(before) ? before.filter((one) => typeof one === 'object' && one !== null) : [],
    at: typeof at === 'number' ? at : 0,
  };
}
