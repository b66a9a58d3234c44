/** What this device keeps, read for the first screen: the attempts and the goal, or why nothing can be read. */
import { startTransition, useEffect, useState } from 'react';
import type { About } from '../../store/about.ts';
import type { DueTopics } from '../../store/comesBack.ts';
import { dueTopics } from '../../store/comesBack.ts';
import type { KeepProblem } from '../../store/keepProblem.ts';
import { problemOf } from '../../store/keepProblem.ts';
import { keptAttempts } from '../../store/keptAttempt.ts';
import { keptGoal } from '../../store/keptRecord.ts';
import { keptQuestions } from '../../store/questions.ts';
import type { Goal } from '../../store/recordText.ts';

export interface Kept {
  readonly all: readonly About[];
  readonly goal: Goal | null;
  /** What comes back of the questions by now. */
  readonly due: DueTopics;
  readonly problem: KeepProblem | null;
}

const NOTHING: Kept = {
  all: [],
  goal: null,
  due: { topics: 0, wrong: 0, assessment: null },
  problem: null,
};
/** So long the page waits for it, ms: what stands above the scenarios is not to push them away. */
const PATIENCE = 300;

/** Null while it is being read and the page may still wait. */
export function useKeptHere(): Kept | null {
  const [kept, setKept] = useState<Kept | null>(null);
  useEffect(() => {
    let isStale = false;
    const timer = setTimeout(() => setKept((now) => now ?? NOTHING), PATIENCE);
    const found = (what: Kept) => {
      if (!isStale) startTransition(() => setKept(what));
    };
    Promise.all([keptAttempts(), keptGoal(), keptQuestions()]).then(
      ([all, goal, { cards, assessment }]) =>
        found({ all, goal, due: dueTopics(cards, assessment, Date.now()), problem: null }),
      (error) => found({ ...NOTHING, problem: problemOf(error) }),
    );
    return () => {
      isStale = true;
      clearTimeout(timer);
    };
  }, []);
  return kept;
}
