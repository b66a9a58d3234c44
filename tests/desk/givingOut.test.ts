// What is given out comes back the same: by its file, by a link that carries what differs from a shipped job, and
// sealed. AES-GCM and PBKDF2 are held against published vectors.

import { createDecipheriv, pbkdf2Sync } from 'node:crypto';
import { inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { changed, changesBetween } from '../../src/desk/difference.ts';
import { forLearners, givingText, readingGiving } from '../../src/desk/giving.ts';
import { heldBy } from '../../src/desk/heldBy.ts';
import { LONGEST_LINK, linkText, linkTo, madeWhole, textInLink } from '../../src/desk/link.ts';
import { fromLetters, packed, toLetters, unpacked } from '../../src/desk/packed.ts';
import { looksSealed, readSealed, sealed, sealedLinkText, unsealed } from '../../src/desk/seal.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { CRYPTO, givingOf, readGiving, SHIPPED } from './helpers.ts';

const tannery = scenarioNamed('tannery-wharf').file as object;
const dyers = scenarioNamed('find-dyers-row').file as object;
const changedJob = { ...tannery, title: 'Tannery Wharf, bay 9', faults: [{ fault: 'opens-slowly' }] };
const origin = 'https://trainer.example/college/';

/** What a browser at the other end makes of the address. */
function cameBy(address: string) {
  const letters = new URL(address).hash.slice('#/given/'.length);
  const whole = madeWhole(JSON.parse(textInLink(letters) ?? 'null'), SHIPPED);
  return whole.ok ? toItsEnd(readingGiving(whole.value)) : whole;
}

describe('a link', () => {
  test('carries what differs from a shipped job, and the same jobs come of it', () => {
    const giving = givingOf([changedJob, dyers], { held: heldBy('c0ffee0123', 'otter'), rung: 4 });
    const address = `${origin}${linkTo(linkText(giving, SHIPPED))}`;
    expect(address.length).toBeLessThanOrEqual(LONGEST_LINK);
    const came = cameBy(address);
    expect(came).toMatchObject({ ok: true, value: { giving: { word: 'heron-42', held: giving.held } } });
    if (!came.ok) return;
    const asGiven = readGiving(giving).jobs;
    expect(came.value.jobs.map(({ scenario }) => scenario)).toEqual(asGiven.map(({ scenario }) => scenario));
  });

  test('of a job with little in common with those that ship is long, which is known beforehand', () => {
    const own = {
      ...tannery,
      id: 'our-own',
      brief: Array.from({ length: 300 }, (_, i) => `w${i * i}`).join(' '),
    };
    expect(linkTo(linkText(givingOf([own]), SHIPPED)).length).toBeGreaterThan(LONGEST_LINK);
  });

  test('has nothing of the tutor’s own in it', () => {
    const giving = givingOf([dyers], {
      tutor: { second: 'otter', notes: { abcd1234: { comment: 'asked twice', setAside: [] } } },
    });
    expect(linkText(giving, SHIPPED)).not.toMatch(/otter|asked twice/);
    expect(givingText(forLearners(giving))).not.toMatch(/otter|asked twice/);
  });

  test('to another version of a shipped job is refused: it would be another job', () => {
    const address = `${origin}${linkTo(linkText(givingOf([dyers]), SHIPPED))}`;
    const newer = SHIPPED.map((file) =>
      (file as { id: string }).id === 'find-dyers-row' ? { ...file, seed: 99 } : file,
    );
    const letters = new URL(address).hash.slice('#/given/'.length);
    const whole = madeWhole(JSON.parse(textInLink(letters) ?? ''), newer);
    expect(whole).toMatchObject({ ok: false, problems: [{ path: 'jobs[0]' }] });
  });

  test('that is cut, or blows up, is none', () => {
    const letters = linkTo(linkText(givingOf([dyers]), SHIPPED)).slice('#/given/'.length);
    expect(textInLink(letters.slice(0, -20))).toBeNull();
    expect(textInLink('not a link at all!')).toBeNull();
    const bomb = packed('0'.repeat(20_000_000));
    expect(bomb.length).toBeLessThan(40_000);
    expect(textInLink(bomb)).toBeNull();
  });
});

test('what is packed is plain deflate and base64url, and comes back', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.uint8Array(), (text, bytes) => {
      const letters = packed(text);
      const seen = inflateRawSync(Buffer.from(letters, 'base64url')).toString('utf8');
      expect(seen).toBe(Buffer.from(text, 'utf8').toString('utf8'));
      expect(unpacked(letters, 1_000_000)).toBe(seen);
      expect(toLetters(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
      expect(fromLetters(toLetters(bytes))).toEqual(Uint8Array.from(bytes));
    }),
    { numRuns: 100 },
  );
});

test('changes make the one of the other, whatever the two are', () => {
  const tree = fc.dictionary(fc.string(), fc.jsonValue({ maxDepth: 2 }), { maxKeys: 4 });
  fc.assert(
    fc.property(tree, tree, (from, to) => {
      const [a, b] = [JSON.parse(JSON.stringify(from)), JSON.parse(JSON.stringify(to))];
      expect(JSON.parse(JSON.stringify(changed(a, changesBetween(a, b))))).toEqual(b);
    }),
    { numRuns: 300 },
  );
});

