/** What was given out from here: saved with its comments for another computer, and what is stored of it, said in a list. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { Giving } from '../../../desk/giving.ts';
import { givingText } from '../../../desk/giving.ts';
import { deleteGiving } from '../../../store/givings.ts';
import { dayText } from '../../format/dates.ts';
import { download } from '../../parts/download.ts';
import { DeleteDialog } from '../record/DeleteDialog.tsx';
import { forgetCollected } from './session.ts';

interface Props {
  readonly givings: readonly Giving[];
  readonly onChange: (givings: readonly Giving[]) => void;
  readonly hasRows: boolean;
}

export function Givings({ givings, onChange, hasRows }: Props) {
  const [deleting, setDeleting] = useState<Giving | 'all' | null>(null);
  return (
    <section className="stack not-printed" aria-labelledby="givings-heading">
      <h2 id="givings-heading">Given out from this device</h2>
      {givings.length === 0 ? (
        <p>
          Nothing yet. What you give out is kept here, and marks what comes back. Given out elsewhere: drop
          your own copy of it above.
        </p>
      ) : (
        <ul className="attempt-rows">
          {givings.map((giving) => (
            <li key={giving.giving}>
              <div>
                <strong>{giving.word}</strong> {giving.group}
                <p className="note">
                  {whatIn(giving)}
                  {giving.tutor?.at === undefined ? '' : `, ${dayText(giving.tutor.at)}`}
                  {giving.tutor?.second === undefined ? '' : `, second word ${giving.tutor.second}`}
                  {notesIn(giving) === 0 ? '' : `, notes on ${notesIn(giving)} attempts`}
                </p>
              </div>
              <div className="acts">
                {giving.quiz !== undefined ? null : (
                  <Link href={`/give/${giving.giving}`} className="button">
                    Link and code <span className="unseen">{giving.word}</span>
                  </Link>
                )}
                <button
                  type="button"
                  onClick={() =>
                    download(
                      `${giving.word.replaceAll(/[^\p{L}\p{N}-]+/gu, '-')}-tutor.json`,
                      givingText(giving),
                    )
                  }
                >
                  Save with comments <span className="unseen">{giving.word}</span>
                </button>
                <button type="button" className="plain" onClick={() => setDeleting(giving)}>
                  Delete… <span className="unseen">{giving.word}</span>
                </button>
              </div>
            </li>
          ))}
        </ul>
      )}
      <h3>What this device stores of it</h3>
      <ul className="choices note">
        <li>
          Of each giving-out: jobs or quiz, word, group, labels, second word, your comments and gates set
          aside, until you delete it.
        </li>
        <li>
          Of what was handed in: nothing. Rows and files are gone when the page is closed; drop them again.
        </li>
      </ul>
      <div className="acts">
        {hasRows ? (
          <button type="button" onClick={forgetCollected}>
            Clear the table
          </button>
        ) : null}
        {givings.length === 0 ? null : (
          <button type="button" className="plain" onClick={() => setDeleting('all')}>
            Delete all of them…
          </button>
        )}
      </div>
      {deleting === null ? null : (
        <DeleteDialog
          title={deleting === 'all' ? 'Delete all giving-outs' : `Delete ${deleting.word}`}
          keepWord="Keep"
          deleteWord="Delete"
          onKeep={() => setDeleting(null)}
          onDelete={() => {
            const gone = deleting === 'all' ? givings : [deleting];
            void Promise.all(gone.map(({ giving }) => deleteGiving(giving))).then(() => {
              onChange(givings.filter((each) => !gone.includes(each)));
              setDeleting(null);
            });
          }}
        >
          <p>
            What was handed in of it cannot be marked without it, and your comments go with it, unless you
            saved them.
          </p>
        </DeleteDialog>
      )}
    </section>
  );
}

const whatIn = ({ jobs, quiz }: Giving): string => {
  if (quiz !== undefined) return `a quiz of ${quiz.count} questions, seed ${quiz.seed}`;
  return jobs.length === 1 ? titleIn(jobs[0]) : `${jobs.length} jobs`;
};
const titleIn = (job: unknown): string => String((job as { title?: unknown } | null)?.title ?? '');
const notesIn = ({ tutor }: Giving): number => Object.keys(tutor?.notes ?? {}).length;
