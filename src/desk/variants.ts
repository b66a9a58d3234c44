/**
 * Equal variants of a job: the same cause on a site with other figures, so that a neighbour's readings are of no use. A
 * variant follows from the job and a seed alone, and whoever gets which from the word and the learner's label, so that
 * both are made again wherever an attempt is collected. That two are equal is proved by weighing each as any job is.
 */
import { digestOf } from '../attempt/record/attempt.ts';
import { drawer } from '../bench/draw.ts';
import type { Progress } from '../fairness/dictionary.ts';
import type { Fairness } from '../fairness/fairness.ts';
import { weighing } from '../fairness/fairness.ts';
import { readingScenario } from '../scenario/readScenario.ts';
import { plainWord } from './giving.ts';

type Json = Readonly<Record<string, unknown>>;

/** How far a figure of the site may be from that of the job, as a share. A design choice. */
const SPREAD = 0.12;
/** A service may be 216 to 253 V (ESQCR 2002: 230 V, −6 % to +10 %). */
const VOLTS = { least: 224, most: 246 };
/** Minutes of two that are held to be equal differ by no more, as a share. */
export const MINUTES_APART = 0.15;

const isTree = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The job with the figures of a seed. What its papers, its cause and its tests are stays as it is. */
export function variantOf(file: object, seed: number): object {
  const draw = drawer(seed);
  const { site, ...job } = file as Json;
  if (!isTree(site)) return file;
  const near = (value: unknown, key: string, digits: number): unknown =>
    typeof value === 'number' ? rounded(value * (1 + SPREAD * (2 * draw(key) - 1)), digits) : value;
  const { circuit } = site;
  const own = Object.entries(site).map(([name, value]): readonly [string, unknown] => {
    switch (name) {
      case 'voltage':
        return [name, VOLTS.least + Math.floor((VOLTS.most - VOLTS.least + 1) * draw('volts'))];
      case 'loopImpedance':
        return [name, near(value, name, 2)];
      case 'electrodeResistance':
        return [name, near(value, name, 0)];
      case 'circuit':
        return [name, isTree(circuit) ? { ...circuit, length: near(circuit.length, 'length', 0) } : circuit];
      default:
        return [name, value];
    }
  });
  return { ...job, site: Object.fromEntries(own), seed };
}

/** At least one of its last digit: a length or a resistance is never nothing. */
function rounded(value: number, digits: number): number {
  const scale = Number(`1e${digits}`);
  return Math.max(1, Math.round(value * scale)) / scale;
}

/** Which of so many variants a learner gets. */
export const variantFor = (word: string, label: string, count: number): number =>
  count === 0 ? 0 : Number.parseInt(digestOf([plainWord(word), plainWord(label)]).slice(0, 8), 16) % count;

/** The seed that is tried as the nth of a giving-out. */
const seedOf = (word: string, n: number): number =>
  Number.parseInt(digestOf(['variant', plainWord(word), n]).slice(0, 8), 16) & 0x7fffffff;

/** By what two jobs are held to be equal. */
export interface Weighed {
  readonly revealedBy: readonly string[];
  /** Causes that nothing allowed tells from what is wrong. */
  readonly left: number;
  readonly minutes: number;
  readonly solvable: boolean;
}

export const weighed = ({ revealedBy, lookalikes, minutes, solvable }: Fairness): Weighed => ({
  revealedBy,
  left: lookalikes.length,
  minutes: minutes.practice,
  solvable,
});

/** The same tests see it, the same number of causes is left, and it takes about as long. */
export const areEqual = (x: Weighed, y: Weighed): boolean =>
  x.solvable === y.solvable &&
  x.left === y.left &&
  x.revealedBy.length === y.revealedBy.length &&
  x.revealedBy.every((test) => y.revealedBy.includes(test)) &&
  Math.abs(x.minutes - y.minutes) <= MINUTES_APART * x.minutes;

export interface Proving {
  /** Variants proved so far, of how many. */
  readonly proved: number;
  readonly of: number;
  /** What is being weighed. */
  readonly weighing: Progress | null;
}

/** How many seeds are tried for each that is wanted. */
const TRIES = 3;

/**
 * Seeds of variants in which every one of these jobs is equal to itself, up to so many; fewer where the job has no more.
 * The job itself is not among them.
 */
export function* provingVariants(
  jobs: readonly object[],
  word: string,
  wanted: number,
): Generator<Proving, readonly number[]> {
  const seeds: number[] = [];
  const told = (weighing: Progress | null): Proving => ({ proved: seeds.length, of: wanted, weighing });
  const own: Weighed[] = [];
  for (const job of jobs) {
    const weight = yield* weighedIn(job, told);
    if (weight === null) return [];
    own.push(weight);
  }
  for (let n = 0; n < TRIES * wanted && seeds.length < wanted; n += 1) {
    const seed = seedOf(word, n);
    let equal = true;
    for (const [i, job] of jobs.entries()) {
      const weight = yield* weighedIn(variantOf(job, seed), told);
      equal = weight !== null && areEqual(own[i] as Weighed, weight);
      if (!equal) break;
    }
    if (equal) seeds.push(seed);
  }
  return seeds;
}

/** Null where it is no job that could be given out. */
function* weighedIn(
  file: object,
  told: (weighing: Progress | null) => Proving,
): Generator<Proving, Weighed | null> {
  const reading = readingScenario(file);
  let read = reading.next();
  while (read.done !== true) {
    yield told(null);
    read = reading.next();
  }
  if (!read.value.ok) return null;
  const weights = weighing(read.value.scenario);
  let next = weights.next();
  while (next.done !== true) {
    yield told(next.value);
    next = weights.next();
  }
  return weighed(next.value);
}
