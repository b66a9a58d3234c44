/** Leaving an assessment that was not handed in: said once, with the two things that can be done about it. */
import { useState } from 'react';
import { headOf } from '../../../attempt/record/attempt.ts';
import { makeAttemptText } from '../../../attempt/record/fileText.ts';
import { changeAbout } from '../../../store/keptAttempt.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { recordNumber } from '../../format/figures.ts';
import { Dialog } from '../../parts/Dialog.tsx';
import { fileNameOf } from '../../parts/download.ts';
import { HandInButton } from '../../parts/HandIn.tsx';

interface Props {
  readonly openAttempt: OpenAttempt;
  readonly onLeave: () => void;
}

export function Leaving({ openAttempt: { id, now }, onLeave }: Props) {
  const [isGiven, setIsGiven] = useState(false);
  const { attempt } = now.bench.run;
  // A device that keeps nothing has said so already.
  const change = (part: Parameters<typeof changeAbout>[1]) => void changeAbout(id, part).catch(() => {});
  const leave = () => {
    if (!isGiven) {
      now.leftWithout = true;
      change({ leftWithout: true });
    }
    onLeave();
  };
  return (
    <Dialog
      title={isGiven ? 'Handed in' : 'Not handed in'}
      closeWith={isGiven ? 'Leave' : 'Leave without handing in'}
      onClose={leave}
    >
      <p>
        {now.bench.run.scenario.title} is concluded. Your tutor marks it by its file; its record is{' '}
        <strong className="record-number">{recordNumber(headOf(attempt))}</strong>: note it. The attempt stays
        in My record, and can be handed in from there later.
      </p>
      <div className="acts">
        <HandInButton
          file={fileNameOf(attempt, 'hand-in')}
          isMain={!isGiven}
          textOf={() => makeAttemptText(now.marks === null ? attempt : { ...attempt, marks: now.marks })}
          onGiven={() => {
            now.handedIn = Date.now();
            change({ handedIn: now.handedIn });
            setIsGiven(true);
          }}
        />
      </div>
    </Dialog>
  );
}
