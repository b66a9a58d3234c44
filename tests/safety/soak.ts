/*
 * A million sequences over all cores, or as many as are named: `npm run soak -- 1000000 SEED`. Every core does its own
 * part in a process of its own; the first sequence that goes wrong ends them all. Then 500 sound units on each kind of
 * site.
 */
import { fork, spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { runSequence } from './sequences.ts';

/** How often a process says how far it is, sequences. */
const SAID_EVERY = 10_000;

/** What a process tells the one that began it: sequences done since it last spoke, or what went wrong. */
type Told = { readonly done: number } | { readonly wrong: string };

const [count = '1000000', seed = '1', part, parts] = process.argv.slice(2);
if (part === undefined) lead(Number(count), Number(seed), availableParallelism());
else work(Number(count), Number(seed), Number(part), Number(parts));

function lead(total: number, from: number, cores: number): void {
  let done = 0;
  const processes = Array.from({ length: cores }, (_, i) =>
    fork(import.meta.filename, [total, from, i, cores].map(String)),
  );
  const end = (text: string): void => {
    process.stdout.write(`${text}\n`);
    process.exitCode = 1;
    for (const one of processes) one.kill();
  };
  let left = cores;
  for (const one of processes) {
    one.on('message', (told: Told) => {
      if ('wrong' in told) return end(told.wrong);
      done += told.done;
      process.stdout.write(`${done} of ${total} sequences, seed ${from}: nothing wrong\n`);
    });
    one.on('exit', (code) => {
      left -= 1;
      if (code !== 0 && process.exitCode !== 1) end(`a process ended early, with ${code}`);
      else if (left === 0 && done !== total && process.exitCode !== 1)
        end(`only ${done} sequences were done`);
      else if (left === 0 && process.exitCode !== 1) process.exitCode = soundUnits();
    });
  }
}

/** The tests of them again with more; 0 if all pass. */
function soundUnits(): number {
  const root = join(import.meta.dirname, '../..');
  const words = ['run', '--project', 'floors', 'tests/verification/soundUnits'];
  const { status } = spawnSync(process.execPath, [join(root, 'node_modules/vitest/vitest.mjs'), ...words], {
    cwd: root,
    env: { ...process.env, SOUND_UNITS: '500' },
    stdio: 'inherit',
  });
  return status ?? 1;
}

function work(total: number, from: number, first: number, step: number): void {
  let unsaid = 0;
  const tell = (told: Told): void => {
    process.send?.(told);
  };
  for (let i = first; i < total; i += step) {
    const wrong = runSequence(from, i);
    if (wrong !== null) {
      tell({ wrong });
      return;
    }
    unsaid += 1;
    if (unsaid === SAID_EVERY) {
      tell({ done: unsaid });
      unsaid = 0;
    }
  }
  if (unsaid > 0) tell({ done: unsaid });
}
