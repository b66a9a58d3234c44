/**
 * Handing in: writes the attempt's file and shows the eight characters by which its log is known again, to be noted.
 * In assessment it stands out; in practice it is one line. Also tells what is kept of the debrief beside the log.
 */
import { useContext, useEffect, useState } from 'react';
import type { Debrief } from '../../attempt/marks/debrief.ts';
import { summaryOf } from '../../attempt/marks/summary.ts';
import { headOf } from '../../attempt/record/attempt.ts';
import { makeAttemptText } from '../../attempt/record/fileText.ts';
import type { AttemptContext } from '../flow/attemptContext.ts';
import { BesideAttempt } from '../flow/attemptContext.ts';
import { momentText } from '../format/dates.ts';
import { recordNumber } from '../format/figures.ts';
import { download, fileNameOf } from './download.ts';

/** An assessment is handed in before anything else is done with it. */
export const isDue = ({ run }: Debrief, beside: AttemptContext | null): boolean =>
  run.scenario.support === 'assessment' && beside?.isGuest !== true && (beside?.handedIn ?? null) === null;

export function HandIn({ told }: { readonly told: Debrief }) {
  const beside = useContext(BesideAttempt);
  const { attempt } = told.run;
  useEffect(() => {
    beside?.onTold(told.marks, summaryOf(told));
  }, [told, beside]);
  const file = fileNameOf(attempt, 'hand-in');
  const before = beside?.handedIn ?? null;
  const isMain = isDue(told, beside);
  return (
    <section
      className={isMain ? 'hand-in found first not-printed' : 'hand-in not-printed'}
      aria-labelledby="hand-in-heading"
    >
      <h2 id="hand-in-heading" className="unseen">
        Hand in
      </h2>
      <p>
        record <strong className="record-number">{recordNumber(headOf(attempt))}</strong>
        {isMain
          ? ': note it, and hand the file in before you leave. Your tutor marks it by that file.'
          : before === null
            ? null
            : `, handed in ${momentText(before)}`}
      </p>
      <HandInButton
        file={file}
        isMain={isMain}
        textOf={() => makeAttemptText({ ...attempt, marks: told.marks })}
        onGiven={() => beside?.onHandedIn()}
      />
    </section>
  );
}

interface ButtonProps {
  readonly file: string;
  readonly isMain: boolean;
  readonly textOf: () => string;
  readonly onGiven: () => void;
}

/** The button, and what came of it. */
export function HandInButton({ file, isMain, textOf, onGiven }: ButtonProps) {
  const beside = useContext(BesideAttempt);
  const [came, setCame] = useState<'given' | 'not written' | null>(null);
  return (
    <>
      <button
        type="button"
        className={isMain ? 'main' : ''}
        onClick={() => {
          try {
            download(file, textOf());
            setCame('given');
            onGiven();
          } catch {
            setCame('not written');
          }
        }}
      >
        Hand in
      </button>
      {beside?.onClear == null || beside.handedIn === null ? null : (
        <p className="acts">
          <button type="button" onClick={beside.onClear}>
            Keep nothing here
          </button>
          <span className="note">
            A shared computer: once your file is where it belongs, take the attempt off this device. Whoever
            opens the work next does it too.
          </span>
        </p>
      )}
      {came === null ? null : (
        <p className="note" role="status">
          {came === 'given' ? (
            <>
              The browser was given <strong>{file}</strong>. See that it is among your downloads; if it is
              not, hand in again.
            </>
          ) : (
            <>
              <strong>The file was not written:</strong> this browser takes none. The attempt is unchanged;
              try again in another browser.
            </>
          )}
        </p>
      )}
    </>
  );
}
