/*
 * How much JavaScript the page is, beside a bare page of the same libraries that is built in the same run. Prints
 * lines; the limits are held by tests/browser/size.test.ts.
 */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build, type Rolldown } from 'vite';
import type { Compressed } from '../browser/size.ts';
import { compressed, scriptsLoaded, scriptsOfAll, sizeOf } from '../browser/size.ts';

/** React and one machine of two states: the least that a page of this kind can be. */
const BARE = `
import { createElement } from 'react';
import { createRoot } from 'react-dom/client';
import { setup } from 'xstate';
import { useMachine } from '@xstate/react';
const machine = setup({}).createMachine({ initial: 'off', states: { off: { on: { press: 'on' } }, on: { on: { press: 'off' } } } });
function App() {
  const [state, send] = useMachine(machine);
  return createElement('button', { onClick: () => send({ type: 'press' }) }, String(state.value));
}
createRoot(document.body).render(createElement(App));
`;

const NAME = 'virtual:bare';

async function barePage(): Promise<Compressed> {
  const built = await build({
    root: join(import.meta.dirname, '../..'),
    configFile: false,
    logLevel: 'error',
    plugins: [
      {
        name: 'bare-page',
        resolveId: (id) => (id === NAME ? `\0${NAME}` : null),
        load: (id) => (id === `\0${NAME}` ? BARE : null),
      },
    ],
    build: { write: false, target: 'es2023', rolldownOptions: { input: NAME } },
  });
  const { output } = (Array.isArray(built) ? built[0] : built) as Rolldown.RolldownOutput;
  return compressed(output.flatMap((file) => (file.type === 'chunk' ? [file.code] : [])));
}

const line = (name: string, { gzip, brotli }: Compressed, limit = ''): string =>
  `  ${name}: ${gzip.toFixed(1)} KiB gzip, ${brotli.toFixed(1)} KiB Brotli${limit}`;

export async function printSizes(page: Page): Promise<void> {
  console.log('JavaScript of the page, file by file');
  console.log(line('a bare React and xstate page, built now', await barePage()));
  console.log(line('here, the first screen', sizeOf(await scriptsLoaded(page)), ' (at most 88 gzip)'));
  console.log(line('here, all of it', sizeOf(scriptsOfAll())));
}
