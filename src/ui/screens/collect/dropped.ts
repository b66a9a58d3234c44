/** Files as they are dropped or chosen, those in folders with their paths. */
import type { Dropped } from '../../flow/collectWorker.ts';

/** More than a class hands in: what lies deeper or further is not read. */
const MOST = 5000;

export const chosen = (files: FileList | null): readonly Dropped[] =>
  [...(files ?? [])].slice(0, MOST).map((file) => ({ name: file.webkitRelativePath || file.name, file }));

/** What was dropped, folders with all that is in them. Asked at once: after the event it is gone. */
export async function droppedIn(data: DataTransfer): Promise<readonly Dropped[]> {
  const entries = [...data.items].map((item) => item.webkitGetAsEntry?.() ?? null);
  if (entries.every((entry) => entry === null)) return chosen(data.files);
  const found: Dropped[] = [];
  for (const entry of entries) if (entry !== null) await walk(entry, found);
  return found;
}

async function walk(entry: FileSystemEntry, found: Dropped[]): Promise<void> {
  if (found.length >= MOST) return;
  if (entry.isFile) {
    const file = await new Promise<File>((resolve, reject) =>
      (entry as FileSystemFileEntry).file(resolve, reject),
    );
    found.push({ name: entry.fullPath.replace(/^\//, ''), file });
    return;
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  for (;;) {
    // A browser gives a hundred at a time.
    const some = await new Promise<FileSystemEntry[]>((resolve, reject) =>
      reader.readEntries(resolve, reject),
    );
    if (some.length === 0) return;
    for (const one of some) await walk(one, found);
  }
}
