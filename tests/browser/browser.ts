// Finds a browser and shows it the built page: an installed one if there is one, else the one that comes inside
// a package. What is done on the page is the business of the tests beside this file.

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import bundled from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';
import { preview } from 'vite';

const ROOT = join(import.meta.dirname, '../..');

/** Where installers put Chromium and its kin, by system. */
const INSTALLED: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/microsoft-edge',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => [
      join(folder, 'Google/Chrome/Application/chrome.exe'),
      join(folder, 'Chromium/Application/chrome.exe'),
      join(folder, 'Microsoft/Edge/Application/msedge.exe'),
    ]),
};

/** A name for this machine that no browser takes for safe, as an address on a plain network would be. */
const PLAIN_HOST = 'trainer.example';

/** The page is to be alone with the tests: no sandbox (root in CI), no screen, no traffic of the browser's own. */
const ALONE = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--host-resolver-rules=MAP ${PLAIN_HOST} 127.0.0.1`,
];

/**
 * Of the bundled browser's own flags: the first two crash it outside the service it is made for, the others would
 * lift rules that the page has to live with.
 */
const UNWANTED = new Set([
  '--single-process',
  '--no-zygote',
  '--disable-web-security',
  '--allow-running-insecure-content',
]);

/** The browser to use, with its flags; CHARGE_TRAINER_BROWSER names the executable before all others. */
export async function findBrowser(): Promise<{ readonly executablePath: string; readonly args: string[] }> {
  const chosen = process.env.CHARGE_TRAINER_BROWSER;
  if (chosen && !existsSync(chosen))
    throw new Error(`CHARGE_TRAINER_BROWSER names ${chosen}, which is not there`);
  const installed = chosen || INSTALLED[process.platform]?.find((path) => existsSync(path));
  if (installed) return { executablePath: installed, args: ALONE };
  if (process.platform !== 'linux') {
    throw new Error(
      'No browser found: install Chrome, Chromium or Edge, or name one in CHARGE_TRAINER_BROWSER',
    );
  }
  const args = bundled.args.filter((flag) => !UNWANTED.has(flag));
  return { executablePath: await bundled.executablePath(), args: [...args, ...ALONE] };
}

/** Starts a browser without a window. */
export const openBrowser = async (): Promise<Browser> => chromium.launch(await findBrowser());

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
    configFile: false,
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
