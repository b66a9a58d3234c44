/** The address of a question's bench. What works that out comes while the question is read. */
import { useEffect, useMemo, useState } from 'react';
import type { Question } from '../../../quiz/question.ts';
import { loaded } from '../../flow/loading.ts';

type ShownState = typeof import('../../../quiz/shown.ts').shownState;

/** Null as long as it is not settled, where no bench could stand as the question shows, or what it takes did not come. */
export function useOnBench(question: Question, isSettled: boolean): string | null {
  const [shownIn, setShownIn] = useState<ShownState | null>(null);
  useEffect(() => {
    let isStale = false;
    loaded(() => import('../../../quiz/shown.ts')).then(
      ({ shownState }) => isStale || setShownIn(() => shownState),
      () => {},
    );
    return () => {
      isStale = true;
    };
  }, []);
  return useMemo(
    () =>
      isSettled && shownIn !== null && shownIn(question) !== null
        ? `#/questions/bench?of=${question.id}`
        : null,
    [question, isSettled, shownIn],
  );
}
