// How the page is built and how the tests are found and run. The floors' tests run in Node; the browser's
// tests open the built page. What a full check consists of is in tests/run.mjs.

import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { configDefaults, defineConfig } from 'vitest/config';
import { NO_SUCH_PAGE, noSuchPage } from './src/ui/offline/noSuchPage.ts';
import { LongFirst } from './tests/longFirst.ts';

const TARGET = 'es2023';

/**
 * What the built page may load and do: its own files alone, and no text ever becomes a script, but for the address of
 * its workers (src/ui/flow/ownWorker.ts, which has the policy's name too). The development server adds inline scripts
 * and goes without.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types own-worker',
].join('; ');

const ownFilesOnly: Plugin = {
  name: 'own-files-only',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
};

/** `npm start` answers a person who asks for a page that is none with one that says so; whoever asks for a file gets none. */
const noSuchAddress: Plugin = {
  name: 'no-such-address',
  configurePreviewServer: ({ config, middlewares }) => {
    const folder = resolve(config.root, config.build.outDir);
    // Comes after every file has been looked for but pages, which vite serves last.
    return () => {
      middlewares.use((request, response, next) => {
        const isPerson = request.headers.accept?.includes('text/html') ?? false;
        if (!isPerson || isPageIn(folder, request.url ?? '')) return next();
        response.writeHead(NO_SUCH_PAGE.status, { ...config.preview.headers, ...NO_SUCH_PAGE.headers });
        response.end(request.method === 'HEAD' ? undefined : noSuchPage('/'));
      });
    };
  },
};

function isPageIn(folder: string, address: string): boolean {
  try {
    const path = decodeURIComponent(new URL(address, 'http://here').pathname);
    return path.endsWith('.html') && existsSync(join(folder, path));
  } catch {
    // No address at all.
    return false;
  }
}

/**
 * Installable, and whole without a network after the first visit. A newer version is fetched beside the one in use
 * and waits until somebody takes it (src/ui/flow/newVersion.ts); only the very first one serves the open page at once.
 */
const offline = VitePWA({
  strategies: 'injectManifest',
  srcDir: 'src/ui/offline',
  filename: 'sw.ts',
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
  injectManifest: {
    globPatterns: ['**/*.{html,css,js,svg,png,txt}'],
    // Pictures of the README, which the page never shows.
    globIgnores: ['pictures/**'],
    rollupFormat: 'iife',
    target: TARGET,
    sourcemap: false,
  },
  // Its own build would tell on standard output what it does, where `npm start` prints the page's address alone.
  integration: {
    configureCustomSWViteBuild: (worker) => {
      worker.logLevel = 'warn';
    },
  },
});

type ModuleInfo = (id: string) => { readonly importers: readonly string[]; readonly isEntry: boolean } | null;
type IsRoot = (id: string, info: NonNullable<ReturnType<ModuleInfo>>) => boolean;

/** Whether a file comes with one of these: whether one of them imports it, or imports what imports it, without asking for more. */
function comesWith(isRoot: IsRoot, id: string, infoOf: ModuleInfo, seen = new Set<string>()): boolean {
  if (seen.has(id)) return false;
  seen.add(id);
  const info = infoOf(id);
  if (info === null) return false;
  return isRoot(id, info) || info.importers.some((importer) => comesWith(isRoot, importer, infoOf, seen));
}

/** The screens with this in their paths. */
const screens = (path: RegExp): IsRoot => {
  const whole = new RegExp(`/src/ui/screens/(${path.source})\\.tsx$`);
  return (id) => whole.test(id);
};
const FIRST_SCREEN: IsRoot = (_, { isEntry }) => isEntry;
const WITHOUT_BENCH = screens(/Access|elsewhere\/NotInHand/);
const JOBS = screens(/Choose/);
const BENCH: IsRoot = (id) =>
  /\/src\/ui\/(screens\/AttemptScreen\.tsx|flow\/(start|testWords)\.ts)$/.test(id);
/** The lines of the tests of one aim, and their words. */
const OF_AIM = /\/src\/(?:words\/tests|verification\/linesByAim)\/(\w+)\.ts$/;
const TESTS: IsRoot = (id) => OF_AIM.test(id);
const FOR_WORDS_OF_ALL = /\/src\/words\/values\.ts$/;
/** Every cause by its name, where one is put right. */
const CAUSES: IsRoot = (id) =>
  /\/src\/(ui\/screens\/bench\/PutRightDialog\.tsx|words\/namedCauses\.ts)$/.test(id);
/** What is opened, given out and handed in: files as they are read and written, and whatever says what is wrong with one. */
const FILES: IsRoot = (id, info) =>
  /\/src\/(ui\/flow\/opening|store\/broughtIn|scenario\/aimAddressProblems)\.ts$/.test(id) ||
  screens(/elsewhere\/(EarlierFormat|Leaving|ReadOnly)|give\/(Given|GivenAndCollected|Held)/)(id, info);
/** What files are held to, with whatever that needs. */
const SCHEMAS: IsRoot = (id) => /\/src\/.*[sS]chemas?\.ts$/.test(id);
const PAGES = screens(/firstRun\/FirstRun|Sources|Words/);
/** Traces of readings, for benches on which something is read that has one; questions show some too. */
const TRACES: IsRoot = (id) => /\/src\/ui\/drawing\/traces\/ReadingTrace\.tsx$/.test(id);
/** What is opened where a test is told; the conclusion builds on it. */
const TOLD = screens(/bench\/ToldPlace|firstRun\/OpenedUp/);
const CONCLUSION = screens(/conclude\/Conclude|debrief\/Debrief/);
const DESK = screens(/desk\/Desk/);
const GIVE = screens(/give\/Give/);
const COLLECT = screens(/collect\/Collect/);
const RECORD = screens(/record\/MyRecord|worked\/Worked/);
const QUESTIONS = screens(/questions\/Questions/);
const QUESTION_BENCH = screens(/questions\/QuestionBench/);
const QUIZ = screens(/questions\/MakeQuiz/);

