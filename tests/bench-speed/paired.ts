/*
 * The process of engineSpeed.ts in which two engines, that in the folder given and the one here, verify every scenario
 * turn and turn about. Each time the circuit is a hair longer than ever before, so that the installation is a new one;
 * the first rounds warm the code and count for nothing. Then the same installation once more: as whatever shows, marks or
 * tells asks for it, and carried out anew. At the end a bare replay of a whole job by the start, as its own log has it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { cpuTime, type Paired, TOLD, WARMING, WHICH, type Which } from './engineSpeed.ts';
import { medianOf } from './median.ts';

const ROOT = join(import.meta.dirname, '../..');
const [start = ''] = process.argv.slice(2);

interface Engine {
  readonly parseScenario: typeof import('../../src/scenario/scenarioText.ts').parseScenario;
  readonly verify: typeof import('../../src/scenario/verify.ts').verify;
  readonly anew: (scenario: Scenario) => unknown;
}

type Works = Readonly<Record<Which, () => unknown>>;

async function engineIn(folder: string): Promise<Engine> {
  const { parseScenario } = await import(join(folder, 'src/scenario/scenarioText.ts'));
  const { verify, verifying } = await import(join(folder, 'src/scenario/verify.ts'));
  return { parseScenario, verify, anew: (scenario) => toItsEnd(verifying(scenario)) };
}

const engines = [await engineIn(start), await engineIn(ROOT)] as const;

/** The start does not know what came into the format, nor the causes of the catalogue, after it. */
const files = readdirSync(join(ROOT, 'scenarios'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => [name.replace('.json', ''), readFileSync(join(ROOT, 'scenarios', name), 'utf8')] as const)
  .filter(([, text]) => engines.every((engine) => engine.parseScenario(text).ok));

/** Metres by which a circuit is longer each time. */
const HAIR = 1e-4;
const ROUNDS = { warming: 12, timed: 7 };

/** A copy at each verification: what was carried out to check a handover is done in it as well. */
const worksOn = ({ parseScenario, verify, anew }: Engine, text: string, longer: number): Works => {
  const read = parseScenario(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  const { circuit } = read.scenario.site;
  const scenario = {
    ...read.scenario,
    site: { ...read.scenario.site, circuit: { ...circuit, length: circuit.length + longer } },
  };
  const asked = () => verify(structuredClone(scenario));
  return { first: asked, again: asked, anew: () => anew(structuredClone(scenario)) };
};

type Times = Record<Which, readonly [number[], number[]]>;
const times: Record<string, Times> = {};
for (let round = 0; round < ROUNDS.warming + ROUNDS.timed; round++)
  for (const [i, [name, text]] of files.entries()) {
    const works = engines.map((engine) => worksOn(engine, text, HAIR * (1 + round))) as [Works, Works];
    times[name] ??= { first: [[], []], again: [[], []], anew: [[], []] };
    // Whoever comes second finds warmer caches of the machine: turn and turn about here too.
    const sides = (i + round) % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const);
    for (const which of WHICH)
      for (const side of sides) {
        const took = cpuTime(works[side][which], 1);
        if (round >= ROUNDS.warming) times[name][which][side].push(took);
      }
  }
const medians = ([there, here]: readonly [number[], number[]]) => [medianOf(there), medianOf(here)] as const;
const verified = Object.fromEntries(
  Object.entries(times).map(([name, { first, again, anew }]) => [
    name,
    { first: medians(first), again: medians(again), anew: medians(anew) },
  ]),
);
console.log(JSON.stringify({ verified, replay: await replayAtStart() } satisfies Paired));

async function replayAtStart(): Promise<number> {
  const { parseScenario } = engines[0];
  const { replay } = await import(join(start, 'src/attempt/run.ts'));
  const { workedAttempt } = await import(join(start, 'src/attempt/worked.ts'));
  const text = readFileSync(join(ROOT, 'scenarios', `${TOLD}.json`), 'utf8');
  const read = parseScenario(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  const attempt = workedAttempt(read.scenario, JSON.parse(text));
  for (let i = 0; i < WARMING; i++) replay(read.scenario, attempt);
  return cpuTime(() => replay(read.scenario, attempt), 15);
}
