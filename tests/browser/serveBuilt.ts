// Serves the built page to the tests' browsers.

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { preview } from 'vite';
import { PLAIN_HOST } from './browsers.ts';

const ROOT = join(import.meta.dirname, '../..');

export interface Served {
  readonly url: string;
  /** The same page at an address that the browser does not hold for safe. */
  readonly plainUrl: string;
  readonly close: () => Promise<void>;
}

/** Serves dist/ as it was last built, or a copy of it, on a port that is free. */
export async function serveBuilt(folder = join(ROOT, 'dist')): Promise<Served> {
  if (!existsSync(join(folder, 'index.html'))) throw new Error('dist/ holds no page: run npm run build');
  const server = await preview({
    root: ROOT,
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 4500, allowedHosts: [PLAIN_HOST] },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('The page is served without a port');
  return {
    url: `http://127.0.0.1:${address.port}/`,
    plainUrl: `http://${PLAIN_HOST}:${address.port}/`,
    close: () => server.close(),
  };
}
