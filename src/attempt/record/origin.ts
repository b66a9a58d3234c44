/**
 * Where the scenario of an attempt comes from. An attempt carries its own, and whoever wrote the file may have changed
 * it: it is believed only as far as it is one that comes with the program, or one that whoever marks gives.
 */
import type { Attempt } from './attempt.ts';
import { digestOf } from './attempt.ts';
import type { Doubt } from './claims.ts';
import { differingFrom } from './claims.ts';

/**
 * `carried`: the attempt's own, believed by nobody; `known`: as the program has it or makes it; `against`: the given one
 * decides, whatever the attempt carries.
 */
export type Origin = 'carried' | 'known' | 'against';

export interface ScenarioOrigin {
  readonly id: string;
  /** Of the scenario that decides, without what a trainee chooses. */
  readonly sha256: string;
  readonly from: Origin;
  /** Where what the attempt carries is not that, or not the one that comes with the program. */
  readonly differs: readonly Doubt[];
}

/** The rung is the trainee's own choice and stands beside; where a schema is kept says nothing. */
const CHOSEN = ['support', '$schema'];

const decisive = (file: unknown): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(file ?? {}).filter(([name]) => !CHOSEN.includes(name)));

export const scenarioHash = (file: unknown): string => digestOf(decisive(file));

/** What a scenario file calls itself; empty where it does not say. */
export const idOf = (file: unknown): string => {
  const { id } = (file ?? {}) as { id?: unknown };
  return typeof id === 'string' ? id : '';
};

/** A file among these with the id of the scenario that an attempt carries. */
export const withIdOf = ({ scenario }: Attempt, files: readonly unknown[]): unknown =>
  files.find((file) => idOf(file) === idOf(scenario));

/** `given`: what whoever marks holds it against, if anything. `shipped`: the scenario files that the program has or makes. */
export function originOf(attempt: Attempt, given: unknown, shipped: readonly unknown[]): ScenarioOrigin {
  const { scenario } = attempt;
  const id = idOf(scenario);
  if (given !== undefined)
    return {
      id,
      sha256: scenarioHash(given),
      from: 'against',
      differs: differencesFromGiven(given, scenario),
    };
  const sha256 = scenarioHash(scenario);
  const own = withIdOf(attempt, shipped);
  if (own !== undefined && scenarioHash(own) === sha256) return { id, sha256, from: 'known', differs: [] };
  const differs = own === undefined ? [] : differencesFrom(own, scenario, 'shipped');
  return { id, sha256, from: 'carried', differs };
}

/** Where what an attempt carries is not the scenario by which it is marked. */
export const differencesFromGiven = (given: unknown, carried: unknown): readonly Doubt[] => [
  ...differencesFrom(given, carried, 'given'),
  ...otherSupport(given, carried),
];

const differencesFrom = (right: unknown, carried: unknown, against: 'given' | 'shipped'): readonly Doubt[] =>
  differingFrom(decisive(right), decisive(carried), 'scenario').map(({ path, first, second }) => ({
    id: 'says-otherwise',
    path,
    said: second,
    against,
    is: first,
  }));

/** A rung is chosen freely, but not in place of an assessment. */
function otherSupport(given: unknown, carried: unknown): readonly Doubt[] {
  const [asked, chosen] = [given, carried].map((file) => (file as { support?: unknown } | null)?.support);
  return asked === 'assessment' && chosen !== asked
    ? [{ id: 'says-otherwise', path: 'scenario.support', said: chosen, against: 'given', is: asked }]
    : [];
}

/** The given scenario, with the rung that the trainee chose unless it is an assessment. */
export const asGiven = (given: object, carried: unknown): object => {
  const { support } = given as { support?: unknown };
  const chosen = (carried as { support?: unknown } | null)?.support;
  return support === 'assessment' || chosen === undefined ? given : { ...given, support: chosen };
};
