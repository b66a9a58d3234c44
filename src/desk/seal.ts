/**
 * A giving-out closed by a passphrase: AES-GCM (NIST SP 800-38D) under a key made of it by PBKDF2-HMAC-SHA-256 (RFC 8018).
 * It keeps a file or a link from being read before the lesson. It hides nothing from whoever has opened it: a page that
 * runs a job holds its answer. What encrypts is handed in, since only a browser has it.
 */

import { deflateSync } from 'fflate';
import * as v from 'valibot';
import type { Parsed } from '../scenario/problems.ts';
import { check } from '../scenario/problems.ts';
import { newerFormat } from '../scenario/readScenario.ts';
import { LARGEST_GIVING } from './giving.ts';
import { fromLetters, inflated, toLetters } from './packed.ts';

/** Rounds of the key, as advised for PBKDF2-HMAC-SHA-256 by the source that every file names. */
export const ROUNDS = 600_000;
export const ROUNDS_SOURCE = 'OWASP Password Storage Cheat Sheet (2023): 600,000';
/** More than this would keep a phone for minutes; fewer were never written. */
const MOST_ROUNDS = 3_000_000;
const SALT = 16;
const NONCE = 12;

const letters = v.pipe(v.string(), v.regex(/^[\w-]+$/, 'base64url is expected'));
const sealedSchema = v.looseObject({
  format: v.literal(1),
  sealed: v.object({
    cipher: v.optional(v.literal('AES-GCM'), 'AES-GCM'),
    key: v.optional(v.literal('PBKDF2-HMAC-SHA-256'), 'PBKDF2-HMAC-SHA-256'),
    rounds: v.pipe(v.number(), v.integer(), v.minValue(10_000), v.maxValue(MOST_ROUNDS)),
    source: v.optional(v.string()),
    salt: v.pipe(letters, v.maxLength(100)),
    nonce: v.pipe(letters, v.maxLength(100)),
    text: letters,
  }),
});
export type Sealed = v.InferOutput<typeof sealedSchema>;

/** What of a browser is needed; it is absent where a page came by plain http. */
export interface Crypto {
  readonly subtle: SubtleCrypto;
  /** So many bytes by chance. */
  readonly drawn: (length: number) => Uint8Array<ArrayBuffer>;
}

export const looksSealed = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'sealed' in value;

export function readSealed(value: unknown): Parsed<Sealed> {
  return newerFormat(value, 'giving-out') ?? check(sealedSchema, value);
}

/** Typed on another keyboard it is the same. */
const plain = (passphrase: string): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(passphrase.normalize('NFKC').trim());

/** A key of AES-256 made of a passphrase. */
async function keyOf(
  subtle: SubtleCrypto,
  passphrase: string,
  salt: Uint8Array<ArrayBuffer>,
  iterations: number,
): Promise<CryptoKey> {
  const typed = await subtle.importKey('raw', plain(passphrase), 'PBKDF2', false, ['deriveKey']);
  return subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations },
    typed,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}

/** The text, closed. Each time under another salt and nonce. */
export async function sealed(
  text: string,
  passphrase: string,
  { subtle, drawn }: Crypto,
  rounds = ROUNDS,
): Promise<Sealed> {
  const salt = drawn(SALT);
  const nonce = drawn(NONCE);
  const key = await keyOf(subtle, passphrase, salt, rounds);
  const small = Uint8Array.from(deflateSync(new TextEncoder().encode(text), { level: 9 }));
  const closed = await subtle.encrypt({ name: 'AES-GCM', iv: nonce }, key, small);
  return {
    format: 1,
    sealed: {
      cipher: 'AES-GCM',
      key: 'PBKDF2-HMAC-SHA-256',
      rounds,
      source: ROUNDS_SOURCE,
      salt: toLetters(salt),
      nonce: toLetters(nonce),
      text: toLetters(new Uint8Array(closed)),
    },
  };
}

/** Short, for a link: which cipher and key it is says the format. */
export const sealedLinkText = ({ format, sealed: { rounds, salt, nonce, text } }: Sealed): string =>
  JSON.stringify({ format, sealed: { rounds, salt, nonce, text } });

/** The text again; null where the passphrase is another, or the file was changed: the two cannot be told apart. */
export async function unsealed(
  { sealed: { salt, nonce, text, rounds } }: Sealed,
  passphrase: string,
  subtle: SubtleCrypto,
): Promise<string | null> {
  const [a, b, c] = [salt, nonce, text].map(fromLetters);
  if (a == null || b == null || c == null) return null;
  try {
    const key = await keyOf(subtle, passphrase, a, rounds);
    const opened = await subtle.decrypt({ name: 'AES-GCM', iv: b }, key, c);
    const bytes = inflated(new Uint8Array(opened), LARGEST_GIVING);
    return bytes === null ? null : new TextDecoder().decode(bytes);
  } catch {
    return null;
  }
}
