/** Where a file says of itself what its replay does not say: times, chain, marks. Nothing of it is believed. */
import type { Attempt } from './attempt.ts';
import { brokenLinks, ENGINE } from './attempt.ts';
import type { Run } from './run.ts';

/** Figures of a file's own marks that are compared, by their names in `Marks`. */
const COMPARED = ['total', 'parts', 'weights', 'pass', 'hurdles', 'gates', 'passed', 'repeats'] as const;
export type Claimable = Readonly<Record<(typeof COMPARED)[number], unknown>>;

/** Where a file says something else than what it is held against; its words stand in src/words/doubts.ts. */
export type Doubt =
  | { readonly id: 'engine'; readonly said: string; readonly is: string }
  | { readonly id: 'broken-chain'; readonly entry: number }
  | {
      readonly id: 'says-otherwise';
      /** Path in the file. */
      readonly path: string;
      readonly said: unknown;
      /** What it is held against: its replay, the scenario that is given, the one that comes with the program. */
      readonly against: 'replay' | 'given' | 'shipped';
      readonly is: unknown;
    };

export const differences = (run: Run, marks: Claimable): readonly Doubt[] => [
  ...(run.attempt.engine === ENGINE ? [] : [{ id: 'engine', said: run.attempt.engine, is: ENGINE } as const]),
  ...brokenLog(run),
  ...claimedMarks(run.attempt, marks),
];

/** Entries after the end were not replayed: that they are there is told apart. */
function brokenLog({ attempt, times }: Run): readonly Doubt[] {
  const { entries } = attempt;
  return [
    ...entries.flatMap(({ at }, i): readonly Doubt[] =>
      times[i] === undefined || at === times[i]
        ? []
        : [{ id: 'says-otherwise', path: `entries[${i}].at`, said: at, against: 'replay', is: times[i] }],
    ),
    ...brokenLinks(attempt).map((entry): Doubt => ({ id: 'broken-chain', entry })),
  ];
}

/** A figure that the file leaves out is no claim. */
function claimedMarks({ marks: claimed }: Attempt, marks: Claimable): readonly Doubt[] {
  if (typeof claimed !== 'object' || claimed === null) return [];
  return COMPARED.flatMap((name) =>
    name in claimed
      ? differingFrom(marks[name], (claimed as Partial<Claimable>)[name], `marks.${name}`).map(
          ({ path, first, second }): Doubt => ({
            id: 'says-otherwise',
            path,
            said: second,
            against: 'replay',
            is: first,
          }),
        )
      : [],
  );
}

interface Differing {
  readonly path: string;
  readonly first: unknown;
  readonly second: unknown;
}

/** Every place where two JSON values are not the same, as deep down as both have a place for it. */
export function differingFrom(first: unknown, second: unknown, path: string): readonly Differing[] {
  if (isTree(first) && isTree(second) && Array.isArray(first) === Array.isArray(second)) {
    const names = [...new Set([...Object.keys(first), ...Object.keys(second)])];
    return names.flatMap((name) =>
      differingFrom(
        first[name],
        second[name],
        Array.isArray(first) ? `${path}[${name}]` : path === '' ? name : `${path}.${name}`,
      ),
    );
  }
  return Object.is(first, second) ? [] : [{ path, first, second }];
}

const isTree = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
