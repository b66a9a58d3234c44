/*
 * The process of engineSpeed.ts in which two engines, that in the folder given and the one here, verify every scenario
 * turn and turn about. Each time the circuit is a hair longer than ever before, so that the installation is a new one;
 * the first rounds warm the code and count for nothing. Then the same installation once more.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cpuTime, type Paired } from './engineSpeed.ts';
import { medianOf } from './median.ts';

const ROOT = join(import.meta.dirname, '../..');
const [start = ''] = process.argv.slice(2);

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

/** The start does not know what came into the format, nor the causes of the catalogue, after it. */
const files = readdirSync(join(ROOT, 'scenarios'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => [name.replace('.json', ''), readFileSync(join(ROOT, 'scenarios', name), 'utf8')] as const)
  .filter(([, text]) => engines.every((engine) => engine.parseScenario(text).ok));

/** Metres by which a circuit is longer each time. */
const HAIR = 1e-4;
const ROUNDS = { warming: 4, timed: 7 };

/** A copy at each verification: what was carried out to check a handover is done in it as well. */
const verifyOn = ({ parseScenario, verify }: Engine, text: string, longer: number) => {
  const read = parseScenario(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  const { circuit } = read.scenario.site;
  const scenario = {
    ...read.scenario,
    site: { ...read.scenario.site, circuit: { ...circuit, length: circuit.length + longer } },
  };
  return () => verify(structuredClone(scenario));
};

type Times = Record<keyof Paired[string], readonly [number[], number[]]>;
const times: Record<string, Times> = {};
for (let round = 0; round < ROUNDS.warming + ROUNDS.timed; round++)
  for (const [i, [name, text]] of files.entries()) {
    const works = engines.map((engine) => verifyOn(engine, text, HAIR * (1 + round))) as [
      () => unknown,
      () => unknown,
    ];
    times[name] ??= { first: [[], []], again: [[], []] };
    // Whoever comes second finds warmer caches of the machine: turn and turn about here too.
    const sides = (i + round) % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const);
    for (const which of ['first', 'again'] as const)
      for (const side of sides) {
        const took = cpuTime(works[side], 1);
        if (round >= ROUNDS.warming) times[name][which][side].push(took);
      }
  }
const medians = ([there, here]: readonly [number[], number[]]) => [medianOf(there), medianOf(here)] as const;
const paired: Paired = Object.fromEntries(
  Object.entries(times).map(([name, { first, again }]) => [
    name,
    { first: medians(first), again: medians(again) },
  ]),
);
console.log(JSON.stringify(paired));
