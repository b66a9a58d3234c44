/**
 * The first minute: three screens before any explaining. One pair of pins reads dead, another one kills. Skip is always
 * there; it is come to once by itself, and from the cautions later.
 */
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import type { Run } from '../../../attempt/record/run.ts';
import { LIVE } from '../../../bench/port.ts';
import { FIRST_MINUTE } from '../../../store/choices.ts';
import { INDICATOR_WORDS } from '../../../words/seen.ts';
import { loaded } from '../../flow/loading.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { shownText } from '../../format/figures.ts';
import { useFocus } from '../../parts/useFocus.ts';
import type { Pair, Pin } from './minute.ts';
import { moved, pairText, readBetween, startingMinute } from './minute.ts';
import { Pins } from './Pins.tsx';

/** What is read now: the leads, the figure, and whether it can kill. */
interface Read {
  readonly run: Run;
  readonly pair: Pair;
  readonly text: string;
  readonly isLive: boolean;
}

const FIRST: Pair = ['L1', 'N'];
const SECOND: Pair = ['L1', 'PE'];

interface Props {
  readonly onSkip: () => void;
  readonly onBegin: () => void;
}

export function FirstMinute({ onSkip, onBegin }: Props) {
  const { result, failed } = useSliced(startingMinute);
  const [read, setRead] = useState<Read | null>(null);
  const [wouldTouch, setWouldTouch] = useState(false);
  const screen = read === null ? 1 : read.isLive ? 3 : 2;
  const heading = useFocus<HTMLHeadingElement>(screen);
  useEffect(() => {
    if (screen === 3) FIRST_MINUTE.keep('done');
  }, [screen]);
  const run = read?.run ?? result;
  const readAt = (pair: Pair) => {
    if (run !== null) setRead(readingOf(run, pair));
  };
  const skip = () => {
    FIRST_MINUTE.keep('done');
    onSkip();
  };
  const opened = useOpened(read);
  return (
    <div className="minute">
      <header className="head">
        <div className="head-title">
          <h1>Your first minute</h1>
          <p>
            simulated, <strong>training only</strong>
          </p>
        </div>
        <button type="button" className="plain" onClick={skip}>
          Skip
        </button>
      </header>
      <main>
        <div className="minute-body">
          <div className="minute-words">
            <h2 ref={heading} tabIndex={-1} className="takeaway">
              {HEADINGS[screen]}
            </h2>
            <p role="status">{failed ?? lineOf(read, wouldTouch)}</p>
          </div>
          {opened.drawing ?? (
            <Pins
              says={run === null ? null : (INDICATOR_WORDS[run.seen.indicator] ?? null)}
              pair={read?.pair ?? null}
              reading={read?.text ?? ''}
              onPin={read === null ? null : (pin: Pin) => readAt(moved(read.pair, pin))}
            />
          )}
        </div>
        <div className="bar">
          {read === null ? (
            <>
              <p className="bar-line">On site: isolate, lock off, prove dead first.</p>
              <div className="bar-acts even">
                {['safe', 'not safe', 'can’t tell yet'].map((words) => (
                  <button key={words} type="button" disabled={run === null} onClick={() => readAt(FIRST)}>
                    {words}
                  </button>
                ))}
              </div>
            </>
          ) : screen === 2 ? (
            <>
              <p className="bar-line">
                <strong className="of-lead">{pairText(read.pair, ' and ')}</strong>, voltage · touch another
                pin to move a lead
              </p>
              <div className="bar-acts even">
                <button
                  type="button"
                  onClick={() => {
                    setWouldTouch(true);
                    readAt(SECOND);
                  }}
                >
                  safe to touch
                </button>
                <button type="button" onClick={() => readAt(SECOND)}>
                  another pair first
                </button>
              </div>
            </>
          ) : (
            <>
              <p className="bar-line">Three pairs prove it dead: L–N, L–PE, N–PE.</p>
              <div className="bar-acts">
                <button type="button" aria-pressed={opened.drawing !== null} onClick={opened.toggle}>
                  See it opened
                </button>
                <button type="button" className="main" onClick={onBegin}>
                  First charge point
                  <small>4 minutes</small>
                </button>
              </div>
            </>
          )}
        </div>
      </main>
    </div>
  );
}

const HEADINGS = {
  1: 'Nothing is plugged in. Is it safe to touch the pins?',
  2: 'Would you touch them?',
  3: 'One pair proves nothing.',
} as const;

function lineOf(read: Read | null, wouldTouch: boolean): string {
  if (read === null) return 'The supply is on, the unit waits.';
  const { pair, text, isLive } = read;
  if (!isLive) return `A voltage tester from ${pairText(pair, ' to ')} shows ${text}.`;
  return wouldTouch
    ? `You would have touched ${text} to earth: the L pole is stuck.`
    : `${pairText(pair, ' to ')} shows ${text}. The L pole is stuck and the N pole is open, so N floats up to L.`;
}

function readingOf(run: Run, pair: Pair): Read {
  const { run: done, reading } = readBetween(run, pair);
  return {
    run: done,
    pair,
    text: shownText(reading),
    isLive: (reading.value ?? 0) > LIVE.volts,
  };
}

/** The opened drawing in place of the pins, once it was asked for and has come. */
function useOpened(read: Read | null): { readonly drawing: ReactNode | null; readonly toggle: () => void } {
  const [isAsked, setAsked] = useState(false);
  const [drawing, setDrawing] = useState<ReactNode | null>(null);
  useEffect(() => {
    if (!isAsked || read === null) return setDrawing(null);
    let isHere = true;
    const { scenario, attempt, papers } = read.run;
    loaded(() => import('./OpenedUp.tsx')).then(
      ({ OpenedUp, lockstep }) => {
        if (isHere)
          setDrawing(
            <figure className="minute-opened">
              <OpenedUp papers={papers} followed={lockstep(scenario, attempt)} />
              <figcaption>
                <strong>1</strong> The L pole is stuck: closed, though nothing asks for it. The N pole is
                open.
              </figcaption>
            </figure>,
          );
      },
      () => {
        if (isHere) setDrawing(<p role="status">The opened drawing did not come. Try again later.</p>);
      },
    );
    return () => {
      isHere = false;
    };
  }, [isAsked, read]);
  return { drawing, toggle: () => setAsked(!isAsked) };
}
