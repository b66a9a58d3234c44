// `npm test`: installs what is missing, runs every check, then every test, goes on after a failure, and says at the end
// how many passed. Each test counts as one, and so does each check that is no test; one that passed only at a second
// try is named, with what was wrong at the first. The last line of standard output is `N passed, N failed` alone.

import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { ensureInstalled, root } from '../src/cli/installed.mjs';

ensureInstalled();

/** Seed of the order in which tests run; given again in CHARGE_TRAINER_TEST_SEED it repeats that order. */
const seed = process.env.CHARGE_TRAINER_TEST_SEED ?? String(Date.now());
const reports = mkdtempSync(join(tmpdir(), 'charge-trainer-'));

/** Colours only where a person sees them: whatever reads the output of a run elsewhere gets plain text. */
const env = process.stdout.isTTY ? process.env : { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined };

// The checks use one core each, so they run beside each other; the tests use every core.
const checks = await Promise.all([
  check('types', 'typescript/bin/tsc'),
  check('format and lint', '@biomejs/biome/bin/biome', 'ci', '--error-on-warnings'),
  check('unused code and packages', 'knip/bin/knip.js'),
  check('build', 'vite/bin/vite.js', 'build', '--logLevel', 'warn'),
]);
const results = [...checks, tests('floors'), tests('browser')];
rmSync(reports, { recursive: true, force: true });

console.log(`\nOrder of tests: CHARGE_TRAINER_TEST_SEED=${seed}`);
for (const { name, again } of results)
  for (const { test, file, reason } of again)
    console.log(`AGAIN  ${name}: "${test}" (${file}) passed only when tried again. First: ${reason}`);
for (const { name, passed, failed, skipped } of results) {
  const left = skipped > 0 ? `, ${skipped} skipped` : '';
  console.log(`${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed${left}`);
}
const passed = sum('passed');
const failed = sum('failed');
process.exitCode = failed === 0 ? 0 : 1;
console.log(`${passed} passed, ${failed} failed`);

function sum(count) {
  return results.reduce((total, result) => total + result[count], 0);
}

/** A package's command by its file, which works alike on every system. */
function words(command, ...more) {
  return [join(root, 'node_modules', command), ...more];
}

/** What it prints is kept until it has ended, so that what two of them say does not mix. */
async function check(name, command, ...more) {
  const child = spawn(process.execPath, words(command, ...more), { cwd: root, env });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => said.push(part));
  const sound = await new Promise((resolve) => {
    child.on('error', (error) => {
      said.push(Buffer.from(`${error.message}\n`));
      resolve(false);
    });
    child.on('close', (code) => resolve(code === 0));
  });
  console.log(`\n== ${name}`);
  process.stdout.write(Buffer.concat(said));
  return { name, passed: sound ? 1 : 0, failed: sound ? 0 : 1, skipped: 0, again: [] };
}

/** Runs one of the projects named in vite.config.ts and counts its tests. */
function tests(project) {
  const name = `tests, ${project}`;
  console.log(`\n== ${name}`);
  const report = join(reports, `${project}.json`);
  const asked = words(
    'vitest/vitest.mjs',
    'run',
    ...['--project', project, '--allowOnly=false', `--sequence.seed=${seed}`],
    ...['--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
  );
  const { status } = spawnSync(process.execPath, asked, { cwd: root, env, stdio: 'inherit' });
  return { name, ...countTests(report, status === 0) };
}

/**
 * Counts from a report. A test file that fails outside its tests counts as one failed; so does a run that leaves
 * no report, holds no test, or ends badly though every test passed.
 */
function countTests(report, sound) {
  let files = [];
  try {
    files = JSON.parse(readFileSync(report, 'utf8')).testResults;
  } catch (error) {
    console.error(`The test run left no report that can be read: ${error.message}`);
  }
  const states = files.flatMap((file) => file.assertionResults.map(({ status }) => status));
  // The report keeps why a test failed though it passed afterwards.
  const again = files.flatMap(({ name, assertionResults }) =>
    assertionResults
      .filter(({ status, failureMessages }) => status === 'passed' && failureMessages.length > 0)
      .map(({ fullName, failureMessages: [first] }) => ({
        test: fullName,
        file: relative(root, name),
        reason: withoutCalls(first),
      })),
  );
  const count = (status) => states.filter((state) => state === status).length;
  const passed = count('passed');
  const brokenFiles = files.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some(({ status }) => status === 'failed'),
  ).length;
  const failed = count('failed') + brokenFiles;
  const unseen = failed === 0 && (!sound || passed === 0) ? 1 : 0;
  return { passed, failed: failed + unseen, skipped: states.length - passed - count('failed'), again };
}

/** What went wrong and where in the tests, without the calls inside packages. */
function withoutCalls(message) {
  const isCall = (line) => /^ {4}at .*(node_modules|node:|<anonymous>)/.test(line);
  return message
    .split('\n')
    .filter((line) => !isCall(line))
    .join('\n');
}
