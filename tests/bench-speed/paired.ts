/*
 * One process of engineSpeed.ts: two engines, that in the folder given and the one here, verify every scenario turn and
 * turn about. What is timed as the first verification of a scenario comes after others have been verified, so that the
 * code is warm on both sides and the scenario is not.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cpuTime, type Paired } from './engineSpeed.ts';
import { medianOf } from './median.ts';

const ROOT = join(import.meta.dirname, '../..');
const [start = '', share = '0'] = process.argv.slice(2);

interface Engine {
  readonly parseScenario: typeof import('../../src/scenario/scenarioText.ts').parseScenario;
  readonly verify: typeof import('../../src/scenario/verify.ts').verify;
}

async function engineIn(folder: string): Promise<Engine> {
  const { parseScenario } = await import(join(folder, 'src/scenario/scenarioText.ts'));
  const { verify } = await import(join(folder, 'src/scenario/verify.ts'));
  return { parseScenario, verify };
}

const engines = [await engineIn(start), await engineIn(ROOT)] as const;

/** A copy at each verification: what was carried out to check a handover is done in it as well. */
const verifyOn = (engine: Engine, text: string) => {
  const read = engine.parseScenario(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  return () => engine.verify(structuredClone(read.scenario));
};

/** The start does not know what came into the format, nor the causes of the catalogue, after it. */
const isForBoth = (file: string): boolean => {
  const text = readFileSync(join(ROOT, 'scenarios', file), 'utf8');
  return engines.every((engine) => engine.parseScenario(text).ok);
};

const files = readdirSync(join(ROOT, 'scenarios')).filter(
  (name) => name.endsWith('.json') && isForBoth(name),
);
const from = Math.floor(Number(share) * files.length);
const order = [...files.slice(from), ...files.slice(0, from)];
const paired: Paired = {};
for (const [i, file] of order.entries()) {
  const text = readFileSync(join(ROOT, 'scenarios', file), 'utf8');
  const works = engines.map((engine) => verifyOn(engine, text)) as [() => unknown, () => unknown];
  // Whoever comes second finds warmer caches of the machine: turn and turn about here too.
  const sides = i % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const);
  const first: [number, number] = [0, 0];
  for (const side of sides) first[side] = cpuTime(works[side], 1);
  const again: [number[], number[]] = [[], []];
  for (let turn = 0; turn < 7; turn++) for (const side of sides) again[side].push(cpuTime(works[side], 1));
  // The first half only warms the code.
  if (i >= order.length / 2)
    paired[file.replace('.json', '')] = { first, again: [medianOf(again[0]), medianOf(again[1])] };
}
console.log(JSON.stringify(paired));
