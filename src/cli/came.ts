/** What was handed in, named on the command line: files, folders of them at any depth, and zips. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Came } from '../desk/zip.ts';
import { filesOfZip } from '../desk/zip.ts';
import { BadInput, readBytes, readText } from './files.ts';

/** Largest zip that is read, bytes. */
const LARGEST_ZIP = 100_000_000;

const isZip = (path: string): boolean => /\.zip$/i.test(path);

/** A file as it is; of a folder every JSON file and zip in it and in its folders, by name. */
export function filesIn(path: string): readonly string[] {
  if (path === '-' || statSync(path, { throwIfNoEntry: false })?.isDirectory() !== true) return [path];
  const files = filesUnder(path);
  if (files.length === 0) throw new BadInput([`${path}: a folder without a .json file`]);
  return files;
}

function filesUnder(path: string): readonly string[] {
  const entries = readdirSync(path, { withFileTypes: true }).sort((x, y) => (x.name < y.name ? -1 : 1));
  return entries.flatMap((entry) => {
    const own = join(path, entry.name);
    if (entry.isDirectory()) return filesUnder(own);
    return entry.isFile() && (entry.name.endsWith('.json') || isZip(entry.name)) ? [own] : [];
  });
}

/** Each of them as it came, and every file of a zip; what cannot be read is complained of when it is its turn. */
export function* cameFrom(files: readonly string[]): Generator<Came | BadInput> {
  for (const name of files)
    try {
      if (isZip(name)) yield* filesOfZip(name, readBytes(name, LARGEST_ZIP));
      else yield { name, text: readText(name) };
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      yield error;
    }
}
