/**
 * One attempt from its first test to its debrief: holds the flow machine, keeps the log and the place on the device
 * after every change, and shows the screen that belongs to where the attempt is.
 */
import { lazy, Suspense, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { isConverted } from '../../attempt/record/written.ts';
import type { KeepProblem } from '../../store/keepProblem.ts';
import { changeAbout, clearHandedIn, keptAttempts } from '../../store/keptAttempt.ts';
import type { AttemptContext } from '../flow/attemptContext.ts';
import { BesideAttempt, KeepProblemOfAttempt } from '../flow/attemptContext.ts';
import type { AttemptActor, AttemptState } from '../flow/attemptMachine.ts';
import { stepIn } from '../flow/attemptMachine.ts';
import type { Bench } from '../flow/bench.ts';
import type { Fields } from '../flow/draftFields.ts';
import { fieldsFrom, forgetAfter } from '../flow/draftFields.ts';
import { loaded } from '../flow/loading.ts';
import type { Place } from '../flow/place.ts';
import { draftOf, standsAt } from '../flow/place.ts';
import { useBrowserBack } from '../flow/useBrowserBack.ts';
import { useFlow } from '../flow/useFlow.ts';
import { FieldsOfAttempt } from '../flow/useKept.ts';
import type { OpenAttempt } from '../flow/useOpenAttempt.ts';
import { useThinkingTime } from '../flow/useThinkingTime.ts';
import { attemptTitle } from './attemptTitle.ts';
import { BenchScreen } from './bench/BenchScreen.tsx';

/** What a bench does without comes with the conclusion, the debrief with it: nobody waits for a file twice. */
const Conclude = lazy(async () => ({
  default: (await loaded(() => import('./conclude/Conclude.tsx'))).Conclude,
}));
const Debrief = lazy(async () => ({
  default: (await loaded(() => import('./debrief/Debrief.tsx'))).Debrief,
}));

const Held = lazy(async () => ({
  default: (await loaded(() => import('./give/Held.tsx'))).Held,
}));
const EarlierFormat = lazy(async () => ({
  default: (await loaded(() => import('./elsewhere/EarlierFormat.tsx'))).EarlierFormat,
}));

const LOADING = (
  <p className="columns" role="status">
    Loading …
  </p>
);

interface Props {
  readonly openAttempt: OpenAttempt;
  /** Why the last change was not kept. */
  readonly problem: KeepProblem | null;
  readonly onConcluded: () => void;
  readonly onAgain: (making: () => Generator<null, Bench>) => void;
}

export function AttemptScreen({ openAttempt, problem, onConcluded, onAgain }: Props) {
  const { now } = openAttempt;
  const [before] = useState(() => ({ bench: now.bench, place: now.place }));
  const [state, send, actor] = useFlow({
    bench: before.bench,
    ...(before.place === undefined ? {} : { place: before.place }),
  });
  const wall = useThinkingTime(before.place?.wall ?? before.bench.run.attempt.entries.at(-1)?.wall ?? 0);
  const fields = useKeeping(openAttempt, actor, wall);
  const tell: AttemptActor['send'] = useCallback(
    (event) => {
      forgetAfter(fields, event, now.bench.run);
      send(event);
    },
    [fields, now, send],
  );
  useBrowserBack(state, tell);
  useLayoutEffect(() => {
    document.title = attemptTitle(state);
  }, [state]);
  // The sheet for stopping lay over the step when the page was closed.
  useEffect(() => {
    if (before.place?.stopping) send({ type: 'stop' });
  }, [before, send]);
  const isOver = state.matches('debrief');
  useEffect(() => {
    if (isOver) onConcluded();
  }, [isOver, onConcluded]);
  const beside = useBeside(openAttempt);
  const keepFailed = problem !== null;
  return (
    <KeepProblemOfAttempt value={problem}>
      <BesideAttempt value={beside}>
        <FieldsOfAttempt value={fields}>
          {isOver && beside.isHeld ? (
            <Suspense fallback={LOADING}>
              <Held attempt={state.context.bench.run.attempt} />
            </Suspense>
          ) : isOver ? (
            <Suspense fallback={LOADING}>
              <Debrief bench={state.context.bench} keepFailed={keepFailed} onAgain={onAgain} />
            </Suspense>
          ) : isConverted(state.context.bench.run.attempt) ? (
            <Suspense fallback={LOADING}>
              <EarlierFormat bench={state.context.bench} />
            </Suspense>
          ) : state.matches('concluding') ? (
            <Suspense fallback={LOADING}>
              <Conclude bench={state.context.bench} send={tell} wall={wall} keepFailed={keepFailed} />
            </Suspense>
          ) : (
            <BenchScreen state={state} send={tell} wall={wall} keepFailed={keepFailed} />
          )}
        </FieldsOfAttempt>
      </BesideAttempt>
    </KeepProblemOfAttempt>
  );
}

/** Keeps every change of the log, of the place and of the fields, as it happens and before it is drawn; gives the fields. */
function useKeeping({ now, keeper }: OpenAttempt, actor: AttemptActor, wall: () => number): Fields {
  const last = useRef<{ readonly bench: Bench; readonly place: string } | null>(null);
  const keep = useRef(() => {});
  const [fields] = useState(() => fieldsFrom(now.place?.fields ?? {}, () => keep.current()));
  keep.current = () => {
    const state = actor.getSnapshot();
    const { bench } = state.context;
    const place = placeOf(state, fields, wall());
    now.bench = bench;
    now.place = place;
    const text = JSON.stringify({ ...place, wall: 0 });
    const before = last.current;
    last.current = { bench, place: text };
    // Nothing has changed by merely opening it.
    if (before === null || (before.bench === bench && before.place === text)) return;
    const { attempt } = bench.run;
    const hasGrown = before.bench.run.attempt !== attempt;
    const isOver = place.step === 'debrief';
    if (hasGrown) now.isGuest = false;
    keeper.keep({
      ...(hasGrown ? { attempt } : {}),
      draft: isOver ? null : draftOf(place, attempt),
      about: {
        changed: Date.now(),
        stands: standsAt(place),
        ...(hasGrown ? { isGuest: false } : {}),
      },
    });
    if (isOver) void askToKeep();
  };
  useEffect(() => {
    keep.current();
    const { unsubscribe } = actor.subscribe(() => keep.current());
    return unsubscribe;
  }, [actor]);
  return fields;
}

function placeOf(state: AttemptState, fields: Fields, wall: number): Place {
  const { test, draft, answers, figures, since } = state.context;
  const step = stepIn(state);
  const stopping = state.matches('stopping');
  return { step, stopping, test, draft, answers, figures, since, wall, fields: fields.all() };
}

/** After the first conclusion there is something to lose: then the browser is asked not to clear it. */
async function askToKeep(): Promise<void> {
  try {
    const concluded = (await keptAttempts()).filter((about) => about.concluded);
    if (concluded.length <= 1) await navigator.storage?.persist();
  } catch {
    // A browser that cannot be asked keeps things as long as it likes.
  }
}

/** What is kept beside the log, from the debrief. */
function useBeside({ id, now }: OpenAttempt): AttemptContext {
  const [handedIn, setHandedIn] = useState(now.handedIn);
  const [isHeld, setHeld] = useState(!now.opened && now.bench.run.attempt.given?.held !== undefined);
  return useMemo(() => {
    // A device that keeps nothing has said so already.
    const change = (part: Parameters<typeof changeAbout>[1]) => void changeAbout(id, part).catch(() => {});
    return {
      isGuest: now.isGuest,
      isHeld,
      handedIn,
      onOpened: () => {
        now.opened = true;
        setHeld(false);
        change({ opened: true });
      },
      onTold: (marks, summary) => {
        now.marks = marks;
        change({ summary });
      },
      onClear:
        now.bench.run.attempt.given?.clears !== true || now.isGuest
          ? null
          : () =>
              void clearHandedIn().then(() => {
                // With the page goes what it still has in hand.
                location.hash = '#/';
                location.reload();
              }),
      onHandedIn: () => {
        const at = Date.now();
        now.handedIn = at;
        setHandedIn(at);
        change({ handedIn: at });
      },
    };
  }, [id, now, handedIn, isHeld]);
}
