// The lint rule that keeps what a browser's call returns out of react's hands: it has to find each way of writing that,
// and to leave alone what is right.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'charge-trainer-lint-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const RULE = join(import.meta.dirname, 'effectsInBraces.grit');
const BIOME = join(import.meta.dirname, '../../node_modules/@biomejs/biome/bin/biome');

/** Whether the rule has something against the line, used within a component. */
function isRefused(line: string): boolean {
  writeFileSync(
    join(folder, 'biome.json'),
    JSON.stringify({ plugins: [RULE], linter: { rules: { preset: 'none' } }, root: true }),
  );
  writeFileSync(join(folder, 'sample.tsx'), `export function Sample() {\n  ${line}\n}\n`);
  const { status, stdout, stderr } = spawnSync(process.execPath, [BIOME, 'lint', '.'], {
    cwd: folder,
    encoding: 'utf8',
  });
  const isFound = /in braces/.test(stderr);
  if (isFound !== (status !== 0)) throw new Error(`the linter failed by something else: ${stdout}${stderr}`);
  return isFound;
}

test.each([
  'useEffect(() => scrollTo(0, 0), [place]);',
  'useEffect(() => heading.current?.focus());',
  "useLayoutEffect(() => place?.scrollIntoView({ block: 'center' }), []);",
  'useEffect(() => { return scrollTo(0, 0); }, []);',
  'useEffect(() => { if (x) show(); return open && place.scrollIntoView(); }, []);',
  'return <h1 ref={(element) => element?.scrollIntoView()} />;',
])('refused: %s', (line) => {
  expect(isRefused(line)).toBe(true);
});

test.each([
  'useEffect(() => { scrollTo(0, 0); }, [place]);',
  'useEffect(() => { const stop = watch(); return stop; }, []);',
  'useEffect(() => { const at = () => width(2); return () => clearTimeout(timer); }, []);',
  'return <h1 ref={(element) => { element?.focus(); }} />;',
  'return <h1 ref={heading} />;',
])('left alone: %s', (line) => {
  expect(isRefused(line)).toBe(false);
});
