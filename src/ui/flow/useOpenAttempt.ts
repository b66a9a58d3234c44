/**
 * The open attempt: begun, taken up from this device or a file, held against other tabs, and kept as it goes. One
 * at a time; another one opened, or another tab that takes it over, ends the hold. All that simulates is loaded
 * when it is first needed.
 */
import { useCallback, useRef, useState } from 'react';
import type { Marks } from '../../attempt/marks/mark.ts';
import type { Problem } from '../../scenario/problems.ts';
import type { About } from '../../store/about.ts';
import type { KeepProblem } from '../../store/keepProblem.ts';
import { problemOf } from '../../store/keepProblem.ts';
import { changeAbout, claimAttempt, keptAttempt } from '../../store/keptAttempt.ts';
import type { Bench } from './bench.ts';
import { afterEngine, loaded, NotLoaded } from './loading.ts';
import { madeReady } from './madeReady.ts';
import type { Place } from './place.ts';
import type { Begun, Keeper } from './saveQueue.ts';
import { keeperOf } from './saveQueue.ts';
import type { Hold } from './tabHold.ts';
import { newName, TAB, takeHold } from './tabHold.ts';

/** What the attempt's screen changes as it goes, for whoever comes back to it. */
export interface Now {
  bench: Bench;
  place: Place | undefined;
  /** Once they were worked out. */
  marks: Marks | null;
  handedIn: number | null;
  leftWithout: boolean;
  /** Opened from a file and not worked on here. */
  isGuest: boolean;
  /** The word that opens its debrief was given, where it waits for one. */
  opened: boolean;
}

export interface OpenAttempt {
  readonly kind: 'open';
  readonly id: string;
  /** Another number for another attempt, so that nothing of the old one stays on the screen. */
  readonly number: number;
  readonly keeper: Keeper;
  readonly now: Now;
}

export type AttemptOnPage =
  | OpenAttempt
  | {
      readonly kind: 'elsewhere';
      readonly id: string;
      readonly title: string;
      readonly why: 'open in another tab' | 'taken over' | 'deleted';
    }
  | { readonly kind: 'reading'; readonly id: string; readonly bench: Bench; readonly place: Place };

/** What came of asking for an attempt: null where it is on the page now. */
export type Refusal = { readonly name: string; readonly problems: readonly Problem<string>[] } | null;
/** Nothing came of it where it was left before the bench was ready. */
type Asked = Refusal | 'left';

export const isConcluded = ({ run }: Bench): boolean =>
  run.attempt.entries.some(({ kind }) => kind === 'conclusion');

/** An assessment that is concluded, this trainee's own, and neither handed in nor left without. */
export const isDueAtLeaving = ({ now }: OpenAttempt): boolean =>
  now.bench.run.scenario.support === 'assessment' &&
  isConcluded(now.bench) &&
  !now.isGuest &&
  now.handedIn === null &&
  !now.leftWithout;

