// How the page is built and how the tests are found and run. The floors' tests run in Node; the browser's
// tests open the built page. What a full check consists of is in tests/run.mjs.

import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { configDefaults, defineConfig } from 'vitest/config';
import { LongFirst } from './tests/longFirst.ts';

/** The built page loads nothing but its own files, the worker and the manifest among them. The development server adds inline scripts and goes without. */
const ownFilesOnly: Plugin = {
  name: 'own-files-only',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: {
        'http-equiv': 'Content-Security-Policy',
        content:
          "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'none'",
      },
      injectTo: 'head-prepend',
    },
  ],
};

/**
 * Installable, and whole without a network after the first visit. A newer version is fetched beside the one in use
 * and waits until somebody takes it (src/ui/flow/newVersion.ts); only the very first one serves the open page at once.
 */
const offline = VitePWA({
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    name: 'Charge point trainer',
    short_name: 'Charge points',
    description: 'Practise the verification of simulated a.c. charge points. Training only.',
    lang: 'en-GB',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#fbfaf5',
    theme_color: '#fbfaf5',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    globPatterns: ['**/*.{html,css,js,svg,png}'],
    // Pictures of the README, which the page never shows.
    globIgnores: ['pictures/**'],
    navigateFallback: 'index.html',
    cleanupOutdatedCaches: true,
    clientsClaim: true,
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
});

/** The simulated installation and what is written of its tests, with the libraries that these stand on. */
const OF_THE_WORLD =
  /src\/(laws|network|site|unit|faults|bench|verification|scenario)\/|node_modules\/(xstate|valibot|fastest-levenshtein|@noble)\//;

/** Attempts, and every screen that shows something of one; not those that come without. */
const OF_THE_BENCH =
  /src\/(?!ui\/screens\/(Access|Reading|elsewhere\/NotInHand))|scenarios\/first-run\/|node_modules\/(@xstate|use-)/;

type ModuleInfo = (id: string) => { readonly importers: readonly string[]; readonly isEntry: boolean } | null;

/** Whether the first screen waits for it: whether the entry comes to it without asking for more. */
function isAtFirst(id: string, infoOf: ModuleInfo, seen = new Set<string>()): boolean {
  if (seen.has(id)) return false;
  seen.add(id);
  const info = infoOf(id);
  if (info === null) return false;
  return info.isEntry || info.importers.some((importer) => isAtFirst(importer, infoOf, seen));
}

/** Names the file of what belongs there and is not wanted at first. */
const later = (name: string, belongs: RegExp) => (id: string, context: { getModuleInfo: ModuleInfo }) =>
  belongs.test(id) && !isAtFirst(id, (of) => context.getModuleInfo(of)) ? name : null;

// Tests run react as it is shipped: its other build checks itself at every element, which takes several times as long.
if (process.env.VITEST) process.env.NODE_ENV = 'production';

export default defineConfig({
  base: './',
  plugins: [react(), ownFilesOnly, offline],
  build: {
    target: 'es2023',
    reportCompressedSize: false,
    // What is needed beyond the first screen is two files, the second of which builds on the first: many small ones are
    // larger together, and asking for each of them takes its time.
    rolldownOptions: {
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [
            { debugName: 'world', name: later('world', OF_THE_WORLD) },
            { debugName: 'bench', name: later('bench', OF_THE_BENCH) },
          ],
        },
      },
    },
  },
  preview: { host: '127.0.0.1', port: 4173 },
  test: {
    environment: 'node',
    expect: { requireAssertions: true },
    sequence: { shuffle: true, sequencer: LongFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'floors',
          include: ['tests/**/*.test.{ts,tsx}'],
          // A package of the tests' own (tests/mutation) brings others' tests with it.
          exclude: [...configDefaults.exclude, 'tests/browser/**'],
          // Every core: left to itself one stays idle.
          maxWorkers: '100%',
          // Nothing is kept between files but what is read anew to the same end, so modules are loaded once a core.
          isolate: false,
          // Generous: a busy machine is no failure.
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          globalSetup: 'tests/browser/globalSetup.ts',
          setupFiles: 'tests/browser/setup.ts',
          // More than the cores of a small machine: a person at a page waits more than works.
          maxWorkers: 3,
          isolate: false,
          // A browser may stall on a busy machine. What fails twice fails.
          retry: 1,
        },
      },
    ],
  },
});
