/**
 * The first minute, once, and then the first four minutes: three short tests on two benches that were handed over, with a line beside each step, and
 * then a whole job. Nothing of it is kept or marked.
 */
import type { ReactNode } from 'react';
import { useCallback, useEffect, useState } from 'react';
import { FIRST_MINUTE, FIRST_RUN } from '../../../store/choices.ts';
import type { Bench } from '../../flow/bench.ts';
import { beginningOn } from '../../flow/start.ts';
import { useFlow } from '../../flow/useFlow.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { useThinkingTime } from '../../flow/useThinkingTime.ts';
import { CAUTION_LINE } from '../../parts/Cautions.tsx';
import { BenchScreen } from '../bench/BenchScreen.tsx';
import { stepOf } from '../bench/TestCard.tsx';
import type { Offered } from '../offered.ts';
import { Reading } from '../Reading.tsx';
import { WHOLE_JOB } from '../shelf.ts';
import type { Part } from './course.ts';
import { COURSE } from './course.ts';
import { FirstMinute } from './FirstMinute.tsx';

interface Props {
  /** The first minute is asked for once more. */
  readonly isMinuteAgain?: boolean;
  readonly onWholeJob: (offered: Offered) => void;
  readonly onLeave: () => void;
}

export function FirstRun({ isMinuteAgain = false, onWholeJob, onLeave }: Props) {
  const [at, setAt] = useState(-1);
  const [hasMinute, setHasMinute] = useState(isMinuteAgain || FIRST_MINUTE.kept() === 'not yet');
  // The first bench is got ready while the opening is read.
  const number = Math.max(0, at);
  const part = COURSE[number];
  const isOver = part === undefined;
  useEffect(() => {
    if (isOver) FIRST_RUN.keep('done');
  }, [isOver]);
  if (part === undefined) return <Closing onWholeJob={onWholeJob} onLeave={onLeave} />;
  return (
    <OnePart
      key={number}
      part={part}
      opening={
        at >= 0 ? null : hasMinute ? (
          <FirstMinute
            onBegin={() => setAt(0)}
            onSkip={() => (isMinuteAgain ? onLeave() : setHasMinute(false))}
          />
        ) : (
          <Opening onBegin={() => setAt(0)} onLeave={onLeave} />
        )
      }
      onDone={() => setAt(at + 1)}
      onLeave={onLeave}
    />
  );
}

interface PartProps {
  readonly part: Part;
  /** What is read and done meanwhile. */
  readonly opening: ReactNode | null;
  readonly onDone: () => void;
  readonly onLeave: () => void;
}

function OnePart({ part, opening, onDone, onLeave }: PartProps) {
  const { result: bench, failed } = useSliced(useCallback(() => gettingReady(part), [part]));
  if (opening !== null) return opening;
  if (bench !== null) return <Lessons part={part} bench={bench} onDone={onDone} onLeave={onLeave} />;
  return (
    <Reading title="First run" about="a bench that is handed over">
      <p role="status">
        {failed ?? 'Getting the bench ready: the tests that are handed over are carried out …'}
      </p>
    </Reading>
  );
}

interface LessonsProps extends Pick<PartProps, 'part' | 'onDone' | 'onLeave'> {
  readonly bench: Bench;
}

function Lessons({ part, bench, onDone, onLeave }: LessonsProps) {
  const [state, send] = useFlow({ bench });
  const wall = useThinkingTime(0);
  const { test } = state.context;
  const { entries } = state.context.bench.run.attempt;
  const judged = entries.filter(({ kind }) => kind === 'judgement').length;
  const next = part.lessons[judged];
  const isBetween = state.matches({ working: 'choosing' });
  useEffect(() => {
    if (!isBetween) return;
    if (next === undefined) onDone();
    else send({ type: 'choose', test: next.test });
  }, [isBetween, next, onDone, send]);
  // Stopping here has nothing to conclude.
  const hasStopped = state.matches('concluding');
  useEffect(() => {
    if (hasStopped) onLeave();
  }, [hasStopped, onLeave]);
  if (isBetween || hasStopped) return null;
  const lesson = part.lessons.find((one) => one.test === test);
  const step = stepOf(state);
  return (
    <BenchScreen
      state={state}
      send={send}
      wall={wall}
      keepFailed={false}
      beside={step === null ? null : (lesson?.beside[step] ?? null)}
      onNext={() => send({ type: 'next' })}
    />
  );
}

function* gettingReady({ file }: Part): Generator<null, Bench> {
  return (yield* beginningOn(file, 2, '')).bench;
}

interface OpeningProps {
  readonly onBegin: () => void;
  readonly onLeave: () => void;
}

function Opening({ onBegin, onLeave }: OpeningProps) {
  return (
    <Reading title="Four minutes to begin with" about="first run">
      <div className="stack prose">
        <p>
          <strong>{CAUTION_LINE}</strong>
        </p>
        <p>
          A bench is handed over to you: a charge point on a wall, its dead tests done and signed. You say
          what a correct unit should and should not do, lock it, read, and judge. Three short tests; then a
          whole job, from isolation.
        </p>
        <div className="acts">
          <button type="button" className="main" onClick={onBegin}>
            Take the bench over
          </button>
          <button type="button" className="plain" onClick={onLeave}>
            Choose a job instead
          </button>
        </div>
      </div>
    </Reading>
  );
}

interface ClosingProps {
  readonly onWholeJob: (offered: Offered) => void;
  readonly onLeave: () => void;
}

function Closing({ onWholeJob, onLeave }: ClosingProps) {
  return (
    <Reading title="What the third test showed" about="first run">
      <div className="stack prose">
        <p>
          From line to neutral the detector read next to nothing, and yet the line stood at full voltage to PE
          with nothing plugged in: the line pole of the contactor was closed and the neutral pole open, so
          that no current could flow through a detector between them. One pair proves nothing dead. All pairs
          do, with a detector that was itself proved.
        </p>
        <p>Every job goes like this: predict, observe, judge; and stop when something is not safe.</p>
        <div className="acts">
          <button type="button" className="main" onClick={() => onWholeJob(WHOLE_JOB)}>
            Now a whole job, from isolation
          </button>
          <button type="button" className="plain" onClick={onLeave}>
            Choose a job
          </button>
        </div>
      </div>
    </Reading>
  );
}
