/** What one step back is from where an attempt stands: what the browser's own *back* does, as the bench's button would. */
import type { AttemptActor, AttemptState } from './attemptMachine.ts';

type Sent = Parameters<AttemptActor['send']>[0];

/** In this order: a sheet that lies over the step goes first, and what is locked, judged or told is not undone. */
const WAYS_BACK: readonly Sent[] = [{ type: 'go on' }, { type: 'back' }, { type: 'leave' }, { type: 'next' }];

/** Null where a step back leaves the attempt, which is kept as it stands. */
export const stepBack = (state: AttemptState): Sent | null =>
  WAYS_BACK.find((event) => state.can(event)) ?? null;
