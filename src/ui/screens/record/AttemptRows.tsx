/** Attempts one under the other: which job, when, and what came of it; each can be opened or deleted. */
import { useState } from 'react';
import { rungOf } from '../../../attempt/record/rung.ts';
import type { About } from '../../../store/about.ts';
import { isHeld } from '../../../store/about.ts';
import { titleOf } from '../../../words/keeping.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { standsText } from '../../../words/stands.ts';
import { verdictTitle } from '../../../words/verdicts.ts';
import { dayText, momentText } from '../../format/dates.ts';
import { recordNumber } from '../../format/figures.ts';
import type { Row } from './rows.ts';

interface Props {
  readonly rows: readonly Row[];
  readonly unreadable: ReadonlySet<string>;
  readonly onOpen: (about: About) => void;
  readonly onDelete: (about: About) => void;
}

/** As many as are taken in at a glance; the rest at a press. */
const SHOWN = 10;

export function AttemptRows({ rows, unreadable, onOpen, onDelete }: Props) {
  const [isWhole, setIsWhole] = useState(false);
  if (rows.length === 0) return null;
  const shown = isWhole ? rows : rows.slice(0, SHOWN);
  return (
    <>
      <ol className="attempt-rows" reversed aria-label="Attempts, newest first">
        {shown.map((row) => {
          const { about, number } = row;
          const title = titleOf(about.title);
          const which = `${number}, ${title}`;
          return (
            <li key={about.id} value={number}>
              <div>
                <h3>
                  {number} · {title}
                </h3>
                <p className="note">{frameText(about)}</p>
                <Outcome row={row} isUnreadable={unreadable.has(about.id)} />
              </div>
              <div className="acts">
                <button type="button" onClick={() => onOpen(about)}>
                  {about.concluded ? 'Debrief' : 'Go on'} <span className="unseen">{which}</span>
                </button>
                <button
                  type="button"
                  className="plain"
                  aria-haspopup="dialog"
                  onClick={() => onDelete(about)}
                >
                  Delete… <span className="unseen">{which}</span>
                </button>
              </div>
            </li>
          );
        })}
      </ol>
      {shown.length === rows.length ? null : (
        <button type="button" onClick={() => setIsWhole(true)}>
          Show all {rows.length} attempts
        </button>
      )}
    </>
  );
}

function frameText({ began, support, rung, trainee, head, isGuest, handedIn }: About): string {
  return [
    began === null ? 'begun before days were kept' : momentText(began),
    RUNG_NAMES[rungOf(support, { rung })],
    trainee ?? '',
    head === null ? '' : `record ${recordNumber(head.slice(0, 8))}`,
    isGuest ? 'from a file: listed, not counted' : '',
    handedIn === null ? '' : `handed in ${dayText(handedIn)}`,
  ]
    .filter((part) => part !== '')
    .join(' · ');
}

function Outcome({ row, isUnreadable }: { readonly row: Row; readonly isUnreadable: boolean }) {
  const { about, summary } = row;
  if (!about.concluded)
    return <p>Unfinished{about.stands === null ? '' : `, ${standsText(about.stands)}`}</p>;
  if (isUnreadable)
    return (
      <p>
        <strong>Cannot be replayed by this version.</strong> Its file can still be exported with everything.
      </p>
    );
  if (isHeld(row.about)) return <p className="note">the debrief waits for your tutor’s second word</p>;
  if (summary === null) return <p className="note">not worked out yet</p>;
  const { said, verdictRight, gatesMet, total, of, passed, differs } = summary;
  return (
    <p>
      “{said === null ? 'no verdict' : verdictTitle(said)}”: {verdictRight ? 'right' : 'not right'} · gates{' '}
      {gatesMet ? 'met' : <strong>not met</strong>} ·{' '}
      <strong>
        {total} of {of}
      </strong>
      , {passed ? 'passed' : 'not yet passed'}
      {differs === 0 ? null : (
        <>
          {' '}
          · <strong>the file and its replay differ</strong>
        </>
      )}
    </p>
  );
}
