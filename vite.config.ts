// How the page is built and how the tests are found and run. The floors' tests run in Node; the browser's
// tests open the built page, one at a time. What a full check consists of is in tests/run.mjs.

import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/** The built page loads nothing but its own files. The development server adds inline scripts and goes without. */
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

export default defineConfig({
  base: './',
  plugins: [react(), ownFilesOnly],
  build: { target: 'es2023', reportCompressedSize: false },
  preview: { host: '127.0.0.1', port: 4173 },
  test: {
    environment: 'node',
    expect: { requireAssertions: true },
    sequence: { shuffle: true },
    projects: [
      {
        extends: true,
        test: {
          name: 'floors',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          // Every core: left to itself one stays idle.
          maxWorkers: '100%',
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
          fileParallelism: false,
        },
      },
    ],
  },
});
