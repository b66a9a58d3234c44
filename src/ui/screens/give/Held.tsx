/**
 * An attempt that is concluded and whose debrief waits: it is handed in, and the tutor gives the word that opens the
 * debrief, when everybody has finished.
 */
import { useContext, useState } from 'react';
import type { Attempt } from '../../../attempt/record/attempt.ts';
import { headOf } from '../../../attempt/record/attempt.ts';
import { makeAttemptText } from '../../../attempt/record/fileText.ts';
import { heldBy } from '../../../desk/heldBy.ts';
import { BesideAttempt } from '../../flow/attemptContext.ts';
import { recordNumber } from '../../format/figures.ts';
import { fileNameOf } from '../../parts/download.ts';
import { Foot } from '../../parts/Foot.tsx';
import { HandInButton } from '../../parts/HandIn.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { TextField } from '../../parts/TextField.tsx';

export function Held({ attempt }: { readonly attempt: Attempt }) {
  const beside = useContext(BesideAttempt);
  const [word, setWord] = useState('');
  const [wrong, setWrong] = useState(false);
  const { title } = (attempt.scenario ?? {}) as { title?: unknown };
  return (
    <>
      <PageHead title="Concluded" about={String(title ?? '')} takesFocus />
      <main className="columns">
        <div className="wide-stack">
          <section className="stack" aria-labelledby="hand-in-heading">
            <h2 id="hand-in-heading">Hand in</h2>
            <p className="result record-number">record {recordNumber(headOf(attempt))}</p>
            <p>Note these eight characters, and hand the file in. Your tutor marks it by that file.</p>
            <div className="acts">
              <HandInButton
                file={fileNameOf(attempt, 'hand-in')}
                isMain={(beside?.handedIn ?? null) === null}
                textOf={() => makeAttemptText(attempt)}
                onGiven={() => beside?.onHandedIn()}
              />
            </div>
          </section>
          <form
            className="stack"
            onSubmit={(event) => {
              event.preventDefault();
              if (heldBy(attempt.given?.id ?? '', word) === attempt.given?.held) beside?.onOpened();
              else setWrong(true);
            }}
          >
            <h2>The debrief waits</h2>
            <p className="prose">
              Your tutor shows the debrief when everybody has finished, and gives a second word for it.
            </p>
            <TextField
              label="the second word"
              value={word}
              maxLength={60}
              error={wrong ? 'That is not the word for this debrief. Look at the board again.' : null}
              onChange={(text) => {
                setWrong(false);
                setWord(text);
              }}
            />
            <button type="submit">Open the debrief</button>
          </form>
        </div>
      </main>
      <Foot />
    </>
  );
}
