// How much JavaScript the built page is, compressed as a server sends it. What is counted and held against a limit is
// the business of those who ask.

import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';

const ASSETS = join(import.meta.dirname, '../../dist/assets');

export interface Compressed {
  /** KiB by gzip at its best, file by file. */
  readonly gzip: number;
  /** KiB by Brotli at its best, file by file: what browsers take from a host on https. */
  readonly brotli: number;
}

export const compressed = (texts: readonly (string | Uint8Array)[]): Compressed => {
  const kib = (sizes: readonly { length: number }[]) =>
    sizes.reduce((sum, { length }) => sum + length, 0) / 1024;
  return {
    gzip: kib(texts.map((text) => gzipSync(text, { level: 9 }))),
    brotli: kib(texts.map((text) => brotliCompressSync(text))),
  };
};

/** Every script that the page may load, now or later. */
export const scriptsOfAll = (): readonly string[] =>
  readdirSync(ASSETS).filter((name) => name.endsWith('.js'));

/** The scripts that a page has loaded so far. */
export const scriptsLoaded = (page: Page): Promise<readonly string[]> =>
  page
    .evaluate(() => performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname))
    .then((paths) => paths.filter((path) => path.endsWith('.js')).map((path) => basename(path)));

export const sizeOf = (names: readonly string[]): Compressed =>
  compressed(names.map((name) => readFileSync(join(ASSETS, name))));

/** The scripts that this one cannot begin without, by what it says at its beginning. */
export const neededBy = (name: string): readonly string[] =>
  readFileSync(join(ASSETS, name), 'utf8')
    .match(/^(?:import(?:\{[^}]*\}from)?"[^"]+";)*/)?.[0]
    .match(/[^/"]+\.js(?=")/g) ?? [];
