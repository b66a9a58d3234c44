/**
 * A whole test action as a faultless trainee does it: whatever brings the installation to the state that the test
 * starts from, then its steps. Goes by what is known at the bench, never by what is wrong.
 */
import type { Operation, OperationInput } from '../bench/operation.ts';
import type { Outcome } from '../bench/perform.ts';
import { isIsolated } from '../bench/plant.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import type { World } from '../bench/world.ts';
import { gaveNoSupply, tryingAgain } from './noSupply.ts';
import type { Observed, Sample } from './observed.ts';
import { observe } from './observed.ts';
import { unplug } from './offer.ts';
import { stepsOn } from './onPapers.ts';
import { waitFor } from './steps.ts';
import type { Papers, TestAction } from './testAction.ts';
import { written } from './written.ts';

export const startsAt = ({ from, cover }: TestAction): 'as found' | 'made good' | 'isolated' | 'energised' =>
  cover === 'as found' ? cover : from === 'isolated' && cover === 'closed' ? 'made good' : from;

/** From a circuit that is off and locked: proved dead at both ends, the cover opened between them. */
export const PROVING_AND_OPENING: readonly OperationInput[] = [
  { op: 'check-instruments' },
  { op: 'prove-dead', at: 'origin' },
  { op: 'open-cover' },
  { op: 'discharge' },
  { op: 'prove-dead', at: 'supply' },
];

/** Isolated, proved dead, cover open: what dead work starts from. Proving is left to the action that teaches it. */
function toIsolated(world: World, action: TestAction): readonly OperationInput[] {
  const { plant, knowledge } = world;
  const { origin, supply } = knowledge.provedDead;
  const proved = origin?.isWhole === true && supply?.isWhole === true;
  return [
    ...toOff(world),
    ...(proved || action.id === 'prove-dead' ? [] : PROVING_AND_OPENING),
    ...(proved && plant.cover === 'closed' ? [{ op: 'open-cover' } as const] : []),
  ];
}

const toOff = ({ plant }: World): readonly OperationInput[] => [
  ...(plant.standIn.plugged ? unplug : []),
  // By its own device: behind the main switch alone the other circuits hang on it.
  ...(plant.isolated.length === 0 ? [{ op: 'isolate' } as const, waitFor(2)] : []),
];

/** Isolated and proved dead at the origin, everything as it was before the work, cover on. */
function toMadeGood(world: World): readonly OperationInput[] {
  return [
    ...toOff(world),
    ...(world.knowledge.provedDead.origin?.isWhole === true
      ? []
      : ([{ op: 'check-instruments' }, { op: 'prove-dead', at: 'origin' }] as const)),
    ...putBack(world),
  ];
}

/** Links out, conductors back, cover on. */
function putBack({ plant }: World): readonly OperationInput[] {
  const behindCover = plant.removed.some((what) => what === 'unit' || what === 'arrester');
  const opens = behindCover && plant.cover === 'closed';
  return [
    ...plant.links.map((link): OperationInput => {
      const [line = '', to = ''] = link.split('-');
      return { op: 'unlink', between: [`origin.${line}`, `origin.${to}`] };
    }),
    ...(opens ? [{ op: 'open-cover' } as const] : []),
    ...plant.removed.map((what): OperationInput => ({ op: 'reconnect', what })),
    ...(opens || plant.cover === 'open' ? [{ op: 'close-cover' } as const] : []),
  ];
}

/** Everything back as it was, cover on, then power, and the start-up waited for. */
export const toEnergised = (world: World, { sheet }: Papers): readonly OperationInput[] =>
  isIsolated(world.plant) ? [...putBack(world), { op: 'energise' }, waitFor(sheet.startUp + 2)] : [];

function before(world: World, action: TestAction, papers: Papers): readonly OperationInput[] {
  switch (startsAt(action)) {
    case 'as found':
      return [];
    case 'made good':
      return toMadeGood(world);
    case 'isolated':
      return toIsolated(world, action);
    case 'energised':
      return toEnergised(world, papers);
  }
}

/**
 * What is still to do of an action whose steps are done: where they found no supply, it is tried once more. Nothing where
 * it was found, or has been tried.
 */
export const stillToDo = (action: TestAction, papers: Papers, observed: Observed): readonly Operation[] =>
  gaveNoSupply(action, papers, observed) ? tryingAgain(papers).map(written) : [];

export const procedure = (world: World, action: TestAction, papers: Papers): readonly Operation[] => [
  ...before(world, action, papers).map(written),
  ...stepsOn(action, papers),
];

/** Whoever has found it live where it should be dead, or has a detector that fails, opens nothing, and leaves the rest of the test. */
export const goesOn = ({ knowledge }: World, { op }: Operation): boolean =>
  op !== 'open-cover' || (knowledge.foundLive.length === 0 && !knowledge.detectorFailed);

export interface ActionRun extends Observed {
  /** How many of the operations brought the installation to where the test starts. */
  readonly prepared: number;
  readonly samples: readonly Sample[];
  readonly outcomes: readonly Outcome[];
}

/** Does the whole action on the bench. */
export const carryOut = (world: World, action: TestAction, papers: Papers): ActionRun =>
  toItsEnd(carryingOut(world, action, papers));

/** The same in pieces, one an operation. */
export function* carryingOut(world: World, action: TestAction, papers: Papers): Generator<null, ActionRun> {
  const samples: Sample[] = [];
  const outcomes: Outcome[] = [];
  function* doing(steps: readonly Operation[]): Generator<null> {
    for (const step of steps) {
      if (!goesOn(world, step)) return;
      const { sample, outcome } = observe(world, step);
      samples.push(sample);
      outcomes.push(outcome);
      yield null;
    }
  }
  yield* doing(before(world, action, papers).map(written));
  const prepared = samples.length;
  yield* doing(stepsOn(action, papers));
  yield* doing(stillToDo(action, papers, { samples }));
  return { prepared, samples, outcomes };
}
