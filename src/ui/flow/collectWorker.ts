/** Collecting apart from the page, so that five hundred attempts keep nobody waiting: the worker's side. */
import { toItsEnd } from '../../bench/toItsEnd.ts';
import type { Row } from '../../desk/collect.ts';
import { Copies, collecting } from '../../desk/collect.ts';
import type { Giving, ReadGiving } from '../../desk/giving.ts';
import { readingGiving } from '../../desk/giving.ts';
import type { Came } from '../../desk/zip.ts';
import { filesOfZip } from '../../desk/zip.ts';
import { LARGEST_FILE } from '../../scenario/problems.ts';

/** A file as it came to the page, with its path where it came in a folder. */
export interface Dropped {
  readonly name: string;
  readonly file: File;
}

export interface Asked {
  readonly dropped: readonly Dropped[];
  readonly givings: readonly Giving[];
  readonly shipped: readonly object[];
}

/** A file that was taken up: its row, and its text for whoever opens it. */
export interface Taken {
  readonly row: Row;
  readonly text: string | null;
}

export type Told =
  | { readonly kind: 'taken'; readonly taken: readonly Taken[]; readonly done: number; readonly of: number }
  | { readonly kind: 'over' }
  | { readonly kind: 'failed'; readonly why: string };

/** Largest zip that is read, bytes. */
const LARGEST_ZIP = 100_000_000;
/** How often rows are told, ms: each telling draws the page anew. */
const TELLING = 400;

const isZip = ({ name }: Dropped): boolean => /\.zip$/i.test(name);

/** `more`: so many came of a zip, which was counted as one. */
async function* cameIn(dropped: readonly Dropped[], more: (count: number) => void): AsyncGenerator<Came> {
  for (const one of dropped) {
    const { name, file } = one;
    try {
      if (file.size > (isZip(one) ? LARGEST_ZIP : LARGEST_FILE)) yield { name, problem: 'too-large' };
      else if (isZip(one)) yield* filesOfZip(name, new Uint8Array(await file.arrayBuffer()), more);
      else if (!/\.json$/i.test(name)) yield { name, problem: 'no-attempt-file' };
      else yield { name, text: await file.text() };
    } catch {
      yield { name, problem: 'not-read' };
    }
  }
}

/** Every file that came, one after the other; `tell` hears of each. */
export async function collectAll(
  { dropped, givings, shipped }: Asked,
  tell: (told: Told) => void,
): Promise<void> {
  const read = givings.flatMap((giving): readonly ReadGiving[] => {
    const one = toItsEnd(readingGiving(giving));
    return one.ok ? [one.value] : [];
  });
  const copies = new Copies(read, shipped);
  let taken: Taken[] = [];
  let done = 0;
  let of = dropped.length;
  let told = performance.now();
  const more = (count: number) => {
    of += count - 1;
  };
  for await (const came of cameIn(dropped, more)) {
    const row = toItsEnd(collecting(came, copies));
    taken.push({ row, text: 'text' in came && row.kind === 'marked' ? came.text : null });
    done += 1;
    if (performance.now() - told >= TELLING) {
      tell({ kind: 'taken', taken, done, of });
      taken = [];
      told = performance.now();
    }
  }
  tell({ kind: 'taken', taken, done, of });
  tell({ kind: 'over' });
}

// A page imports the types alone.
if (typeof document === 'undefined')
  addEventListener('message', ({ data }: MessageEvent<Asked>) => {
    collectAll(data, (told) => postMessage(told)).catch((error: unknown) =>
      postMessage({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
    );
  });
