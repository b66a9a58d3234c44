/**
 * What was collected since the page was opened: rows and the texts behind them. It stays while the page is open, whatever
 * screen is shown; nothing of it is kept on the device but the tutor's notes, which stand in the giving-out.
 */
import { useSyncExternalStore } from 'react';
import type { Row } from '../../../desk/collect.ts';
import type { Asked, Dropped, Told } from '../../flow/collectWorker.ts';
import collectWorker from '../../flow/collectWorker.ts?worker&url';
import { ownWorker } from '../../flow/ownWorker.ts';

export interface Session {
  readonly rows: readonly Row[];
  /** By the row's place. */
  readonly texts: readonly (string | null)[];
  /** Of what is being read; null while nothing is. */
  readonly progress: { readonly done: number; readonly of: number } | null;
  /** How long the last reading took, ms. */
  readonly took: number | null;
  readonly failed: string | null;
}

const NOTHING: Session = { rows: [], texts: [], progress: null, took: null, failed: null };

let now = NOTHING;
let worker: Worker | null = null;
const listeners = new Set<() => void>();

function change(part: Partial<Session>): void {
  now = { ...now, ...part };
  for (const listener of listeners) listener();
}

export const useSession = (): Session =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => now,
  );

export function cancelCollecting(): void {
  worker?.terminate();
  worker = null;
  change({ progress: null });
}

export const forgetCollected = (): void => {
  cancelCollecting();
  change(NOTHING);
};

/** Reads and marks what was dropped, beside what is here already. */
export function collect(dropped: readonly Dropped[], beside: Omit<Asked, 'dropped'>): void {
  if (dropped.length === 0) return;
  cancelCollecting();
  const began = performance.now();
  // What was refused and comes again, now with its giving-out, is not told twice.
  const isAgain = ({ kind, name }: Row) =>
    kind === 'refused' && dropped.some((one) => name === one.name || name.startsWith(`${one.name}/`));
  const stays = now.rows.map((row) => !isAgain(row));
  change({
    rows: now.rows.filter((_, i) => stays[i]),
    texts: now.texts.filter((_, i) => stays[i]),
  });
  change({ progress: { done: 0, of: dropped.length }, failed: null, took: null });
  worker = new Worker(ownWorker(new URL(collectWorker, location.href).href), { type: 'module' });
  const own = worker;
  own.onmessage = ({ data }: MessageEvent<Told>) => {
    if (own !== worker) return;
    if (data.kind === 'taken')
      change({
        rows: [...now.rows, ...data.taken.map(({ row }) => row)],
        texts: [...now.texts, ...data.taken.map(({ text }) => text)],
        progress: { done: data.done, of: data.of },
      });
    else {
      cancelCollecting();
      change(data.kind === 'over' ? { took: performance.now() - began } : { failed: data.why });
    }
  };
  own.onerror = ({ message }) => {
    cancelCollecting();
    change({ failed: message });
  };
  own.postMessage({ dropped, ...beside } satisfies Asked);
}
