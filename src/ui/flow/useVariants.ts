/** Variants that are proved equal to their jobs, by as many workers as the device has cores for. */
import { useEffect, useState } from 'react';
import type { Weight } from '../../desk/variants.ts';
import { allEqual } from '../../desk/variants.ts';
import { ownWorker } from './ownWorker.ts';
import type { Answer, Asked } from './weighWorker.ts';
import address from './weighWorker.ts?worker&url';

export interface Wanted {
  readonly jobs: readonly object[];
  readonly word: string;
  readonly count: number;
}

export interface Proving {
  /** Variants proved so far, in their order. */
  readonly proved: readonly number[];
  /** The jobs themselves are weighed, by which the variants are judged. */
  readonly isMeasured: boolean;
  /** How many were weighed and are not equal. */
  readonly unequal: number;
  readonly isOver: boolean;
  readonly failed: string | null;
}

type Compared = Extract<Answer, { told: 'compared' }>;

/** How many are tried at most for each that is wanted. */
const TRIES = 3;
/** One is left to the page and to whatever else runs; more do not share the memory of a phone well. */
const MOST_WORKERS = 4;
const NOTHING: Proving = { proved: [], isMeasured: false, unequal: 0, isOver: false, failed: null };

/** `wanted` keeps its identity while the same is wanted; null: nothing is. */
export function useVariants(wanted: Wanted | null): Proving {
  const [state, setState] = useState<{ of: Wanted | null; proving: Proving }>({ of: null, proving: NOTHING });
  useEffect(() => {
    if (wanted === null) return;
    const end = prove(wanted, (proving) => setState({ of: wanted, proving }));
    return () => end();
  }, [wanted]);
  return state.of === wanted ? state.proving : NOTHING;
}

/** Until it is ended by what it returns. */
function prove({ jobs, word, count }: Wanted, tell: (proving: Proving) => void): () => void {
  /** Of the jobs themselves; undefined as long as it is not known. */
  let own: readonly Weight[] | null | undefined;
  const waiting: Compared[] = [];
  let now = NOTHING;
  // The jobs themselves first.
  let next: number | null = null;
  let left = 0;
  const workers: Worker[] = [];
  const end = () => {
    for (const worker of workers) worker.terminate();
  };
  const change = (part: Partial<Proving>) => {
    now = { ...now, ...part };
    tell(now);
    if (now.isOver || now.failed !== null) end();
  };
  const ask = (worker: Worker) => {
    if (next !== null && next >= TRIES * count) return;
    worker.postMessage({ ask: 'compare', number: 0, jobs, word, n: next } satisfies Asked);
    next = next === null ? 0 : next + 1;
    left += 1;
  };
  const judge = ({ n, by }: Compared) => {
    if (n === null || now.isOver) return;
    if (!allEqual(own ?? null, by)) change({ unequal: now.unequal + 1 });
    else {
      const proved = [...now.proved, n].sort((x, y) => x - y);
      change({ proved, isOver: proved.length >= count });
    }
  };
  const { hardwareConcurrency: cores = 2 } = navigator;
  try {
    for (let i = 0; i < Math.min(cores > 2 ? cores - 1 : cores, MOST_WORKERS); i += 1) {
      const worker = new Worker(ownWorker(new URL(address, location.href).href), { type: 'module' });
      workers.push(worker);
      worker.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.told === 'failed') return change({ failed: data.why });
        if (data.told !== 'compared') return;
        left -= 1;
        if (data.n === null) {
          own = data.by;
          change({ isMeasured: true });
          for (const answer of waiting.splice(0)) judge(answer);
        } else if (own === undefined) waiting.push(data);
        else judge(data);
        if (now.isOver) return;
        if (own === null) change({ isOver: true });
        else {
          ask(worker);
          if (left === 0) change({ isOver: true });
        }
      };
      worker.onerror = ({ message }) => change({ failed: message || 'its worker was not loaded' });
      ask(worker);
    }
  } catch (error) {
    change({ failed: error instanceof Error ? error.message : String(error) });
  }
  return end;
}
