/**
 * What each step of a log ruled out: the log is acted out once for every cause of the catalogue that this site and
 * sheet can have, one at a time at its usual size, and a cause is out at the first step where the bench would have
 * read, looked or sounded otherwise; before the first, where what was handed over as done would have read otherwise. Also
 * which measurement or test would have told most.
 *
 * In small pieces of work, so that a page can go on meanwhile: some thousand operations in all.
 */
import type { Measurement, Operation } from '../../bench/operation.ts';
import { perform } from '../../bench/perform.ts';
import { toItsEnd, within } from '../../bench/toItsEnd.ts';
import type { World } from '../../bench/world.ts';
import { beginningLike } from '../../fairness/row.ts';
import type { FaultChoice } from '../../faults/catalogue.ts';
import { CATALOGUE, designsAmong, faultsAmong, whyImpossible, withDefaults } from '../../faults/catalogue.ts';
import type { Seconds } from '../../laws/quantities.ts';
import { seconds } from '../../laws/quantities.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { allowedActions, beginning, papersOf } from '../../scenario/scenario.ts';
import { procedure } from '../../verification/procedure.ts';
import type { Perceived } from '../marks/telling.ts';
import { alikeReadings, sameToTheBench } from '../marks/telling.ts';
import type { Lockstep, Progress } from './twin.ts';
import type { Untaken } from './untaken.ts';
import { keyOfReading, untakenAt } from './untaken.ts';

export interface Candidate {
  /** Their ids in the catalogue; none: nothing is wrong. */
  readonly causes: readonly string[];
  readonly faults: readonly FaultChoice[];
  /** It is what this unit really has. */
  readonly isTrue: boolean;
}

/** A measurement not taken, or a test not done, and how many causes it would have left. */
export interface Better {
  readonly step: number;
  readonly test: string | null;
  readonly measurement: Measurement;
  readonly left: number;
}

export interface Elimination {
  /** With the step that ruled each out: 0, the sheet of what was done before; null, none. */
  readonly candidates: readonly (Candidate & { readonly ruledOutAt: number | null })[];
  /** After each step of the lockstep; the first is all that the sheet leaves. */
  readonly left: readonly number[];
  /** For each standing set-up the measurement that would have left fewest, where it beats what was left there. */
  readonly better: readonly Better[];
}

/** A test not done, and how many of the causes left at the end it would have left. */
export interface Undone {
  readonly test: string;
  readonly left: number;
}

export interface UndoneSought {
  /** The one that would have left fewest; null where none would have told anything. */
  readonly best: Undone | null;
}

/**
 * The scenario's own faults as they are, nothing wrong, and every other cause by itself. A wrong design stands in the
 * papers: where there is one, every candidate has it, and where there is none, none has.
 */
export function candidatesOn(scenario: Scenario): readonly Candidate[] {
  const own = scenario.faults.filter((choice) => faultsAmong([choice]).length > 0);
  const designs = designsAmong(own);
  const further = own.filter((choice) => !designs.includes(choice));
  const [only, ...more] = further;
  const papers = papersOf(scenario);
  const others = CATALOGUE.flatMap((entry): readonly Candidate[] => {
    if (entry.kind !== 'fault' || entry.alter !== undefined) return [];
    if (more.length === 0 && entry.id === only?.fault) return [];
    if (whyImpossible(entry, papers, {}) !== null) return [];
    return [candidateOf([...designs, { fault: entry.id, values: withDefaults(entry, {}) }])];
  });
  return [
    { ...candidateOf(own), isTrue: true },
    ...(further.length === 0 ? [] : [candidateOf(designs)]),
    ...others,
  ];
}

const candidateOf = (faults: readonly FaultChoice[]): Candidate => ({
  causes: faults.map(({ fault }) => fault),
  faults,
  isTrue: false,
});

/** All of it at once. */
export const eliminate = (lockstep: Lockstep): Elimination => toItsEnd(eliminating(lockstep));

export function* eliminating(lockstep: Lockstep): Generator<Progress, Elimination> {
  const { scenario, steps } = lockstep;
  const all = candidatesOn(scenario);
  const [truth] = all as [Candidate];
  const stands = standingsOf(lockstep);
  const operations = steps.flatMap(({ operation }) => (operation === null ? [] : [operation]));
  const start = { done: 0, of: all.length };
  const found = yield* within(start, beginningLike(scenario, truth.faults, null));
  const meant = yield* acted(found.world, operations, stands, start);
  const tallies = new Map([...meant.untaken].map(([step, list]) => [step, new Tally(list)]));
  const candidates: Elimination['candidates'][number][] = [];
  for (const candidate of all) {
    const progress = { done: candidates.length, of: all.length };
    const begun = yield* within(progress, beginningLike(scenario, candidate.faults, found.truths));
    if (begun === null) {
      candidates.push({ ...candidate, ruledOutAt: 0 });
      continue;
    }
    const { world } = begun;
    let ruledOutAt: number | null = null;
    for (const [i, operation] of operations.entries()) {
      yield progress;
      const step = i + 1;
      const began = seconds(world.timeline.now);
      const outcome = perform(world, operation);
      const expected = meant.perceived[i] as (typeof meant.perceived)[number];
      if (!sameToTheBench(expected.outcome, outcome, { x: expected.began, y: began })) {
        ruledOutAt = step;
        break;
      }
      tallies.get(step)?.add(untakenAt(world, stands.get(step) ?? new Set()));
    }
    candidates.push({ ...candidate, ruledOutAt });
  }
  const left = steps.map(
    (_, step) => candidates.filter(({ ruledOutAt }) => ruledOutAt === null || ruledOutAt > step).length,
  );
  const better = [...tallies].flatMap(([step, tally]): readonly Better[] => {
    const best = tally.best();
    const test = steps[step]?.test ?? null;
    return best === null || best.left >= (left[step] ?? 0) ? [] : [{ step, test, ...best }];
  });
  return { candidates, left, better };
}

