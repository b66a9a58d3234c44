/** What this device keeps, for the record; sums that do not hold any more are worked out anew, one after the other. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { debriefOf } from '../../../attempt/debrief.ts';
import { parseAttempt } from '../../../attempt/file.ts';
import { holdsFor, summaryOf } from '../../../attempt/summary.ts';
import type { About } from '../../../store/about.ts';
import type { KeepProblem } from '../../../store/database.ts';
import { problemOf } from '../../../store/database.ts';
import { changeAbout, keptAttempt, keptAttempts } from '../../../store/keptAttempt.ts';

export function useKeptRows() {
  const [all, setAll] = useState<readonly About[] | null>(null);
  const [unreadable, setUnreadable] = useState<ReadonlySet<string>>(new Set());
  const [working, setWorking] = useState<{ readonly done: number; readonly of: number } | null>(null);
  const [problem, setProblem] = useState<KeepProblem | null>(null);
  /** Another number for another reading, so that an earlier one stops. */
  const reading = useRef(0);

  const readAgain = useCallback(async () => {
    reading.current += 1;
    const own = reading.current;
    const isOver = () => reading.current !== own;
    try {
      const found = await keptAttempts();
      if (isOver()) return;
      setAll(found);
      setProblem(null);
      const due = found.filter(({ concluded, summary, head }) => concluded && !holdsFor(summary, head));
      for (const [i, about] of due.entries()) {
        setWorking({ done: i, of: due.length });
        // The page draws, and takes a press of Cancel, between one and the next.
        await new Promise((resolve) => setTimeout(resolve));
        if (isOver()) return;
        const summed = await summedUp(about);
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
    reading.current += 1;
    setWorking(null);
  }, []);
  useEffect(() => {
    void readAgain();
    return stopWorking;
  }, [readAgain, stopWorking]);
  const hasProblem = useCallback((error: unknown) => setProblem(problemOf(error)), []);
  return { all, unreadable, working, problem, readAgain: () => void readAgain(), stopWorking, hasProblem };
}

/** With its sum by replay, which is kept; null where the log cannot be read or replayed. */
async function summedUp(about: About): Promise<About | null> {
  const kept = await keptAttempt(about.id);
  const read = kept === null ? null : parseAttempt(kept.text);
  if (read === null || !read.ok) return null;
  try {
    const summary = summaryOf(debriefOf(read.value.scenario, read.value.attempt));
    await changeAbout(about.id, { summary });
    return { ...about, summary };
  } catch {
    return null;
  }
}
