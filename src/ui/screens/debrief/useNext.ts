/** What is next after this attempt, worked out as on the first screen, with what this one has just told. */
import { useContext, useMemo, useState } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import { summaryOf } from '../../../attempt/marks/summary.ts';
import type { AimId } from '../../../scenario/aims.ts';
import { aimOf } from '../../../scenario/aims.ts';
import type { About } from '../../../store/about.ts';
import { aboutOf } from '../../../store/about.ts';
import { FIRST_RUN } from '../../../store/choices.ts';
import { nextForYou } from '../../../store/next.ts';
import { aimWithMinutes } from '../../../words/aims.ts';
import { QUESTIONS_NAME, whyText } from '../../../words/next.ts';
import { aimLink, anySeed } from '../../flow/aimLinks.ts';
import { BesideAttempt } from '../../flow/attemptContext.ts';
import { useKeptHere } from '../../flow/useKeptHere.ts';
import { dayMonthText } from '../../format/dates.ts';
import type { Next } from './NextForYou.tsx';

/** Undefined while it is being read what this device keeps; null for somebody else's attempt: nothing follows from it. */
export function useNext(told: Debrief): Next | null | undefined {
  const isGuest = useContext(BesideAttempt)?.isGuest !== false;
  const kept = useKeptHere();
  const [seed] = useState(anySeed);
  return useMemo(() => {
    if (kept === null) return undefined;
    if (isGuest) return null;
    const next = nextForYou({
      kept: [...kept.all.filter(({ first }) => first !== firstOf(told)), asKept(told)],
      goal: kept.goal,
      due: kept.due,
      hadFirstRun: FIRST_RUN.kept() === 'done',
      now: Date.now(),
    });
    if (next.kind === 'first run') return null;
    if (next.kind === 'questions')
      return {
        title: QUESTIONS_NAME,
        why: `Next for you. ${whyText(next.why, dayMonthText)}`,
        href: '#/questions',
      };
    return {
      title: aimWithMinutes(next.aim),
      why: `Next for you. ${whyText(next.why, dayMonthText)}`,
      href: `#${aimLink(next.aim, next.rung, seed)}`,
    };
  }, [kept, told, isGuest, seed]);
}

/** Aims of the tests of which some line was wrong, three at most. */
export const weakIn = (told: Debrief): readonly AimId[] =>
  [
    ...new Set(
      (summaryOf(told).tests ?? []).flatMap(({ test, done, right }) =>
        done && !right ? (aimOf(test) ?? []) : [],
      ),
    ),
  ].slice(0, 3);

const firstOf = ({ run }: Debrief): string | null => run.attempt.entries[0]?.hash ?? null;

/** The device may not have kept yet what the debrief found. */
const asKept = (told: Debrief): About =>
  aboutOf('this attempt', told.run.attempt, { changed: Date.now(), summary: summaryOf(told) });
