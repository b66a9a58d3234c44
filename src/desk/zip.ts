/**
 * What a zip holds, as a learning platform packs what was handed in: a folder a learner, at any depth. Each file in it is
 * a name and a text, or a reason why it is not read; none is left out. How many there are and how large they say they are
 * is looked at before anything is unpacked; no file becomes larger than it says. Nothing is ever written anywhere.
 * The shape is that of APPNOTE 6.3 (PKWARE), sections 4.3.7, 4.3.12, 4.3.14, 4.3.16.
 */
import { LARGEST_FILE } from '../scenario/problems.ts';
import { inflated } from './packed.ts';

/** Most files in one zip. */
export const MOST_FILES = 5000;
/** All files of a zip together as they say they are, bytes. */
export const MOST_UNPACKED = 200_000_000;
/** Bytes that one may become; a log of hashes packs to about a tenth. */
const MOST_RATIO = 100;
/** Too small for its ratio to say anything, bytes. */
const SMALL = 10_000;

/** Why the whole of a zip is not read. */
export type ZipProblem = 'no-zip' | 'too-many-files' | 'too-much-in-all';
/** Why a file is not read. */
export type FileProblem =
  | 'no-attempt-file'
  | 'too-large'
  | 'packed-too-tightly'
  | 'says-another-size'
  | 'climbs-out'
  | 'encrypted'
  | 'packed-in-another-way'
  | 'zip-within'
  | 'damaged';

export type Came =
  | { readonly name: string; readonly text: string }
  | { readonly name: string; readonly problem: FileProblem | ZipProblem | 'not-read' };

interface Listed {
  readonly name: string;
  readonly encrypted: boolean;
  readonly method: number;
  readonly packed: number;
  readonly size: number;
  readonly at: number;
}

const END = 0x06054b50;
const IN_LIST = 0x02014b50;
const OF_FILE = 0x04034b50;
const UNKNOWN = 0xffffffff;

/**
 * The files of a zip, one after the other, each unpacked when it is asked for; the whole where it is none. `counted` hears
 * beforehand how many there are.
 */
export function* filesOfZip(
  name: string,
  data: Uint8Array,
  counted: (count: number) => void = () => {},
): Generator<Came> {
  const listed = listOf(data);
  if (typeof listed === 'string') return yield { name, problem: listed };
  counted(listed.length);
  for (const file of listed) {
    const own = `${name}/${file.name}`;
    const problem = problemOf(file);
    if (problem !== null) yield { name: own, problem };
    else {
      const text = textOf(data, file);
      yield typeof text === 'string' ? { name: own, text } : { name: own, problem: text.problem };
    }
  }
}

/** What an archiver or a system adds of its own; nobody handed it in. */
const isOfSystem = (name: string): boolean =>
  /(^|\/)(__MACOSX\/|\._|\.DS_Store$|Thumbs\.db$|desktop\.ini$)/.test(name);

function listOf(data: Uint8Array): readonly Listed[] | ZipProblem {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const end = endOf(view);
  if (end === null) return 'no-zip';
  const count = view.getUint16(end + 10, true);
  // 65,535 stands for more than the field can say.
  if (count > MOST_FILES) return 'too-many-files';
  const files: Listed[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i += 1) {
    if (at + 46 > end || view.getUint32(at, true) !== IN_LIST) return 'no-zip';
    const lengths = [28, 30, 32].map((field) => view.getUint16(at + field, true));
    const [ofName = 0] = lengths;
    files.push({
      name: new TextDecoder().decode(data.subarray(at + 46, at + 46 + ofName)),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    at += 46 + lengths.reduce((sum, length) => sum + length, 0);
  }
  const all = files.reduce((sum, { size }) => sum + size, 0);
  if (all > MOST_UNPACKED) return 'too-much-in-all';
  return files.filter((file) => !file.name.endsWith('/') && !isOfSystem(file.name));
}

/** Where the record at the end begins: behind it stands a comment of up to 65,535 bytes at most. */
function endOf(view: DataView): number | null {
  const last = view.byteLength - 22;
  for (let at = last; at >= 0 && at >= last - 0xffff; at -= 1)
    if (view.getUint32(at, true) === END) return at;
  return null;
}

function problemOf({ name, encrypted, method, packed, size }: Listed): FileProblem | null {
  const parts = name.split(/[/\\]/);
  if (parts.includes('..') || name.startsWith('/') || /^[a-z]:|\\/i.test(name)) return 'climbs-out';
  if (/\.zip$/i.test(name)) return 'zip-within';
  if (!/\.json$/i.test(name)) return 'no-attempt-file';
  if (encrypted) return 'encrypted';
  if (method !== 0 && method !== 8) return 'packed-in-another-way';
  if (size === UNKNOWN || packed === UNKNOWN || size > LARGEST_FILE) return 'too-large';
  if (size > SMALL && size > MOST_RATIO * packed) return 'packed-too-tightly';
  return null;
}

function textOf(data: Uint8Array, { at, packed, size, method }: Listed): string | { problem: FileProblem } {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  if (at + 30 > data.length || view.getUint32(at, true) !== OF_FILE) return { problem: 'damaged' };
  const begins = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  const own = data.subarray(begins, begins + packed);
  if (own.length !== packed) return { problem: 'damaged' };
  const bytes = method === 0 ? own : packed === 0 ? own : inflated(own, size);
  if (bytes === null || bytes.length !== size) return { problem: 'says-another-size' };
  return new TextDecoder().decode(bytes);
}
