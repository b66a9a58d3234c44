/**
 * My record: every attempt kept on this device with what came of it, and what they add up to: goal, progress, how
 * often each sureness was right, weak topics. Sums follow from the logs by replay; what a file says is not believed.
 */
import { useState } from 'react';
import { Link } from 'wouter';
import { aimSums, calibrationOver, weakTopics } from '../../../attempt/marks/recordSums.ts';
import type { About } from '../../../store/about.ts';
import { deleteAttempt } from '../../../store/deleting.ts';
import { WHY_NOT_KEPT } from '../../../words/keeping.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { momentText } from '../../format/dates.ts';
import { Foot } from '../../parts/Foot.tsx';
import { GoalKeeper } from '../../parts/GoalKeeper.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { AskedTopics } from './AskedTopics.tsx';
import { AttemptRows } from './AttemptRows.tsx';
import { ByAim } from './ByAim.tsx';
import { Calibration } from './Calibration.tsx';
import { DeleteDialog } from './DeleteDialog.tsx';
import { Everything } from './Everything.tsx';
import { Progress } from './Progress.tsx';
import { countingIn, numbered } from './rows.ts';
import { useKeptRows } from './useKeptRows.ts';
import { WeakTopics } from './WeakTopics.tsx';

interface Props {
  /** What could not be kept of it goes out with the rest. */
  readonly openAttempt: OpenAttempt | null;
  readonly onOpen: (about: About) => void;
  /** Tells whoever has one of them in hand. */
  readonly onDeleted: (isGone: (id: string) => boolean) => void;
}

export function MyRecord({ openAttempt, onOpen, onDeleted }: Props) {
  const { all, unlisted, goal, unreadable, working, problem, readAgain, stopWorking, hasProblem } =
    useKeptRows();
  /** Another number for a goal that may be another. */
  const [changes, setChanges] = useState(0);
  const [deleting, setDeleting] = useState<About | null>(null);
  const rows = numbered(all ?? []);
  const counting = countingIn(rows);
  const summaries = counting.map(({ summary }) => summary);
  // Nothing is shown that would be pushed away as soon as the record is read.
  const isRead = all !== null || problem !== null;
  return (
    <>
      <PageHead
        title="My record"
        about="kept on this device"
        takesFocus
        acts={
          <Link href="/" className="button">
            Home
          </Link>
        }
      />
      {isRead ? (
        <main className="columns record">
          <div className="wide-stack">
            <section className="stack" aria-labelledby="goal-heading">
              <h2 id="goal-heading">One goal for next time</h2>
              <GoalKeeper key={changes} kept={goal} />
            </section>
            <Progress points={counting} />
            <Calibration over={calibrationOver(summaries)} />
            <ByAim sums={aimSums(summaries)} />
            <WeakTopics topics={weakTopics(summaries)} />
            <AskedTopics changes={changes} />
          </div>
          <div className="wide-stack">
            <section className="stack" aria-labelledby="attempts-heading">
              <div className="bar-title">
                <h2 id="attempts-heading" tabIndex={-1}>
                  {all === null || rows.length === 0
                    ? 'Attempts'
                    : `${rows.length} ${rows.length === 1 ? 'attempt' : 'attempts'}`}
                </h2>
                {rows.length < 2 ? null : <span className="note">newest first</span>}
              </div>
              {problem === null ? null : (
                <p className="error" role="alert">
                  <strong>The record cannot be read.</strong> {WHY_NOT_KEPT[problem]}
                </p>
              )}
              {working === null ? null : (
                <div className="acts" role="status">
                  <p className="note">
                    Working out {working.done + 1} of {working.of} by replay …
                  </p>
                  <button type="button" className="plain" onClick={stopWorking}>
                    Cancel
                  </button>
                </div>
              )}
              {all !== null && rows.length === 0 && problem === null ? (
                <p>
                  No attempt is kept here yet. Each one stands here from its first test on, with what came of
                  it: <Link href="/">choose a scenario</Link>.
                </p>
              ) : null}
              {unlisted === 0 ? null : (
                <p>
                  {unlisted === 1
                    ? 'One more is kept here that cannot be read.'
                    : `${unlisted} more are kept here that cannot be read.`}{' '}
                  <i>Export everything</i> holds {unlisted === 1 ? 'it as it was' : 'them as they were'} kept.
                </p>
              )}
              <AttemptRows rows={rows} unreadable={unreadable} onOpen={onOpen} onDelete={setDeleting} />
            </section>
            <Everything
              openAttempt={openAttempt}
              count={rows.length}
              onChanged={() => {
                setChanges(changes + 1);
                readAgain();
              }}
              onDeleted={() => {
                onDeleted(() => true);
                setChanges(changes + 1);
                readAgain();
              }}
            />
          </div>
        </main>
      ) : (
        <main className="columns marking">
          <p role="status" className="note">
            Reading what is kept here …
          </p>
        </main>
      )}
      <Foot />
      {deleting === null ? null : (
        <DeleteDialog
          title="Delete this attempt"
          keepWord="Keep it"
          deleteWord="Delete this attempt"
          onKeep={() => setDeleting(null)}
          onDelete={async () => {
            try {
              await deleteAttempt(deleting.id);
              onDeleted((id) => id === deleting.id);
            } catch (error) {
              hasProblem(error);
            }
            setDeleting(null);
            readAgain();
            document.getElementById('attempts-heading')?.focus();
          }}
        >
          <p>
            <strong>{deleting.title}</strong>
            {deleting.began === null ? '' : `, begun ${momentText(deleting.began)}`}
            {deleting.handedIn === null ? '' : ', handed in'}. Once deleted it cannot be brought back, unless
            you exported it.
          </p>
        </DeleteDialog>
      )}
    </>
  );
}
