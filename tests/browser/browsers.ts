// Which browsers the tests use: those installed on this machine, and the one that comes inside a package. What is done in
// them is the business of the tests beside this file.

import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import bundled from '@sparticuz/chromium';
import { type Browser, chromium, firefox } from 'playwright-core';

const ROOT = join(import.meta.dirname, '../..');

export interface Found {
  readonly engine: 'chromium' | 'firefox';
  readonly path: string;
  readonly isCarried: boolean;
}

const programFiles = (...ends: readonly string[]): readonly string[] =>
  [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => ends.map((end) => join(folder, end)));

/** Where installers put them, by system. */
const INSTALLED: Readonly<Record<Found['engine'], Partial<Record<NodeJS.Platform, readonly string[]>>>> = {
  chromium: {
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
    win32: programFiles(
      'Google/Chrome/Application/chrome.exe',
      'Chromium/Application/chrome.exe',
      'Microsoft/Edge/Application/msedge.exe',
    ),
  },
  firefox: {
    linux: ['/usr/bin/firefox', '/usr/bin/firefox-esr', '/usr/lib/firefox/firefox', '/snap/bin/firefox'],
    darwin: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
    win32: programFiles('Mozilla Firefox/firefox.exe'),
  },
};

/** Each names an executable before all others, or is empty: then none of that kind is used. */
const CHOSEN = { chromium: 'CHARGE_TRAINER_BROWSER', firefox: 'CHARGE_TRAINER_FIREFOX' } as const;

function installed(engine: Found['engine']): readonly Found[] {
  const chosen = process.env[CHOSEN[engine]];
  if (chosen && !existsSync(chosen)) throw new Error(`${CHOSEN[engine]} names ${chosen}, which is not there`);
  const path = chosen ?? INSTALLED[engine][process.platform]?.find((place) => existsSync(place));
  return path ? [{ engine, path, isCarried: false }] : [];
}

/** A Chromium without any window, which needs half the time of a whole one; in the package archive it is as new. */
const WINDOWLESS = '/usr/bin/chromium-headless-shell';

const windowless = (): readonly Found[] =>
  process.env[CHOSEN.chromium] === undefined && existsSync(WINDOWLESS)
    ? [{ engine: 'chromium', path: WINDOWLESS, isCarried: false }]
    : [];

/** The Chromium that a package carries, for Linux on x64 alone. */
async function carried(): Promise<readonly Found[]> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return [];
  const { version } = JSON.parse(
    readFileSync(join(ROOT, 'node_modules/@sparticuz/chromium/package.json'), 'utf8'),
  );
  // The package unpacks into the system's temporary folder, and takes what is there for its own, of whatever version
  // and however much of it was unpacked: so each version gets a folder, which is whole when it has its name.
  const folder = join(tmpdir(), `charge-trainer-chromium-${version}`);
  const path = join(folder, 'chromium');
  if (!existsSync(path)) {
    const unpacked = mkdtempSync(`${folder}-`);
    const before = process.env.TMPDIR;
    process.env.TMPDIR = unpacked;
    try {
      await bundled.executablePath();
    } finally {
      if (before === undefined) delete process.env.TMPDIR;
      else process.env.TMPDIR = before;
    }
    rmSync(folder, { recursive: true, force: true });
    renameSync(unpacked, folder);
  }
  return [{ engine: 'chromium', path, isCarried: true }];
}

/**
 * The browser that all tests run in, then every other one that is here. One that was named comes first, then one without
 * a window, the carried one where none is installed; a whole Chromium needs twice the time.
 */
export async function findBrowsers(): Promise<readonly [Found, ...Found[]]> {
  const whole = installed('chromium');
  const installedQuick = windowless();
  const quick = installedQuick.length > 0 ? installedQuick : await carried();
  const [first, ...others] = process.env[CHOSEN.chromium] ? [...whole, ...quick] : [...quick, ...whole];
  if (first === undefined)
    throw new Error(
      'No browser found: install Chrome, Chromium or Edge, or name one in CHARGE_TRAINER_BROWSER',
    );
  return [first, ...others, ...installed('firefox')];
}

/** A name for this machine that no browser takes for safe, as an address on a plain network would be. */
export const PLAIN_HOST = 'trainer.example';

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
 * Of the carried browser's own flags: the first two crash it outside the service it is made for, the others would
 * lift rules that the page has to live with.
 */
const UNWANTED = new Set([
  '--single-process',
  '--no-zygote',
  '--disable-web-security',
  '--allow-running-insecure-content',
]);

/** Starts it without a window; Firefox by the WebDriver BiDi that it has itself. */
export function launch({ engine, path, isCarried }: Found): Promise<Browser> {
  if (engine === 'firefox') return firefox.launch({ channel: 'moz-firefox', executablePath: path });
  const own = isCarried ? bundled.args.filter((flag) => !UNWANTED.has(flag)) : [];
  return chromium.launch({ executablePath: path, args: [...own, ...ALONE] });
}

/** The browser that all tests run in. */
export const openBrowser = async (): Promise<Browser> => launch((await findBrowsers())[0]);
