/** Where a file says of itself what its replay does not say: times, chain, marks. Nothing of it is believed. */
import { shortened } from '../scenario/quoted.ts';
import type { Attempt } from './attempt.ts';
import { chainedHash, ENGINE } from './attempt.ts';
import type { Run } from './run.ts';

/** Figures of a file's own marks that are compared, by their names in `Marks`. */
const COMPARED = ['total', 'parts', 'weights', 'pass', 'hurdles', 'gates', 'passed', 'repeats'] as const;
export type Claimable = Readonly<Record<(typeof COMPARED)[number], unknown>>;

export const differences = (run: Run, marks: Claimable): readonly string[] => [
  ...(run.attempt.engine === ENGINE
    ? []
    : [`engine: the file was made by ${shortened(run.attempt.engine)}, this is ${ENGINE}`]),
  ...brokenLog(run),
  ...claimedMarks(run.attempt, marks),
];

/** Entries after the end were not replayed: that they are there is told apart. */
function brokenLog({ attempt, times }: Run): readonly string[] {
  const { entries } = attempt;
  return [
    ...entries.flatMap(({ at }, i) =>
      times[i] === undefined || at === times[i]
        ? []
        : [`entries[${i}].at: the file says ${at}, the replay ${times[i]}`],
    ),
    ...entries.flatMap(({ hash }, i) =>
      hash === chainedHash(attempt, i)
        ? []
        : [`entries[${i}].hash: does not follow from the entries before it`],
    ),
  ];
}

/** A figure that the file leaves out is no claim. */
function claimedMarks({ marks: claimed }: Attempt, marks: Claimable): readonly string[] {
  if (typeof claimed !== 'object' || claimed === null) return [];
  return COMPARED.flatMap((name) =>
    name in claimed
      ? differingFrom(marks[name], (claimed as Partial<Claimable>)[name], `marks.${name}`).map(
          ({ path, first, second }) => `${path}: the file says ${shown(second)}, the replay ${shown(first)}`,
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

/** A value of a file as it is told: cut, and `nothing` where there is none. */
export const shown = (value: unknown): string =>
  value === undefined ? 'nothing' : shortened(JSON.stringify(value));
