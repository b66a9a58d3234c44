/** Text as letters that an address may hold: deflated (RFC 1951), then base64url (RFC 4648 §5); and back, within limits. */
import { deflateSync, Inflate } from 'fflate';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Bytes as base64url, without padding. */
export function toLetters(bytes: Uint8Array): string {
  let letters = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(i, i + 3);
    const four = [a >> 2, ((a & 3) << 4) | (b >> 4), ((b & 15) << 2) | (c >> 6), c & 63];
    letters += four
      .slice(0, Math.min(4, bytes.length - i + 1))
      .map((at) => LETTERS[at])
      .join('');
  }
  return letters;
}

/** The bytes again; null where it is no base64url. */
export function fromLetters(letters: string): Uint8Array<ArrayBuffer> | null {
  if (letters.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((letters.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const letter of letters) {
    const value = LETTERS.indexOf(letter);
    if (value < 0) return null;
    held = ((held << 6) | value) & 0xfff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[at] = (held >> bits) & 0xff;
      at += 1;
    }
  }
  return bytes;
}

/** How much is put in at once: what comes of it is at most a thousand times as much. */
const PIECE = 8192;

class TooMuch extends Error {}

/** What deflated bytes hold, up to `most` bytes; null where they hold more, or are not whole. */
export function inflated(data: Uint8Array, most: number): Uint8Array<ArrayBuffer> | null {
  const pieces: Uint8Array[] = [];
  let length = 0;
  let whole = false;
  const inflate = new Inflate((piece, final) => {
    length += piece.length;
    if (length > most) throw new TooMuch();
    pieces.push(piece);
    whole = final;
  });
  try {
    for (let i = 0; i < data.length; i += PIECE)
      inflate.push(data.subarray(i, i + PIECE), i + PIECE >= data.length);
  } catch {
    // Too much, or no such thing.
    return null;
  }
  if (!whole) return null;
  const all = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

export const packed = (text: string): string =>
  toLetters(deflateSync(new TextEncoder().encode(text), { level: 9 }));

/** The text again, of up to `most` bytes; null where it is none. */
export function unpacked(letters: string, most: number): string | null {
  const bytes = fromLetters(letters);
  const text = bytes === null ? null : inflated(bytes, most);
  return text === null ? null : new TextDecoder().decode(text);
}
