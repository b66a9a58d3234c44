/**
 * Three attempts of long ago with what they were marked at, so that no reading and no mark changes unnoticed: a
 * difference is a fault, or the reason to raise the engine's number and to write `expected.json` anew
 * (`npm run golden -- "the reason"`). The attempts themselves are never written again.
 */
import { readFileSync } from 'node:fs';
import type { Marks } from '../../src/attempt/marks/mark.ts';
import { markWhole } from '../../src/attempt/marks/mark.ts';
import { digestOf } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';

/** A sound unit verified without a fault; a unit put right; a hasty one by an older engine. */
export const GOLDEN = ['sound', 'put-right', 'hasty'] as const;

export interface Expected {
  readonly engine: string;
  /** Why the figures are not those of the engine before. */
  readonly reason: string;
  readonly attempts: Readonly<Record<string, Told>>;
}

export interface Told {
  readonly marks: Omit<Marks, 'differs'>;
  /** SHA-256 of every reading in order. */
  readonly readings: string;
}

const at = (name: string): URL => new URL(name, import.meta.url);
export const EXPECTED = at('expected.json');

export const expected = (): Expected => JSON.parse(readFileSync(EXPECTED, 'utf8'));

/** As the engine of today replays and marks it. */
export function toldToday(name: string): Told {
  const read = parseAttempt(readFileSync(at(`${name}.json`), 'utf8'));
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  const { run, marks } = markWhole(read.value.scenario, read.value.attempt);
  // What differs names the engine of today: not a mark.
  const { differs: _, ...own } = marks;
  return JSON.parse(JSON.stringify({ marks: own, readings: digestOf(run.readings) }));
}
