// `npm start`: installs what is missing, builds the page and shows it on this machine until stopped. Standard
// output carries the page's address alone; what is being done goes to standard error.

import { parseArgs } from 'node:util';
import { ensureInstalled, root } from './installed.mjs';

/** Vite's own choice for a built page; the next free one if it is taken. */
const DEFAULT_PORT = '4173';

const { values } = parseArgs({ options: { port: { type: 'string', default: DEFAULT_PORT } } });
const port = Number(values.port);
if (!Number.isInteger(port) || port < 1 || port > 65_535) {
  console.error(`--port ${values.port}: a port is a whole number from 1 to 65535.`);
  process.exit(1);
}

ensureInstalled();
const { build, preview } = await import('vite');
console.error('Building the page …');
await build({ root, logLevel: 'warn' });
const server = await preview({ root, logLevel: 'warn', preview: { host: '127.0.0.1', port } });
console.log(`http://127.0.0.1:${server.httpServer.address().port}/`);
console.error('Stop with Ctrl+C.');
