/** Words for a board, drawn anew each time: short, read aloud without spelling, and two of them hardly ever the same. */
import { drawnBytes } from '../../flow/webCrypto.ts';

const BIRDS = [
  'heron',
  'wren',
  'finch',
  'plover',
  'lapwing',
  'kestrel',
  'dunlin',
  'curlew',
  'martin',
  'swift',
];
const BEASTS = ['otter', 'badger', 'marten', 'hare', 'weasel', 'stoat', 'beaver', 'vole', 'lynx', 'shrew'];

const drawnFrom = (words: readonly string[]): string => {
  const [a = 0, b = 0] = drawnBytes(2);
  return `${words[a % words.length]}-${10 + (b % 90)}`;
};

/** `heron-42`. */
export const firstWord = (): string => drawnFrom(BIRDS);
/** Of another kind, so that the two are not taken for each other. */
export const secondWord = (): string => drawnFrom(BEASTS);
/** Eight digits that make an id another one each time. */
export const drawnDigits = (): string =>
  [...drawnBytes(4)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
