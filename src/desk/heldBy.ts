/** The words that a tutor writes on the board: how they are compared, and how one is told without being there. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** Small letters and single spaces: what is typed from a board. */
export const plainWord = (word: string): string =>
  word.normalize('NFC').trim().toLowerCase().replaceAll(/\s+/g, ' ');

/** The hash of the word that opens what is held: it is told from others without being there. 32 hexadecimal digits. */
export const heldBy = (giving: string, second: string): string =>
  bytesToHex(sha256(utf8ToBytes(`${giving} ${plainWord(second)}`))).slice(0, 32);
