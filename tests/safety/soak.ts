/*
 * A million sequences over all cores, then two hundred thousand spoilt files, or as many as are named: `npm run soak --
 * 1000000 SEED 200000`. Every core does its own part in a process of its own; the first that goes wrong ends them all.
 * Then 500 pairs and 500 triples of faults; 500 sound units on each kind of site; whether every job that ships, and sixty
 * drawn ones, can be solved; tampered attempts; questions of ten thousand seeds.
 */
import { fork, spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { sweepTampered } from '../desk/sweep.ts';
import { sweepFairness } from '../fairness/sweep.ts';
import { runTogether } from '../faults/together.ts';
import { sweepQuestions } from '../quiz/sweep.ts';
import { runSequence } from './sequences.ts';
import { takeFile } from './takenFile.ts';

/** Longest that one file may take, s of a core's time: what else the machine does is no failure. */
const LONGEST = 2;

/** Pairs of faults, and as many triples. */
const TOGETHER = 500;

const SEEDS_OF_QUESTIONS = 10_000;

/** What is soaked, each by its number. */
const PARTS = {
  sequences: { saidEvery: 10_000, run: runSequence },
  files: { saidEvery: 2000, run: fileInTime },
} as const;
type Part = keyof typeof PARTS;

/** What a process tells the one that began it: how many were done since it last spoke, or what went wrong. */
type Told = { readonly done: number; readonly worst: number } | { readonly wrong: string };

const [sequences = '1000000', seed = '1', files = '200000', part, first, step] = process.argv.slice(2);
if (part === undefined) await lead();
else work(part as Part, Number(part === 'files' ? files : sequences), Number(first), Number(step));

async function lead(): Promise<void> {
  const wrong = (await leadPart('sequences', Number(sequences))) ?? (await leadPart('files', Number(files)));
  if (wrong !== null) process.stdout.write(`${wrong}\n`);
  const parts = [faultsTogether, soundUnits, fairJobs, tamperedFiles, wholeQuestions];
  process.exitCode = wrong === null ? (parts.map((part) => part()).find((code) => code !== 0) ?? 0) : 1;
}

/** Does all of a part; what went wrong, or null. */
function leadPart(part: Part, total: number): Promise<string | null> {
  const cores = availableParallelism();
  const processes = Array.from({ length: cores }, (_, i) =>
    fork(import.meta.filename, [sequences, seed, files, part, i, cores].map(String)),
  );
  let done = 0;
  let worst = 0;
  let left = cores;
  return new Promise((resolve) => {
    const end = (wrong: string | null): void => {
      resolve(wrong);
      for (const one of processes) one.kill();
    };
    for (const one of processes) {
      one.on('message', (told: Told) => {
        if ('wrong' in told) return end(told.wrong);
        done += told.done;
        worst = Math.max(worst, told.worst);
        const time = `${worst.toFixed(2)} s for the slowest`;
        process.stdout.write(`${done} of ${total} ${part}, seed ${seed}, ${time}: nothing wrong\n`);
      });
      one.on('exit', (code) => {
        left -= 1;
        if (code !== 0) end(`a process ended early, with ${code}`);
        else if (left === 0) end(done === total ? null : `only ${done} ${part} were done`);
      });
    }
  });
}

/** Pairs and triples of faults; the exit code. */
function faultsTogether(): number {
  const wrong = [2, 3].flatMap((size) =>
    Array.from({ length: TOGETHER }, (_, i) => runTogether(size, Number(seed), i)).filter(
      (one) => one !== null,
    ),
  );
  for (const one of wrong) process.stdout.write(`wrong: ${one}\n`);
  process.stdout.write(`${2 * TOGETHER} pairs and triples of faults: ${wrong.length} went wrong\n`);
  return wrong.length === 0 ? 0 : 1;
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

/** Every job that ships and sixty drawn ones can be solved; the exit code. */
function fairJobs(): number {
  const wrong = sweepFairness((line) => process.stdout.write(`${line}\n`));
  for (const one of wrong) process.stdout.write(`wrong: ${one}\n`);
  return wrong.length === 0 ? 0 : 1;
}

/** A thousand tampered attempts and two hundred doctored scenarios are marked by the tutor's copy; the exit code. */
function tamperedFiles(): number {
  const wrong = sweepTampered({ tampered: 1000, doctored: 200, seed: Number(seed) });
  process.stdout.write(
    wrong.length === 0 ? '1200 files collected: nothing wrong\n' : `${wrong.join('\n')}\n`,
  );
  return wrong.length === 0 ? 0 : 1;
}

/** Questions of ten thousand seeds are whole; the exit code. */
function wholeQuestions(): number {
  const wrong = sweepQuestions(SEEDS_OF_QUESTIONS);
  process.stdout.write(`${wrong ?? `${SEEDS_OF_QUESTIONS} seeds of questions: nothing wrong`}\n`);
  return wrong === null ? 0 : 1;
}

/** What went wrong with a file, or that it took too long. */
function fileInTime(from: number, index: number): string | null {
  // The first of a process has much to make ready.
  if (index < availableParallelism()) takeFile(from, index);
  const before = process.cpuUsage();
  const { wrong } = takeFile(from, index);
  const took = secondsSince(before);
  return wrong ?? (took > LONGEST ? `file ${index}, seed ${from}: ${took.toFixed(1)} s` : null);
}

function secondsSince(before: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

function work(part: Part, total: number, first: number, step: number): void {
  const { run, saidEvery } = PARTS[part];
  let done = 0;
  let worst = 0;
  const tell = (told: Told): void => {
    process.send?.(told);
  };
  for (let i = first; i < total; i += step) {
    const before = process.cpuUsage();
    const wrong = run(Number(seed), i);
    if (i !== first) worst = Math.max(worst, secondsSince(before));
    if (wrong !== null) {
      tell({ wrong });
      return;
    }
    done += 1;
    if (done === saidEvery) {
      tell({ done, worst });
      done = 0;
    }
  }
  if (done > 0) tell({ done, worst });
}
