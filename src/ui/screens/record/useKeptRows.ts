/** What this device keeps, for the record; sums that do not hold any more are worked out anew, one after the other. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { debriefing } from '../../../attempt/marks/debrief.ts';
import { holdsFor, summaryOf } from '../../../attempt/marks/summary.ts';
import { parsingAttempt } from '../../../attempt/record/file.ts';
import type { About } from '../../../store/about.ts';
import { isHeld } from '../../../store/about.ts';
import type { KeepProblem } from '../../../store/keepProblem.ts';
import { problemOf } from '../../../store/keepProblem.ts';
import { changeAbout, countUnlisted, keptAttempt, keptAttempts } from '../../../store/keptAttempt.ts';
import { keptGoal } from '../../../store/keptRecord.ts';
import { inSlices } from '../../flow/inSlices.ts';

export function useKeptRows() {
  const [all, setAll] = useState<readonly About[] | null>(null);
  const [unlisted, setUnlisted] = useState(0);
  const [goal, setGoal] = useState<string | null>(null);
  const [unreadable, setUnreadable] = useState<ReadonlySet<string>>(new Set());
  const [working, setWorking] = useState<{ readonly done: number; readonly of: number } | null>(null);
  const [problem, setProblem] = useState<KeepProblem | null>(null);
  /** The reading that goes on; another one ends it. */
  const reading = useRef(new AbortController());

  const readAgain = useCallback(async () => {
    reading.current.abort();
    const own = new AbortController();
    reading.current = own;
    const isOver = () => own.signal.aborted;
    try {
      const [found, goalNow, others] = await Promise.all([keptAttempts(), keptGoal(), countUnlisted()]);
      if (isOver()) return;
      setAll(found);
      setUnlisted(others);
      setGoal(goalNow?.text ?? null);
      setProblem(null);
      const due = found.filter(
        (about) => about.concluded && !isHeld(about) && !holdsFor(about.summary, about.head),
      );
      for (const [i, about] of due.entries()) {
        setWorking({ done: i, of: due.length });
        const summed = await summedUp(about, own.signal);
        if (isOver()) return;
        if (summed === null) setUnreadable((before) => new Set([...before, about.id]));
        else setAll((before) => before?.map((one) => (one.id === about.id ? summed : one)) ?? null);
      }
    } catch (error) {
      setProblem(problemOf(error));
    }
    setWorking(null);
  }, []);

  const stopWorking = useCallback(() => {
    reading.current.abort();
    setWorking(null);
  }, []);
  useEffect(() => {
    void readAgain();
    return stopWorking;
  }, [readAgain, stopWorking]);
  const hasProblem = useCallback((error: unknown) => setProblem(problemOf(error)), []);
  return {
    all,
    unlisted,
    goal,
    unreadable,
    working,
    problem,
    readAgain: () => void readAgain(),
    stopWorking,
    hasProblem,
  };
}

/** With its sum by replay, which is kept; null where the log cannot be read or replayed. */
async function summedUp(about: About, signal: AbortSignal): Promise<About | null> {
  const kept = await keptAttempt(about.id);
  const read = kept === null ? null : await inSlices(parsingAttempt(kept.text), signal);
  if (read === null || !read.ok) return null;
  try {
    const told = await inSlices(debriefing(read.value.scenario, read.value.attempt), signal);
    if (told === null) return null;
    const summary = summaryOf(told);
    await changeAbout(about.id, { summary });
    return { ...about, summary };
  } catch {
    return null;
  }
}