/** The last step of each standing set-up in which anything was measured, and what was measured there. */
function standingsOf({ steps }: Lockstep): ReadonlyMap<number, ReadonlySet<string>> {
  const stands = new Map<number, ReadonlySet<string>>();
  let taken = new Set<string>();
  for (const [i, { test, unit }] of steps.entries()) {
    for (const { reading } of unit.met) taken.add(keyOfReading(reading));
    const next = steps[i + 1];
    if (next !== undefined && next.test === test && next.unit.changedAt === unit.changedAt) continue;
    if (taken.size > 0) stands.set(i, taken);
    taken = new Set();
  }
  return stands;
}

interface Acted {
  readonly perceived: readonly { readonly outcome: Perceived; readonly began: Seconds }[];
  readonly untaken: ReadonlyMap<number, readonly Untaken[]>;
}

/** What the unit itself shows at every operation, and what else could have been measured at each standing. */
function* acted(
  world: World,
  operations: readonly Operation[],
  stands: ReadonlyMap<number, ReadonlySet<string>>,
  progress: Progress,
): Generator<Progress, Acted> {
  const perceived: Acted['perceived'][number][] = [];
  const untaken = new Map<number, readonly Untaken[]>();
  for (const [i, operation] of operations.entries()) {
    yield progress;
    const began = seconds(world.timeline.now);
    perceived.push({ outcome: perform(world, operation), began });
    const taken = stands.get(i + 1);
    if (taken !== undefined) untaken.set(i + 1, untakenAt(world, taken));
  }
  return { perceived, untaken };
}

/** For each measurement that could have been taken at one standing, how many causes would have read the same. */
class Tally {
  private readonly meant: readonly Untaken[];
  private readonly alike: number[];

  constructor(meant: readonly Untaken[]) {
    this.meant = meant;
    this.alike = meant.map(() => 0);
  }

  add(list: readonly Untaken[]): void {
    for (const [i, { key, reading }] of this.meant.entries()) {
      const other = list.find((one) => one.key === key);
      if (other !== undefined && alikeReadings(reading, other.reading))
        this.alike[i] = (this.alike[i] ?? 0) + 1;
    }
  }

  best(): { measurement: Measurement; left: number } | null {
    const left = Math.min(...this.alike);
    const best = this.meant[this.alike.indexOf(left)];
    return best === undefined ? null : { measurement: best.measurement, left };
  }
}

/**
 * Each test that was allowed and not done, acted out by itself, on the unit as it was found, for every cause still
 * left. In small pieces, as above.
 */
export function* seekingUndone(
  { scenario, steps }: Lockstep,
  { candidates }: Elimination,
): Generator<Progress, UndoneSought> {
  const done = new Set(steps.map(({ test }) => test));
  const papers = papersOf(scenario);
  const actions = allowedActions(scenario).filter(({ id }) => !done.has(id));
  const remaining = candidates.filter(({ ruledOutAt }) => ruledOutAt === null);
  const truth = remaining.find(({ isTrue }) => isTrue);
  const others = remaining.filter((candidate) => candidate !== truth);
  if (others.length === 0 || truth === undefined) return { best: null };
  let best: Undone | null = null;
  for (const [i, action] of actions.entries()) {
    const progress = { done: i, of: actions.length };
    const { world } = yield* within(progress, beginning(scenario, truth.faults));
    const operations = procedure(world, action, papers);
    const meant = yield* acted(world, operations, new Map(), progress);
    let left = 1;
    for (const other of others)
      if (yield* readsAlike(scenario, other, operations, meant, progress)) left += 1;
    if (left <= others.length && (best === null || left < best.left)) best = { test: action.id, left };
  }
  return { best };
}

/** Whether another cause would have read, looked and sounded the same in all of these operations. */
function* readsAlike(
  scenario: Scenario,
  { faults }: Candidate,
  operations: readonly Operation[],
  { perceived }: Acted,
  progress: Progress,
): Generator<Progress, boolean> {
  const { world } = yield* within(progress, beginning(scenario, faults));
  for (const [i, operation] of operations.entries()) {
    yield progress;
    const began = seconds(world.timeline.now);
    const outcome = perform(world, operation);
    const expected = perceived[i] as (typeof perceived)[number];
    if (!sameToTheBench(expected.outcome, outcome, { x: expected.began, y: began })) return false;
  }
  return true;
}
