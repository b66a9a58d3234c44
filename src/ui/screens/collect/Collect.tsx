/**
 * Collecting: files, folders or a platform's zip are dropped, each attempt is replayed in a worker on the tutor's own copy of
 * its job, and the class stands below: what needs a look, what for the next lesson, how hard each line was.
 */
import { useDeferredValue, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Class } from '../../../desk/class.ts';
import { classOf, jobTitles } from '../../../desk/class.ts';
import type { Row } from '../../../desk/collect.ts';
import { csvOf } from '../../../desk/csv.ts';
import type { Giving } from '../../../desk/giving.ts';
import { changeGiving } from '../../../store/givings.ts';
import { csvRows, setText } from '../../../words/collect.ts';
import { useGivings } from '../../flow/useGivings.ts';
import { download } from '../../parts/download.ts';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { OFFERED } from '../shelf.ts';
import { ClassBlock } from './ClassBlock.tsx';
import { ClassTable } from './ClassTable.tsx';
import { Drop } from './Drop.tsx';
import { Figures } from './Figures.tsx';
import { Givings } from './Givings.tsx';
import { Lessons } from './Lessons.tsx';
import { OneAttempt } from './OneAttempt.tsx';
import { placeIn } from './place.ts';
import type { Session } from './session.ts';
import { collect, useSession } from './session.ts';

export function Collect({ row }: { readonly row: string | null }) {
  const [givings, setGivings] = useGivings();
  const session = useSession();
  // A long table is drawn when there is time: a press comes first.
  const { rows, texts } = useDeferredValue(session);
  const made = useMemo(() => classOf(rows, givings ?? []), [rows, givings]);
  if (givings === null) return <main className="columns marking" />;
  const place = placeIn(row);
  const one = place === null ? undefined : made.rows.find((each) => each.row === rows[place.row]);
  if (place !== null && one?.row.kind === 'marked')
    return (
      <OneAttempt
        one={one}
        row={one.row}
        text={texts[place.row] ?? null}
        entry={place.entry}
        shown={place.shown}
        givings={givings}
        onChange={async (giving, change) => {
          const changed = await changeGiving(giving, change).catch(() => change(giving));
          setGivings(givings.map((each) => (each.giving === changed.giving ? changed : each)));
        }}
      />
    );
  return <Whole made={made} rows={rows} session={session} givings={givings} onGivings={setGivings} />;
}

interface WholeProps {
  readonly made: Class;
  /** Of which the class is made. */
  readonly rows: readonly Row[];
  readonly session: Session;
  readonly givings: readonly Giving[];
  readonly onGivings: (givings: readonly Giving[]) => void;
}

function Whole({ made, rows, session, givings, onGivings }: WholeProps) {
  const [isShown, setShown] = useState(false);
  const isEmpty = rows.length === 0;
  return (
    <div className={isShown ? 'projector' : ''}>
      <PageHead
        title="Collect"
        about={isEmpty ? 'what was handed in' : aboutText(rows.length, givings, made)}
        says="nothing leaves this device"
        takesFocus
        acts={
          <>
            {isShown ? null : (
              <Link href="/give" className="button">
                Give out
              </Link>
            )}
            {isEmpty ? null : (
              <>
                <button type="button" aria-pressed={isShown} onClick={() => setShown(!isShown)}>
                  {isShown ? 'Back to the table' : 'Show in class'}
                </button>
                {isShown ? null : (
                  <>
                    <button type="button" onClick={() => print()}>
                      Print
                    </button>
                    <button
                      type="button"
                      onClick={() =>
                        // A spreadsheet takes it for UTF-8 by its first bytes.
                        download('class.csv', `\ufeff${csvOf(csvRows(made.rows, made.sets))}`, 'text/csv')
                      }
                    >
                      Save as CSV
                    </button>
                  </>
                )}
              </>
            )}
          </>
        }
      />
      <main className="columns collect">
        <div className="wide-stack">
          {isShown ? null : (
            <Drop
              session={session}
              onDropped={(dropped, opened) => {
                const isOpened = ({ giving }: Giving) => opened.some((one) => one.giving === giving);
                const all = [...opened, ...givings.filter((each) => !isOpened(each))];
                onGivings(all);
                collect(dropped, { givings: all, shipped: OFFERED });
              }}
            />
          )}
          {isEmpty || isShown ? null : <ClassBlock made={made} givings={givings} />}
          {isEmpty || isShown ? null : (
            <section className="stack" aria-labelledby="class-heading">
              <div className="acts apart">
                <h2 id="class-heading">The class</h2>
                <span className="note">what needs a look stands first</span>
              </div>
              <ClassTable rows={made.rows} placeOf={(row) => rows.indexOf(row)} />
              <p className="note">{rangeText(made)} One job is practice: a grade needs about ten.</p>
              {[...made.sets].map(([giving, learners]) => (
                <section key={giving} className="stack" aria-labelledby={`set-${giving}`}>
                  <h3 id={`set-${giving}`}>The set {givings.find((each) => each.giving === giving)?.word}</h3>
                  <ul className="choices">
                    {learners.map((learner) => (
                      <li key={learner.label}>
                        <strong>{learner.label}</strong>: {setText(learner)}
                      </li>
                    ))}
                  </ul>
                </section>
              ))}
            </section>
          )}
          <Lessons
            made={made}
            isShown={isShown}
            placeOf={(row) => rows.indexOf(row)}
            onShow={() => setShown(true)}
          />
          {isEmpty || isShown ? null : <Figures made={made} placeOf={(row) => rows.indexOf(row)} />}
          {isShown ? null : <Givings givings={givings} onChange={onGivings} hasRows={!isEmpty} />}
        </div>
      </main>
      <Foot />
    </div>
  );
}

/** Whose it is, as far as it is of one giving-out. */
function aboutText(count: number, givings: readonly Giving[], { rows }: Class): string {
  const ids = new Set(rows.flatMap(({ row }) => (row.kind === 'marked' ? [row.giving] : [])));
  const [only] = ids;
  const giving = ids.size === 1 ? givings.find((each) => each.giving === only) : undefined;
  if (giving === undefined) return count === 1 ? '1 file' : `${count} files`;
  const [job, ...others] = jobTitles(rows);
  const jobs = giving.jobs.length === 1 && others.length === 0 ? job : `${giving.jobs.length} jobs`;
  return [
    ...(giving.group === '' ? [] : [giving.group]),
    jobs,
    ...(giving.variants.length === 0 ? [] : ['equal variants']),
    `word ${giving.word}`,
  ].join(' · ');
}

function rangeText({ totals, counted }: Class): string {
  if (totals === null) return '';
  const { median, from, to } = totals;
  const [middle, least, most] = [median, from, to].map((share) => Math.round(share));
  return `${counted} counted; of 100: median ${middle}, from ${least} to ${most}.`;
}