export function useOpenAttempt() {
  const [onPage, setOnPage] = useState<AttemptOnPage | null>(null);
  const [problem, setProblem] = useState<KeepProblem | null>(null);
  const held = useRef<{ openAttempt: OpenAttempt; hold: Hold | null } | null>(null);
  const count = useRef(0);

  /** Lets go of the open one, once all of it is kept. */
  const letGo = useCallback(() => {
    const before = held.current;
    held.current = null;
    if (before !== null) before.openAttempt.keeper.settled().then(() => before.hold?.release());
  }, []);

  const put = useCallback(
    (
      id: string,
      now: Pick<Now, 'bench' | 'place'>,
      about: Partial<About>,
      hold: Hold | null,
      begun: Begun | null,
    ) => {
      letGo();
      const end = (why: 'taken over' | 'deleted') => {
        if (held.current?.openAttempt.id !== id) return;
        held.current.openAttempt.keeper.stop();
        held.current = null;
        setOnPage({ kind: 'elsewhere', id, title: now.bench.run.scenario.title, why });
      };
      const keeper = keeperOf(id, TAB, begun, (outcome) => {
        if (outcome === 'taken over' || outcome === 'deleted') end(outcome);
        else setProblem(outcome);
      });
      count.current += 1;
      const { isGuest = false, handedIn = null, leftWithout = false, opened = false } = about;
      const openAttempt: OpenAttempt = {
        kind: 'open',
        id,
        number: count.current,
        keeper,
        now: { ...now, marks: null, handedIn, leftWithout, isGuest, opened },
      };
      held.current = { openAttempt, hold };
      hold?.lost.then(() => end('taken over'));
      setOnPage(openAttempt);
    },
    [letGo],
  );

  /** A new attempt: kept from its first moment. */
  const begin = useCallback(
    async (bench: Bench) => {
      const id = newName();
      const hold = await takeHold(id, 'take over');
      const now = Date.now();
      const { attempt } = bench.run;
      put(id, { bench, place: undefined }, {}, hold, { attempt, about: { began: now, changed: now } });
    },
    [put],
  );

  /** One that this device keeps. */
  const goOn = useCallback(
    async (
      about: Pick<About, 'id' | 'title' | 'concluded'>,
      how: 'ask' | 'take over',
      signal: AbortSignal,
    ): Promise<Asked> => {
      const { id, title, concluded } = about;
      if (held.current?.openAttempt.id === id) {
        setOnPage(held.current.openAttempt);
        return null;
      }
      const { openingKept } = await afterEngine(() => import('./opening.ts'));
      const hold = concluded ? null : await takeHold(id, how);
      try {
        if (hold === null && !concluded) {
          letGo();
          setOnPage({ kind: 'elsewhere', id, title, why: 'open in another tab' });
          return null;
        }
        const kept = concluded ? await keptAttempt(id) : await claimAttempt(id, TAB);
        if (kept === null) {
          hold?.release();
          return refusal(title, NO_LONGER);
        }
        const result = await madeReady(openingKept(kept), signal);
        if (result === null || result.kind === 'refused') {
          hold?.release();
          return result === null ? 'left' : { name: title, problems: result.problems };
        }
        put(id, result, kept.about, hold, null);
        return null;
      } catch (error) {
        hold?.release();
        if (error instanceof NotLoaded) throw error;
        setProblem(problemOf(error));
        return refusal(title, NOT_READ);
      }
    },
    [put, letGo],
  );

  /** One that came from a file; the same attempt kept already goes on where it is further. */
  const open = useCallback(
    async (bench: Bench, signal: AbortSignal): Promise<Asked> => {
      const { title } = bench.run.scenario;
      const id = newName();
      const now = Date.now();
      try {
        const { keepOpened } = await loaded(() => import('../../store/broughtIn.ts'));
        const place = await keepOpened(id, bench.run.attempt, now);
        return goOn({ id: place, title, concluded: isConcluded(bench) }, 'ask', signal);
      } catch (error) {
        // Nothing is kept here: then it is open as long as the page is open.
        setProblem(problemOf(error));
        const about = { began: now, changed: now, isGuest: true };
        const begun = { attempt: bench.run.attempt, about };
        put(id, { bench, place: undefined }, about, null, begun);
        return null;
      }
    },
    [put, goOn],
  );

  /** One that another tab holds, as it is kept at this moment. */
  const read = useCallback(async (id: string, title: string, signal: AbortSignal): Promise<Asked> => {
    const { openingKept } = await afterEngine(() => import('./opening.ts'));
    try {
      const kept = await keptAttempt(id);
      if (kept === null) return refusal(title, NO_LONGER);
      const result = await madeReady(openingKept(kept), signal);
      if (result === null) return 'left';
      if (result.kind === 'refused') return { name: title, problems: result.problems };
      setOnPage({ kind: 'reading', id, bench: result.bench, place: result.place });
      return null;
    } catch (error) {
      if (error instanceof NotLoaded) throw error;
      setProblem(problemOf(error));
      return refusal(title, NOT_READ);
    }
  }, []);

  /** A concluded attempt changes no more: any tab may show it. */
  const letShow = useCallback(() => {
    const { current } = held;
    if (current !== null) current.openAttempt.keeper.settled().then(() => current.hold?.release());
  }, []);

  const putAway = useCallback(
    async (id: string) => {
      if (held.current?.openAttempt.id === id) {
        // What is not kept would be lost.
        if (!(await held.current.openAttempt.keeper.settled())) return;
        letGo();
        setOnPage(null);
      }
      await changeAbout(id, { putAway: true }).catch((error) => setProblem(problemOf(error)));
    },
    [letGo],
  );

  /** Deleted ones are open no longer. */
  const forget = useCallback((isGone: (id: string) => boolean) => {
    const before = held.current;
    if (before !== null && isGone(before.openAttempt.id)) {
      before.openAttempt.keeper.stop();
      before.hold?.release();
      held.current = null;
    }
    setOnPage((now) => (now !== null && isGone(now.id) ? null : now));
  }, []);

  return { onPage, problem, begin, goOn, open, read, letShow, putAway, forget };
}

const NO_LONGER = 'is no longer kept on this device';
const NOT_READ = 'cannot be read: this browser gives nothing back';
const refusal = (name: string, message: string): Refusal => ({ name, problems: [{ path: '', message }] });