describe('a seal', () => {
  const text = givingText(givingOf([dyers]));

  test('opens by its passphrase alone, from a file and from a link', async () => {
    const closed = await sealed(text, 'Bay 3, please', CRYPTO, 10_000);
    for (const carried of [JSON.stringify(closed), textInLink(packed(sealedLinkText(closed))) ?? '']) {
      const value: unknown = JSON.parse(carried);
      expect(looksSealed(value)).toBe(true);
      const read = readSealed(value);
      if (!read.ok) throw new Error('not read');
      expect(await unsealed(read.value, ' Bay 3, please ', CRYPTO.subtle)).toBe(text);
      expect(await unsealed(read.value, 'bay 3, please', CRYPTO.subtle)).toBeNull();
    }
    expect(JSON.stringify(closed)).not.toContain('heron');
  });

  test('that was changed in any letter does not open', async () => {
    const closed = await sealed(text, 'otter', CRYPTO, 10_000);
    const { text: letters } = closed.sealed;
    const other = `${letters.slice(0, 40)}${letters[40] === 'A' ? 'B' : 'A'}${letters.slice(41)}`;
    expect(
      await unsealed({ ...closed, sealed: { ...closed.sealed, text: other } }, 'otter', CRYPTO.subtle),
    ).toBeNull();
  });

  test('says in the file how it was made, and by whose advice', async () => {
    const closed = await sealed(text, 'otter', CRYPTO);
    expect(closed.sealed).toMatchObject({
      cipher: 'AES-GCM',
      key: 'PBKDF2-HMAC-SHA-256',
      rounds: 600_000,
      source: expect.stringContaining('OWASP'),
    });
  });

  test('with rounds that would take hours, or of a newer format, is refused unopened', () => {
    const one = { rounds: 10_000, salt: 'AAAA', nonce: 'AAAA', text: 'AAAA' };
    expect(readSealed({ format: 1, sealed: one }).ok).toBe(true);
    expect(readSealed({ format: 1, sealed: { ...one, rounds: 4_000_000_000 } }).ok).toBe(false);
    expect(readSealed({ format: 2, sealed: one })).toMatchObject({
      ok: false,
      problems: [{ path: 'format' }],
    });
  });

  // Whoever has no page opens it with any other implementation of the two.
  test('is opened by another implementation', async () => {
    const closed = await sealed(text, 'otter', CRYPTO, 12_345);
    const of = (letters: string) => Buffer.from(letters, 'base64url');
    const { salt, nonce, text: letters, rounds } = closed.sealed;
    const key = pbkdf2Sync('otter', of(salt), rounds, 32, 'sha256');
    const body = of(letters);
    const cipher = createDecipheriv('aes-256-gcm', key, of(nonce)).setAuthTag(body.subarray(-16));
    const opened = Buffer.concat([cipher.update(body.subarray(0, -16)), cipher.final()]);
    expect(inflateRawSync(opened).toString('utf8')).toBe(text);
  });

  // RFC 7914, section 11.
  test.each([
    ['passwd', 'salt', 1, '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc'],
    ['Password', 'NaCl', 80_000, '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56'],
  ])('PBKDF2-HMAC-SHA-256 of %s and %s', async (passphrase, salt, rounds, expected) => {
    const { subtle } = CRYPTO;
    const bytes = new TextEncoder();
    const typed = await subtle.importKey('raw', bytes.encode(passphrase), 'PBKDF2', false, ['deriveBits']);
    const way = { name: 'PBKDF2', hash: 'SHA-256', salt: bytes.encode(salt), iterations: rounds };
    expect(Buffer.from(await subtle.deriveBits(way, typed, 256)).toString('hex')).toBe(expected);
  });

  // McGrew and Viega, The Galois/Counter Mode of Operation, test case 15.
  test('AES-GCM with a key of 256 bits', async () => {
    const of = (hex: string) => Uint8Array.from(Buffer.from(hex, 'hex'));
    const { subtle } = CRYPTO;
    const key = await subtle.importKey(
      'raw',
      of('feffe9928665731c6d6a8f9467308308feffe9928665731c6d6a8f9467308308'),
      'AES-GCM',
      false,
      ['encrypt'],
    );
    const plain = of(
      'd9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a721c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b391aafd255',
    );
    const closed = await subtle.encrypt({ name: 'AES-GCM', iv: of('cafebabefacedbaddecaf888') }, key, plain);
    expect(Buffer.from(closed).toString('hex')).toBe(
      '522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662898015adb094dac5d93471bdec1a502270e3cc6c',
    );
  });
});

describe('a giving-out’s file', () => {
  test('names every problem with its place', () => {
    const read = toItsEnd(
      readingGiving({ ...givingOf([{ ...dyers, faults: [{ fault: 'nonsense' }] }, tannery, tannery]) }),
    );
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([
      expect.stringMatching(/^jobs\[0\]\.faults/),
      'jobs[2].id',
    ]);
  });

  test('of a newer version is said to be one', () => {
    const read = toItsEnd(readingGiving({ ...givingOf([dyers]), format: 2 }));
    expect(read).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringContaining('newer version') }],
    });
  });
});