/** The simulated installation and what is written of its tests, with the libraries that these stand on. */
const OF_THE_WORLD =
  /src\/((laws|network|site|unit|faults|bench|verification|scenario)\/|words\/\w+\.ts$)|node_modules\/(xstate|@noble)\//;

/** What no screen and no text is: it needs neither, so that its piece needs none of theirs. */
const BELOW_WORDS = /src\/(?!ui\/|words\/)/;

/**
 * What is loaded beyond the first screen, in few pieces: many small ones are larger together, and asking for each of them
 * takes its time. Each has what comes with its screens and with nothing before it, and builds on those before it.
 */
const PIECES: readonly { readonly name: string; readonly of: IsRoot; readonly only?: RegExp }[] = [
  { name: 'world', of: (id, info) => BENCH(id, info) || FOR_WORDS_OF_ALL.test(id), only: OF_THE_WORLD },
  { name: 'bench', of: BENCH },
  { name: 'tests', of: TESTS },
  { name: 'traces', of: TRACES },
  { name: 'jobs', of: JOBS },
  { name: 'causes', of: CAUSES },
  { name: 'schemas', of: SCHEMAS },
  { name: 'files', of: FILES },
  { name: 'pages', of: PAGES },
  { name: 'told', of: TOLD },
  { name: 'marks', of: CONCLUSION, only: BELOW_WORDS },
  { name: 'conclusion', of: CONCLUSION },
  { name: 'record', of: RECORD },
  { name: 'desk', of: DESK },
  { name: 'questions', of: QUESTIONS },
  { name: 'question-bench', of: QUESTION_BENCH },
  { name: 'give', of: GIVE },
  { name: 'collect', of: COLLECT },
  { name: 'quiz', of: QUIZ },
];

const pieceOf = (id: string, context: { getModuleInfo: ModuleInfo }): string | null => {
  const infoOf: ModuleInfo = (of) => context.getModuleInfo(of);
  if (comesWith(FIRST_SCREEN, id, infoOf)) return 'first';
  // What these need the bundler keeps apart by itself.
  if (comesWith(WITHOUT_BENCH, id, infoOf)) return null;
  const piece = PIECES.find(({ of, only }) => (only?.test(id) ?? true) && comesWith(of, id, infoOf));
  return piece?.name === 'tests' ? testsPieceOf(id, infoOf) : (piece?.name ?? null);
};

/** Tests come by aims; what those of several need is one piece more. */
function testsPieceOf(id: string, infoOf: ModuleInfo): string {
  const aims = new Set<string>();
  const isOfAnother: IsRoot = (of) => {
    const aim = OF_AIM.exec(of)?.[1];
    if (aim !== undefined) aims.add(aim);
    return aims.size > 1;
  };
  return comesWith(isOfAnother, id, infoOf) ? 'tests-shared' : `tests-${[...aims]}`;
}

// Tests run react as it is shipped: its other build checks itself at every element, which takes several times as long.
if (process.env.VITEST) process.env.NODE_ENV = 'production';

export default defineConfig({
  base: './',
  // Its screens are told apart behind the #: what the host has not is no page of it.
  appType: 'mpa',
  plugins: [react(), ownFilesOnly, noSuchAddress, offline],
  // React has had itself for years what this stands in for.
  resolve: { alias: [{ find: /^use-sync-external-store\/shim(\/index\.js)?$/, replacement: 'react' }] },
  build: {
    target: TARGET,
    // No lists of what else to load with a piece: most builds on what is there before it is asked for, and soon after the
    // first visit the worker has it all.
    modulePreload: false,
    // Few styles, and all of them from the first screen on.
    cssCodeSplit: false,
    reportCompressedSize: false,
    rolldownOptions: {
      // To read a property does nothing here, and what is constant stands where it is used.
      treeshake: { propertyReadSideEffects: false },
      optimization: { inlineConst: { mode: 'all', pass: 3 } },
      output: {
        // By gzip it is the smaller so.
        topLevelVar: false,
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ debugName: 'pieces', name: pieceOf }],
        },
        chunkFileNames: 'assets/[name]-[hash].js',
      },
    },
  },
  // What works beside the page is a module like it, in one piece of its own, since it shares nothing with the page while it runs.
  worker: { format: 'es', rolldownOptions: { output: { entryFileNames: 'assets/[name]-[hash].js' } } },
  preview: {
    host: '127.0.0.1',
    port: 4173,
    // What a meta element cannot say; README.md advises any host to send the same.
    headers: {
      'Content-Security-Policy': "frame-ancestors 'none'",
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
    },
  },
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
          // Nothing waits for words or lines here.
          setupFiles: ['src/words/allTests.ts', 'src/verification/allLines.ts'],
          // Every core: left to itself one stays idle.
          maxWorkers: '100%',
          // Nothing is kept between files but what is read anew to the same end, so modules are loaded once a core.
          isolate: false,
          // Generous: a busy machine is no failure.
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          // As long as any story may take on a machine that does much else beside it; nothing is measured by the clock.
          testTimeout: 240_000,
          hookTimeout: 120_000,
          globalSetup: 'tests/browser/globalSetup.ts',
          setupFiles: 'tests/browser/setup.ts',
          // More than the cores of a small machine: a person at a page waits more than works.
          maxWorkers: 4,
          isolate: false,
          // A browser may stall on a busy machine. What fails twice fails.
          retry: 1,
          // A page that is asked again and again whether it shows something by now may take its time too.
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
