/**
 * Keeps an attempt as it happens: one change at a time, the newest of what has come meanwhile next. What could not be
 * kept goes along with the next change, so that nothing is left out once there is room again. The press that made the
 * change is answered first: opening the database for it can take longer than all the rest of it.
 */
import type { Attempt } from '../../attempt/record/attempt.ts';
import type { About } from '../../store/about.ts';
import type { KeepProblem } from '../../store/keepProblem.ts';
import { problemOf } from '../../store/keepProblem.ts';
import { beginAttempt, keepAttempt } from '../../store/keptAttempt.ts';
import { forgetLeft, leaveBehind } from '../../store/leftBehind.ts';
import type { Change } from '../../store/putChange.ts';
import { afterPicture } from './afterPicture.ts';

export interface Keeper {
  readonly keep: (change: Change) => void;
  /** Keeps nothing more. */
  readonly stop: () => void;
  /** Resolves once all that was handed in so far was tried: whether all of it is kept. */
  readonly settled: () => Promise<boolean>;
  /** What of it could not be kept, and why; null where all is. To be asked once it is settled. */
  readonly unkept: () => Unkept | null;
}

interface Unkept {
  readonly change: Change;
  readonly problem: KeepProblem;
}

export interface Begun {
  readonly attempt: Attempt;
  readonly about: Pick<About, 'changed'> & Partial<About>;
}

/** `begun`: not kept yet, to be kept first. */
export function keeperOf(
  id: string,
  holder: string,
  begun: Begun | null,
  onOutcome: (problem: KeepProblem | null) => void,
): Keeper {
  let unbegun = begun;
  let waiting: Change | null = begun === null ? null : { about: {} };
  let trying: Change | null = null;
  let unkept: Unkept | null = null;
  let isStopped = false;
  let hasLeft = false;
  let work: Promise<void> | null = null;

  // A page that goes gives the database no time.
  const leave = () => {
    const before = trying ?? unkept?.change ?? null;
    const change = waiting === null ? before : joined(before, waiting);
    if (change === null || isStopped) return;
    hasLeft = true;
    const attempt = unbegun === null ? {} : { attempt: unbegun.attempt };
    leaveBehind(id, { holder, change: { ...attempt, ...change }, begun: unbegun?.about ?? null });
  };
  const start = () => {
    addEventListener('pagehide', leave);
    work ??= keepAll().finally(() => {
      work = null;
      if (unkept !== null) return;
      removeEventListener('pagehide', leave);
      if (hasLeft) forgetLeft(id);
      hasLeft = false;
    });
  };
  const keepAll = async () => {
    await afterPicture();
    while (waiting !== null && !isStopped) {
      const change = joined(unkept?.change ?? null, waiting);
      waiting = null;
      unkept = null;
      trying = change;
      try {
        if (unbegun !== null)
          await beginAttempt(id, change.attempt ?? unbegun.attempt, { ...unbegun.about, holder });
        unbegun = null;
        await keepAttempt(id, holder, change);
        onOutcome(null);
      } catch (error) {
        const problem = problemOf(error);
        unkept = { change, problem };
        if (!isStopped) onOutcome(problem);
      }
      trying = null;
    }
  };
  if (waiting !== null) start();
  return {
    keep: (change) => {
      waiting = joined(waiting, change);
      start();
    },
    stop: () => {
      isStopped = true;
      removeEventListener('pagehide', leave);
    },
    settled: async () => {
      await work;
      return unkept === null;
    },
    unkept: () => unkept,
  };
}

const joined = (earlier: Change | null, later: Change): Change => ({
  ...earlier,
  ...later,
  about: { ...earlier?.about, ...later.about },
});
