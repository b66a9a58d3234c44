// A class by the command line: a platform's zip against what was given out, as a table; and every file that giving out makes
// passes `check`.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { zipSync } from 'fflate';
import { afterAll, expect, test } from 'vitest';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { forLearners, givingText } from '../../src/desk/giving.ts';
import { sealed } from '../../src/desk/seal.ts';
import { handedIn } from '../desk/handedIn.ts';
import { CRYPTO, givingOf, readGiving } from '../desk/helpers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const ROOT = join(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'collect-'));
afterAll(() => rmSync(folder, { recursive: true }));

function cli(...args: readonly string[]) {
  const program = ['--import', 'tsx', join(ROOT, 'src/cli/main.ts'), ...args];
  return spawnSync(process.execPath, program, { cwd: ROOT, encoding: 'utf8' });
}

function written(name: string, content: string | Uint8Array): string {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
}

const dyers = scenarioNamed('find-dyers-row').file as object;
const giving = givingOf([dyers], { tutor: { second: 'otter', notes: {} } });
const own = written('tutor.json', givingText(giving));

test('mark --csv of a zip against what was given out: a row each, none lost', () => {
  const came = handedIn(readGiving(giving), 3);
  const text = new TextEncoder();
  const zip = zipSync({
    ...Object.fromEntries(
      came.map((one) => [`${one.trainee}/late/try.json`, text.encode(makeAttemptText(one))]),
    ),
    'yew-22/hostile.json': text.encode('{"trainee":"=1+1","format":2,"entries":[]}'),
    'oak-03/notes.txt': text.encode('no attempt'),
    '../out.json': text.encode('{}'),
  });
  const file = written('class.zip', zip);
  const { stdout, stderr, status } = cli('mark', file, '--against', own, '--csv');
  const rows = parse(stdout, { columns: true }) as Record<string, string>[];
  expect(rows).toHaveLength(6);
  for (const one of came)
    expect(rows.find(({ label }) => label === one.trainee)).toMatchObject({
      total: String((one.marks as { total: number }).total),
      counted: 'yes',
    });
  expect(rows.map(({ label }) => label)).toContain("'=1+1");
  expect(stderr).toMatch(/class\.zip\/oak-03\/notes\.txt: no attempt/);
  expect(stderr).toMatch(/\.\.\/out\.json: its path leads out of the zip/);
  expect(status).toBe(2);
});

test('every file that giving out makes passes check, sealed or not; a broken one does not', async () => {
  const learners = givingText(forLearners(giving));
  const closed = JSON.stringify(await sealed(learners, 'otter', CRYPTO, 10_000));
  const files = [own, written('learners.json', learners), written('sealed.json', closed)];
  const wrong = written('wrong.json', givingText({ ...giving, jobs: [{ ...dyers, allowed: ['nonsense'] }] }));
  const { stdout, status } = cli('check', ...files, wrong);
  for (const file of files) expect(stdout).toContain(`${file}: ok\n`);
  expect(stdout).toContain(`${wrong}: jobs[0].allowed`);
  expect(status).toBe(1);
});
