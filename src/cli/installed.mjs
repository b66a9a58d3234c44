// Sees to it that the packages in the lock file are there, on a fresh clone as after a pull. Plain Node: it is
// loaded before anything is installed. What is then started is the business of whoever calls it.

import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Oldest Node that the packages run on, as package.json's `engines` says. */
const OLDEST_NODE = [20, 19];

/** Installs what a folder's lock file asks for if it is not there; ends the process with a message if it cannot be. */
export function ensureInstalled(folder = root) {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1])) {
    console.error(
      `This needs Node ${OLDEST_NODE.join('.')} or newer; this is Node ${process.versions.node}.`,
    );
    process.exit(1);
  }
  if (isInstalled(folder)) return;
  const lockFile = relative(root, join(folder, 'package-lock.json'));
  console.error(`Installing the packages that ${lockFile} names (npm ci) …`);
  const npm = process.env.npm_execpath;
  const words = ['ci', '--include=dev', '--no-fund', '--no-audit'];
  const stdio = ['ignore', process.stderr, process.stderr];
  const { status, error } = npm
    ? spawnSync(process.execPath, [npm, ...words], { cwd: folder, stdio })
    : spawnSync('npm', words, { cwd: folder, stdio, shell: process.platform === 'win32' });
  if (status !== 0) {
    console.error(`npm ci did not succeed${error ? `: ${error.message}` : ''}. Nothing was started.`);
    process.exit(1);
  }
}

/** True if every package of the lock file is there in its version; those for other machines may be missing. */
function isInstalled(folder) {
  const wanted = packagesIn(join(folder, 'package-lock.json'));
  const there = packagesIn(join(folder, 'node_modules', '.package-lock.json'));
  return Object.entries(wanted).every(([path, { version, optional, devOptional }]) => {
    if (path === '') return true;
    if (!(path in there)) return optional === true || devOptional === true;
    return there[path].version === version && existsSync(join(folder, path));
  });
}

function packagesIn(lockFile) {
  return existsSync(lockFile) ? JSON.parse(readFileSync(lockFile, 'utf8')).packages : {};
}
