/** No questions during an assessment, in whichever tab it is: their answers are worked out. */
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { assessmentUnderWay } from '../../../store/assessmentOn.ts';
import { titleOf } from '../../../words/keeping.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { isConcluded } from '../../flow/useOpenAttempt.ts';

/** Open in this tab, as where nothing is kept. */
const titleHere = (openAttempt: OpenAttempt | null): string | null => {
  if (openAttempt === null) return null;
  const { bench } = openAttempt.now;
  const { scenario } = bench.run;
  return scenario.support === 'assessment' && !isConcluded(bench) ? scenario.title : null;
};

/**
 * The title of the assessment that is under way, null where none is, undefined while that is looked up. It is looked up
 * again when `occasion` changes and when the page is come back to: another tab may have begun one.
 */
export function useAssessmentOn(
  openAttempt: OpenAttempt | null,
  occasion: unknown,
): string | null | undefined {
  const here = titleHere(openAttempt);
  const [kept, setKept] = useState<string | null>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change is the very occasion
  useEffect(() => {
    let isStale = false;
    const look = () =>
      void assessmentUnderWay().then((about) => {
        if (!isStale) setKept(about === null ? null : titleOf(about.title));
      });
    look();
    document.addEventListener('visibilitychange', look);
    addEventListener('focus', look);
    return () => {
      isStale = true;
      document.removeEventListener('visibilitychange', look);
      removeEventListener('focus', look);
    };
  }, [occasion]);
  return here ?? kept;
}

export const InAssessment = ({ title }: { readonly title: string }) => (
  <p>
    You are in an assessment: {title}. Questions come after it, since their answers are worked out. Conclude
    it, or delete it in <Link href="/record">My record</Link>.
  </p>
);
