/** The bench: what is known on one side, the test in hand or the choice of one on the other. */

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { rungOf } from '../../../attempt/rung.ts';
import { allowedActions } from '../../../scenario/scenario.ts';
import { testTitle } from '../../../words/actions.ts';
import { Sheet } from '../../drawing/Sheet.tsx';
import type { AttemptActor, AttemptState } from '../../flow/attemptMachine.ts';
import { lastJudged } from '../../flow/attemptMachine.ts';
import { useMeasuring } from '../../flow/useMeasuring.ts';
import { usePaced } from '../../flow/usePaced.ts';
import { Foot } from '../../parts/Foot.tsx';
import { HandedOverSheet } from '../../parts/HandedOverSheet.tsx';
import { KeyPad } from '../../parts/KeyPad.tsx';
import { Papers } from '../../parts/Papers.tsx';
import { WaitingLine } from '../../parts/WaitingLine.tsx';
import { Harm } from './Harm.tsx';
import { Head } from './Head.tsx';
import { Known, Status } from './Known.tsx';
import { PutRightDialog } from './PutRightDialog.tsx';
import { StopDialog } from './StopDialog.tsx';
import { standingText } from './standingText.ts';
import { stageOf, TestCard } from './TestCard.tsx';
import { ChooseTest, nextInOrder, YourTests } from './Tests.tsx';

interface Props {
  readonly state: AttemptState;
  readonly send: AttemptActor['send'];
  readonly wall: () => number;
  readonly keepFailed: boolean;
  /** A line beside the open step, where somebody is led through. */
  readonly beside?: string | null;
  /** There, what comes after a test; else one is chosen. */
  readonly onNext?: () => void;
}

export function BenchScreen(props: Props) {
  const { state, send: sendAtOnce, wall, keepFailed, beside = null, onNext = null } = props;
  const { send, waiting } = usePaced(state, sendAtOnce, wall);
  const isWaiting = waiting !== null;
  const card = useRef<HTMLDivElement>(null);
  const { bench, draft, harm, test, failed } = state.context;
  const { scenario } = bench.run;
  const actions = useMemo(() => allowedActions(scenario), [scenario]);
  const action = actions.find(({ id }) => id === test);
  const stage = action === undefined ? null : stageOf(state);
  const isSettingUp = stage === 'setting up';
  const again = action === undefined ? lastJudged(bench) : null;
  const isOpen = stage === 'observing' && state.matches('working');
  const measuring = useMeasuring(bench, test);
  // What is beside the open step is drawn again only where something of it has changed.
  const stop = useCallback(() => send({ type: 'stop' }), [send]);
  const choose = useCallback((id: string) => send({ type: 'choose', test: id }), [send]);
  const putRight = useCallback(() => send({ type: 'put right' }), [send]);
  const conclude = useCallback(() => send({ type: 'conclude' }), [send]);
  const heading = useRef<HTMLHeadingElement>(null);
  const [shown, setShown] = useState(false);
  // Between tests the focus goes back to the choice; not when the page has just opened.
  useEffect(() => {
    if (action === undefined && shown) heading.current?.focus();
    if (action !== undefined) setShown(true);
  }, [action, shown]);
  // The wait's own button goes with it: the focus goes back to the open step.
  const waited = useRef(false);
  useEffect(() => {
    if (waited.current && !isWaiting) card.current?.querySelector<HTMLElement>('h3')?.focus();
    waited.current = isWaiting;
  }, [isWaiting]);
  return (
    <div className="bench">
      <Head bench={bench} keepFailed={keepFailed} onStop={stop} />
      <Status bench={bench} />
      <main className={`columns bench-columns${isOpen ? ' leads-open' : ''}`}>
        <div className="in-view">
          <Sheet
            bench={bench}
            position={isSettingUp ? draft.position : bench.position}
            measuring={measuring}
            test={action === undefined ? null : test}
            stage={action?.stage}
            isOpen={isOpen}
            isSettingUp={isSettingUp}
            unfolded={isSettingUp || stage === 'observing'}
            standing={standingText(bench, stage, state.context.since)}
          />
          <div className="strip-known">
            <Known bench={bench} />
          </div>
        </div>
        <div className="card-column">
          {beside === null ? null : (
            <p className="beside-step" role="status">
              {beside}
            </p>
          )}
          {action === undefined ? null : (
            <div ref={card} className="test-card-place" inert={isWaiting}>
              <TestCard
                state={state}
                action={action}
                send={send}
                wall={wall}
                measuring={measuring}
                onNext={onNext}
              />
            </div>
          )}
          {action === undefined || (stage === 'told' && onNext === null) ? (
            <section className="stack" aria-labelledby="choose-heading">
              <h2 id="choose-heading" ref={heading} tabIndex={-1}>
                Choose a test
              </h2>
              {again === null ? null : (
                <div className="acts apart">
                  <span className="note">Judged: {testTitle(again.test)}.</span>
                  <button type="button" className="plain" onClick={() => send({ type: 'judge again' })}>
                    Judge it again
                  </button>
                </div>
              )}
              <ChooseTest
                actions={actions}
                isInOrder={rungOf(scenario.support, bench.run.attempt) === 1}
                next={nextInOrder(bench, actions)}
                onChoose={choose}
                onPutRight={putRight}
                onConclude={conclude}
              />
            </section>
          ) : null}
          {waiting === null ? null : <WaitingLine waiting={waiting} />}
        </div>
        <div className="wide-stack beside">
          <YourTests bench={bench} />
          <HandedOverSheet handedOver={bench.run.handedOver} />
          <Papers scenario={bench.run.scenario} papers={bench.run.papers} />
        </div>
      </main>
      <Foot />
      <KeyPad />
      {state.matches({ working: 'putting right' }) ? (
        <PutRightDialog
          bench={bench}
          failed={failed}
          onPutRight={(what) => send({ type: 'do', operation: { op: 'put-right', what }, wall: wall() })}
          onLeave={() => send({ type: 'leave' })}
        />
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
