/**
 * Which step of the replay is shown, and play: a slow cut from step to step, which stops at the end, in a background
 * tab and for whoever asks for less motion (there each press is one step).
 */
import { useCallback, useEffect, useState } from 'react';

/** Between two steps of play, ms: slow enough to read a drawing by. */
const PLAY_EVERY = 1500;

export interface Stepping {
  readonly step: number;
  readonly playing: boolean;
  readonly go: (step: number) => void;
  readonly play: () => void;
  readonly stop: () => void;
}

export function useStepping(last: number): Stepping {
  const [step, setStep] = useState(0);
  const [playing, setPlaying] = useState(false);
  const within = useCallback((wanted: number) => Math.max(0, Math.min(last, wanted)), [last]);
  const stop = useCallback(() => setPlaying(false), []);
  useEffect(() => {
    if (!playing) return;
    const timer = window.setInterval(() => setStep((now) => within(now + 1)), PLAY_EVERY);
    const hidden = () => document.hidden && stop();
    document.addEventListener('visibilitychange', hidden);
    return () => {
      window.clearInterval(timer);
      document.removeEventListener('visibilitychange', hidden);
    };
  }, [playing, within, stop]);
  useEffect(() => {
    if (step >= last) stop();
  }, [step, last, stop]);
  return {
    step: within(step),
    playing,
    go: useCallback(
      (wanted: number) => {
        stop();
        setStep(within(wanted));
      },
      [within, stop],
    ),
    play: () => {
      if (window.matchMedia('(prefers-reduced-motion: reduce)').matches) setStep((now) => within(now + 1));
      else setPlaying(true);
    },
    stop,
  };
}
