/** What is said and offered after something in the page failed: what it was, what is kept, and the ways on. */
import { useEffect, useState } from 'react';
import type { KeepProblem } from '../../store/keepProblem.ts';
import { problemOf } from '../../store/keepProblem.ts';
import { keptAttempts } from '../../store/keptAttempt.ts';
import { WHY_NOT_KEPT } from '../../words/keeping.ts';
import { NotLoaded } from '../flow/loading.ts';
import type { OpenAttempt } from '../flow/useOpenAttempt.ts';
import { exportEverything } from './exportEverything.ts';

/** `what`: the screen that failed, as the beginning of a sentence. */
export const failureTitle = (error: unknown, what: string): string =>
  error instanceof NotLoaded ? 'A part of this page did not come' : `${what} failed`;

interface Props {
  readonly error: unknown;
  readonly what: string;
  readonly openAttempt: OpenAttempt | null;
}

export function AfterFailure({ error, what, openAttempt }: Props) {
  const problem = useKeptOrNot(openAttempt);
  const [given, setGiven] = useState<string | null>(null);
  /** What is in hand would be lost by a reload. */
  const isLost = openAttempt !== null && problem !== null && problem !== undefined;
  const exportAll = () =>
    exportEverything(openAttempt).then(setGiven, (reason) =>
      setGiven(`Not exported. ${WHY_NOT_KEPT[problemOf(reason)]}`),
    );
  return (
    <>
      <p>
        {error instanceof NotLoaded
          ? `${what} needs a file that could not be loaded. The network may be gone, or the page was renewed on its host since you opened it.`
          : 'A fault in this page stopped it. It is nothing that you did.'}
      </p>
      {problem === undefined ? null : (
        <p role="status">
          {problem !== null ? (
            <>
              <strong>{openAttempt === null ? 'Nothing is kept here.' : 'Your attempt is not kept.'}</strong>{' '}
              {WHY_NOT_KEPT[problem]}{' '}
              {openAttempt === null
                ? ''
                : 'Export everything before you reload: what is not exported is lost.'}
            </>
          ) : openAttempt === null ? (
            'What is kept on this device is untouched.'
          ) : (
            'Your attempt is kept on this device; at most your last press is missing.'
          )}
        </p>
      )}
      <div className="acts">
        <button type="button" className={isLost ? '' : 'main'} onClick={() => location.reload()}>
          Reload
        </button>
        <button type="button" className={isLost ? 'main' : ''} onClick={() => void exportAll()}>
          Export everything
        </button>
      </div>
      {given === null ? null : <p role="status">{given}</p>}
      <details>
        <summary>For whoever looks after this page: what failed</summary>
        <p className="note fault-text">{detailOf(error)}</p>
      </details>
    </>
  );
}

/** Why not all is kept; null where it is, undefined while that is being found out. */
function useKeptOrNot(openAttempt: OpenAttempt | null): KeepProblem | null | undefined {
  const [problem, setProblem] = useState<KeepProblem | null>();
  useEffect(() => {
    let isStale = false;
    const told = (what: KeepProblem | null) => {
      if (!isStale) setProblem(what);
    };
    keptAttempts().then(
      async () => {
        await openAttempt?.keeper.settled();
        told(openAttempt?.keeper.unkept()?.problem ?? null);
      },
      (error) => told(problemOf(error)),
    );
    return () => {
      isStale = true;
    };
  }, [openAttempt]);
  return problem;
}

function detailOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { cause } = error;
  return [
    `${error.name}: ${error.message}`,
    error.stack ?? '',
    ...(cause === undefined ? [] : [detailOf(cause)]),
  ]
    .filter((line) => line !== '')
    .join('\n');
}
