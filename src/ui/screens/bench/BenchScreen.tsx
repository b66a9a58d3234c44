/** The bench, one step a screen: the head, what is known in one line, the drawing, and the step with its bar. */

import { lazy, Suspense, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { rungOf } from '../../../attempt/record/rung.ts';
import type { AimId } from '../../../scenario/aims.ts';
import { allowedActions } from '../../../scenario/scenario.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Hand } from '../../drawing/hands.ts';
import { Sheet } from '../../drawing/Sheet.tsx';
import { ROOM } from '../../drawing/useDrawn.ts';
import type { AttemptActor, AttemptState } from '../../flow/attemptMachine.ts';
import { lastJudged } from '../../flow/attemptMachine.ts';
import type { Bench } from '../../flow/bench.ts';
import { loaded } from '../../flow/loading.ts';
import { wordsOfCauses } from '../../flow/loadTests.ts';
import type { MeasurementDraft } from '../../flow/measurement.ts';
import { prepared } from '../../flow/measurement.ts';
import { operationsBetween } from '../../flow/position.ts';
import { DESK, LYING, useMatches } from '../../flow/useMatches.ts';
import { useMeasuring } from '../../flow/useMeasuring.ts';
import { usePaced } from '../../flow/usePaced.ts';
import { shownText } from '../../format/figures.ts';
import { KeyPad } from '../../parts/KeyPad.tsx';
import { takeFocus } from '../../parts/useFocus.ts';
import { WaitingLine } from '../../parts/WaitingLine.tsx';
import { useSounds } from '../../sound/useSounds.ts';
import { readsTrace, useTraces } from '../measure/LateTrace.tsx';
import { aimInHand, askedAims, foundInTest } from './askedAims.ts';
import { ChooseStep } from './ChooseStep.tsx';
import { Harm } from './Harm.tsx';
import type { WayBack } from './Head.tsx';
import { Head } from './Head.tsx';
import { Status } from './Known.tsx';
import { nextInOrder } from './nextInOrder.ts';
import { Rail } from './Rail.tsx';
import { StopDialog } from './StopDialog.tsx';
import { CHOICES_OF, otherPosition } from './setUpRows.ts';
import { standingText } from './standingText.ts';
import type { TestStep } from './TestCard.tsx';
import { TestCard, testStepOf } from './TestCard.tsx';
import { YourTests } from './YourTests.tsx';

/** It names every cause, and comes when it is first asked for. */
const PutRightDialog = lazy(async () => {
  const [dialog] = await Promise.all([loaded(() => import('./PutRightDialog.tsx')), wordsOfCauses()]);
  return { default: dialog.PutRightDialog };
});

/** Where there is no room for the whole sheet. */
function smallView(step: TestStep | null, isLying: boolean): 'upright' | 'strip' | 'part' {
  if (step === 'setting up') return 'upright';
  if (step !== 'predicting') return 'part';
  return isLying ? 'upright' : 'strip';
}

/** What the instrument shows through the leads as they are now; nothing once one of them was moved. */
function readingNow({ happened }: Bench, draft: MeasurementDraft): string | null {
  const last = happened.findLast(({ operation }) => operation.op === 'measure');
  const ready = prepared(draft);
  const [reading] = last?.outcome.readings ?? [];
  return reading !== undefined &&
    ready.ok &&
    JSON.stringify(ready.measurement) === JSON.stringify(last?.operation)
    ? shownText(reading)
    : null;
}

interface Props {
  readonly state: AttemptState;
  readonly send: AttemptActor['send'];
  readonly wall: () => number;
  readonly keepFailed: boolean;
  /** A line beside the open step, where somebody is led through. */
  readonly beside?: string | null;
  /** There, what comes after a test; else one is chosen. */
  readonly onNext?: () => void;
  readonly nextName?: string;
  readonly from?: WayBack;
}

export function BenchScreen(props: Props) {
  const {
    state,
    send: sendAtOnce,
    wall,
    keepFailed,
    beside = null,
    onNext = null,
    nextName = 'Next test',
    from,
  } = props;
  const { send, waiting } = usePaced(state, sendAtOnce, wall);
  const isWaiting = waiting !== null;
  useSounds(state.context.bench);
  const card = useRef<HTMLDivElement>(null);
  const { bench, draft, harm, test, failed } = state.context;
  const { scenario } = bench.run;
  const actions = useMemo(() => allowedActions(scenario), [scenario]);
  useTraces(
    useMemo(() => actions.some((one) => readsTrace(one, bench.run.papers)), [actions, bench.run.papers]),
  );
  const action = actions.find(({ id }) => id === test);
  const step = action === undefined ? null : testStepOf(state);
  const isSettingUp = step === 'setting up' || step === 'predicting';
  const again = action === undefined ? lastJudged(bench) : null;
  const isOpen = step === 'observing' && state.matches('working');
  const rung = rungOf(scenario.support, bench.run.attempt);
  // A symptom is followed where it leads: no test is the next one.
  const isFind = scenario.task === 'find';
  const isInOrder = rung === 1 && !isFind;
  const inOrder = nextInOrder(bench, actions);
  const measuring = useMeasuring(bench, test);
  const reading = useMemo(
    () => (isOpen ? readingNow(bench, measuring.draft) : null),
    [isOpen, bench, measuring.draft],
  );
  const isDesk = useMatches(DESK);
  const isLying = useMatches(LYING);
  const hasRoom = useMatches(ROOM);
  const [hand, setHand] = useState<Hand | null>(null);
  // What is beside the open step is drawn again only where something of it has changed.
  const stop = useCallback(() => send({ type: 'stop' }), [send]);
  const choose = useCallback((id: string) => send({ type: 'choose', test: id }), [send]);
  const putRight = useCallback(() => send({ type: 'put right' }), [send]);
  const conclude = useCallback(() => send({ type: 'conclude' }), [send]);
  const onHand = useCallback(
    (touched: Hand) => {
      if (CHOICES_OF[touched] !== undefined) return setHand((open) => (open === touched ? null : touched));
      setHand(null);
      const { position, run } = bench;
      if (isOpen) {
        const to = { ...position, ...otherPosition(touched, position, position) };
        const operations = operationsBetween(position, to, 0, run.papers.sheet.outlet);
        return send({ type: 'do in a row', operations, wall: wall() });
      }
      const changed = otherPosition(touched, draft.position, position);
      send({ type: 'draft', draft: { ...draft, position: { ...draft.position, ...changed } } });
    },
    [draft, bench, isOpen, send, wall],
  );
  const aims = useMemo(() => askedAims(bench, actions), [bench, actions]);
  const inHand = aimInHand(bench, aims, action?.id ?? null);
  const [opened, setOpened] = useState<{ readonly after: AimId | null; readonly aim: AimId | null }>();
  // What was opened by hand stands open until a test of another aim was in hand.
  const aim = action === undefined && opened?.after === inHand ? opened.aim : inHand;
  const openAim = useCallback((one: AimId | null) => setOpened({ after: inHand, aim: one }), [inHand]);
  const hasRail = hasRoom && aims.length > 1 && onNext === null && !isFind;
  const openInRail = useMemo(() => {
    if (action === undefined) return openAim;
    const leaveFor = (one: AimId | null) => {
      send({ type: 'leave' });
      openAim(one);
    };
    return isSettingUp ? leaveFor : null;
  }, [action, isSettingUp, openAim, send]);
  // Before the lock it is set up; after it the hand does it.
  const isHandy = step === 'setting up' || isOpen;
  const hands = useMemo(
    () => (isHandy ? { now: bench.position, onHand, open: hand, acts: isOpen } : null),
    [isHandy, isOpen, bench.position, onHand, hand],
  );
  useEffect(() => {
    if (!isHandy) setHand(null);
  }, [isHandy]);
  // What is chosen before the lock is not what is done after it.
  useEffect(() => {
    if (isOpen) setHand(null);
  }, [isOpen]);
  const heading = useRef<HTMLHeadingElement>(null);
  const [shown, setShown] = useState(false);
  // Between tests the focus goes back to the choice; not when the page has just opened.
  useLayoutEffect(() => {
    if (action === undefined && shown) takeFocus(heading.current);
    if (action !== undefined) setShown(true);
  }, [action, shown]);
  // The wait's own button goes with it: the focus goes back to the open step.
  const waited = useRef(false);
  useLayoutEffect(() => {
    if (waited.current && !isWaiting) takeFocus(card.current?.querySelector('h3') ?? null);
    waited.current = isWaiting;
  }, [isWaiting]);
  // At the first two rungs the tests stand in order; above them one of the same aim comes to hand.
  const ofAim = aims.find(({ id }) => id === inHand)?.tests ?? [];
  const after = isFind ? null : rung <= 2 ? inOrder : nextInOrder(bench, ofAim);
  const next =
    onNext !== null
      ? { name: nextName, go: onNext }
      : after !== null
        ? { name: `Next: ${testTitle(after)}`, go: () => choose(after) }
        : { name: 'Next', go: () => send({ type: 'next' }) };
  return (
    <div className="bench-screen" data-step={step ?? 'choosing'}>
      <Head bench={bench} keepFailed={keepFailed} onStop={stop} from={from} />
      <main className={hasRail ? 'bench-main with-rail' : 'bench-main'}>
        {hasRail ? <Rail aims={aims} open={aim} test={action?.id ?? null} onOpen={openInRail} /> : null}
        <Status bench={bench} />
        <div className="bench-drawing">
          <Sheet
            bench={bench}
            position={isSettingUp ? draft.position : bench.position}
            measuring={measuring}
            test={action === undefined ? null : test}
            stage={action?.stage}
            isOpen={isOpen}
            isSettingUp={isSettingUp}
            hands={hands}
            reading={reading}
            view={hasRoom ? 'whole' : smallView(step, isLying)}
            standing={standingText(bench, step, state.context.since)}
          />
          {isDesk ? <YourTests bench={bench} /> : null}
        </div>
        <div className="step-column">
          {beside === null ? null : (
            <p className="beside-step" role="status">
              {beside}
            </p>
          )}
          {action === undefined ? (
            <ChooseStep
              aims={aims}
              open={aim}
              symptom={
                scenario.symptom === null
                  ? null
                  : { text: scenario.symptom, found: (id) => foundInTest(bench, id) }
              }
              hasRail={hasRail}
              heading={heading}
              again={again?.test ?? null}
              next={isInOrder ? inOrder : null}
              isAllDone={inOrder === null}
              onOpen={openAim}
              onChoose={choose}
              onAgain={() => send({ type: 'judge again' })}
              onPutRight={putRight}
              onConclude={conclude}
            />
          ) : (
            <div ref={card} className="step-place" inert={isWaiting}>
              <TestCard
                state={state}
                action={action}
                send={send}
                wall={wall}
                measuring={measuring}
                hand={hand}
                onHand={setHand}
                next={next}
                hasOthers={onNext === null}
              />
            </div>
          )}
          {waiting === null ? null : <WaitingLine waiting={waiting} />}
        </div>
      </main>
      <KeyPad />
      {state.matches({ working: 'putting right' }) ? (
        <Suspense
          fallback={
            <p className="turning" role="status">
              Loading …
            </p>
          }
        >
          <PutRightDialog
            bench={bench}
            failed={failed}
            onPutRight={(what) => send({ type: 'do', operation: { op: 'put-right', what }, wall: wall() })}
            onLeave={() => send({ type: 'leave' })}
          />
        </Suspense>
      ) : null}
      {state.matches('harmed') && harm !== null ? (
        <Harm
          acts={harm.acts}
          happened={bench.happened[harm.happened]}
          onMakeSafe={() => send({ type: 'make safe', wall: wall() })}
        />
      ) : null}
      {state.matches('stopping') ? (
        <StopDialog
          onStop={(why) => send({ type: 'stopped', why, wall: wall() })}
          onGoOn={() => send({ type: 'go on' })}
        />
      ) : null}
    </div>
  );
}
