/** The worker that weighs jobs (weighWorker.ts) for as long as a screen shows what it says. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { JobAsked } from '../../fairness/make.ts';
import type { FairnessView, SoFar } from '../../fairness/view.ts';
import type { Problem } from '../../scenario/problem.ts';
import { ownWorker } from './ownWorker.ts';
import type { Answer, Asked } from './weighWorker.ts';
import address from './weighWorker.ts?worker&url';

/** Never what was true of the job before its last change. */
export type Weighed =
  | { readonly is: 'working'; readonly soFar: SoFar | null }
  | { readonly is: 'weighed'; readonly view: FairnessView; readonly seconds: number }
  | { readonly is: 'refused'; readonly problems: readonly Problem[] }
  | { readonly is: 'cancelled' }
  | { readonly is: 'failed'; readonly why: string };

/** Whoever types is not waited on letter by letter, ms. */
const AFTER_TYPING = 200;

class Weigher {
  private readonly worker: Worker;
  private number = 0;
  private hear: (answer: Answer) => void = () => {};

  constructor() {
    this.worker = new Worker(ownWorker(new URL(address, location.href).href), { type: 'module' });
    this.worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      if (data.number === this.number) this.hear(data);
    });
    this.worker.addEventListener('error', ({ message }) =>
      this.hear({ number: this.number, told: 'failed', why: message || 'its worker was not loaded' }),
    );
  }

  ask(asked: Unnumbered<Extract<Asked, { number: number }>>, hear: (answer: Answer) => void): void {
    this.number += 1;
    this.hear = hear;
    this.worker.postMessage({ ...asked, number: this.number });
  }

  leave(): void {
    this.number += 1;
    this.hear = () => {};
    this.worker.postMessage({ ask: 'nothing' } satisfies Asked);
  }

  end(): void {
    this.worker.terminate();
  }
}

type Unnumbered<A> = A extends unknown ? Omit<A, 'number'> : never;

function useWorker(): () => Weigher {
  const weigher = useRef<Weigher | null>(null);
  useEffect(() => {
    return () => {
      weigher.current?.end();
      weigher.current = null;
    };
  }, []);
  return useCallback(() => {
    weigher.current ??= new Weigher();
    return weigher.current;
  }, []);
}

/** Of the file as it is now; `file` keeps its identity while nothing changes. */
export function useWeighed(file: object): Weighed & { cancel: () => void; again: () => void } {
  const weigher = useWorker();
  const [state, setState] = useState<{ of: object; weighed: Weighed } | null>(null);
  const [asked, setAsked] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once more after it was cancelled
  useEffect(() => {
    const set = (weighed: Weighed) => setState({ of: file, weighed });
    set({ is: 'working', soFar: null });
    const timer = setTimeout(() => {
      const began = performance.now();
      try {
        weigher().ask({ ask: 'weigh', file }, (answer) => {
          if (answer.told === 'so far') set({ is: 'working', soFar: answer.soFar });
          if (answer.told === 'weighed')
            set({ is: 'weighed', view: answer.view, seconds: (performance.now() - began) / 1000 });
          if (answer.told === 'refused') set({ is: 'refused', problems: answer.problems });
          if (answer.told === 'failed') set({ is: 'failed', why: answer.why });
        });
      } catch (error) {
        set({ is: 'failed', why: error instanceof Error ? error.message : String(error) });
      }
    }, AFTER_TYPING);
    return () => clearTimeout(timer);
  }, [file, weigher, asked]);
  const weighed: Weighed = state?.of === file ? state.weighed : { is: 'working', soFar: null };
  return {
    ...weighed,
    cancel: () => {
      weigher().leave();
      setState({ of: file, weighed: { is: 'cancelled' } });
    },
    again: () => setAsked(asked + 1),
  };
}

/** Draws a job; what it is asked for last is what it tells. */
export function useDrawing(): {
  readonly isDrawing: boolean;
  readonly draw: (
    job: JobAsked,
    onMade: (file: object | null) => void,
    onFailed: (why: string) => void,
  ) => void;
  readonly cancel: () => void;
} {
  const weigher = useWorker();
  const [isDrawing, setDrawing] = useState(false);
  return {
    isDrawing,
    draw: (job, onMade, onFailed) => {
      setDrawing(true);
      weigher().ask({ ask: 'make', job }, (answer) => {
        setDrawing(false);
        if (answer.told === 'made') onMade(answer.file);
        if (answer.told === 'failed') onFailed(answer.why);
      });
    },
    cancel: () => {
      weigher().leave();
      setDrawing(false);
    },
  };
}
