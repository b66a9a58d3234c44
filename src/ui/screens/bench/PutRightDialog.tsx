/** Putting something right between tests: a cause from the list, done by hand. It is never said what was there. */
import { useState } from 'react';
import { benchTime } from '../../../words/benchTime.ts';
import { refusalText } from '../../../words/refusals.ts';
import { operationText } from '../../../words/trade.ts';
import type { Bench } from '../../flow/bench.ts';
import { CauseChoice } from '../../parts/CauseChoice.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { NotWorkedOut } from '../../parts/NotWorkedOut.tsx';

interface Props {
  readonly bench: Bench;
  readonly failed: string | null;
  readonly onPutRight: (what: string) => void;
  readonly onLeave: () => void;
}

export function PutRightDialog({ bench, failed, onPutRight, onLeave }: Props) {
  const [cause, setCause] = useState('');
  const [before] = useState(bench.happened.length);
  const last = bench.happened.length > before ? bench.happened.at(-1) : undefined;
  return (
    <Dialog title="Put something right" closeWith="Back to the tests" onClose={onLeave}>
      <p>
        Dead work, whatever the part is: isolate, lock off, open the cover, prove dead at the board and at the
        unit’s terminals. It takes a quarter of an hour. Only a test shows whether it was what was wrong.
      </p>
      <CauseChoice value={cause} onChange={setCause} />
      <button type="button" className="main" disabled={cause === ''} onClick={() => onPutRight(cause)}>
        Put it right
      </button>
      <p role="status">
        {last?.operation.op !== 'put-right'
          ? ''
          : last.outcome.refused === null
            ? `${benchTime(last.at)} ${operationText(last.operation)}.`
            : `Not done: ${refusalText(last.outcome.refused)}.`}
      </p>
      <NotWorkedOut failed={failed} />
    </Dialog>
  );
}
