/** What goes out with the page of licences: the trainer's own, then those of the packages whose code is in it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const ENTRIES = ['index.html', 'src/ui/offline/sw.ts'];
const RULE = '='.repeat(78);

/** What the build adds of its own, by how it names such a module, and the package that has it. */
const ADDED = { vite: 'node_modules/vite', rolldown: 'node_modules/rolldown' } as const;

/**
 * Folders, by path from the root, of the packages of which code is in the built page or its worker, by the build's own
 * account.
 */
async function shippedFolders(): Promise<readonly string[]> {
  const input = ENTRIES.map((name) => join(ROOT, name));
  const built = await build({
    root: ROOT,
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, minify: false, rolldownOptions: { input } },
  });
  if (!('output' in built)) throw new Error('the build gave no output');
  const chunks = built.output.filter((file) => file.type === 'chunk');
  const modules = chunks.flatMap(({ modules }) => Object.entries(modules));
  const folders = modules.flatMap(([id, { renderedLength }]) => (renderedLength > 0 ? folderOf(id) : []));
  return [...new Set(folders)].toSorted();
}

/** None for the trainer's own files. */
function folderOf(module: string): readonly string[] {
  if (module.startsWith('\0')) {
    const added = Object.entries(ADDED).find(([name]) => module.startsWith(`\0${name}/`));
    if (added === undefined) throw new Error(`it is not known whose code ${JSON.stringify(module)} is`);
    return [added[1]];
  }
  const path = relative(ROOT, module).replaceAll('\\', '/');
  return path.match(/^.*node_modules\/(?:@[^/]+\/)?[^/]+/) ?? [];
}

/** The text of the licence that a package carries. */
function licenceIn(folder: string): string {
  const file = readdirSync(join(ROOT, folder)).find((name) => /^licen[cs]e/i.test(name));
  if (file === undefined) return 'The package carries no text of its licence.';
  const text = readFileSync(join(ROOT, folder, file), 'utf8').replaceAll('\r\n', '\n');
  // Vite's own is followed by those of what it is built with, none of which it puts into a page.
  return text.replace(/\n# Licenses of bundled dependencies\n.*/s, '').trim();
}

/** The whole text; packages that share a licence to the letter share its place. Versions are the lock file's. */
export async function noticesText(): Promise<string> {
  const { packages } = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8'));
  const namesByLicence = new Map<string, string[]>();
  for (const folder of await shippedFolders()) {
    const { version, license } = packages[folder];
    const text = `Licence: ${license}\n\n${licenceIn(folder)}`;
    const name = `${folder.replace(/^.*node_modules\//, '')} ${version}`;
    namesByLicence.set(text, [...(namesByLicence.get(text) ?? []), name]);
  }
  return [
    `Charge point trainer\n\n${readFileSync(join(ROOT, 'LICENSE'), 'utf8').trim()}`,
    'The page holds code of these packages too.',
    ...[...namesByLicence].map(([text, names]) => `${names.join('\n')}\n\n${text}`),
  ]
    .map((part) => `${part}\n`)
    .join(`\n${RULE}\n\n`);
}
