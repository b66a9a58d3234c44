/** On paper for the learner: what is asked, and how to open it. Nothing of the key is on it. */
import type { ReadGiving } from '../../../desk/giving.ts';
import { allowedActions } from '../../../scenario/scenario.ts';
import { RUNG_MORE, RUNG_NAMES } from '../../../words/rungs.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Offered } from '../offered.ts';
import { unitLine } from '../offered.ts';
import { ruleText, timeText } from './GivenCard.tsx';
import { QrCode } from './QrCode.tsx';
import { SheetBlock } from './SheetBlock.tsx';

interface Props {
  readonly read: ReadGiving;
  /** Null where the link is too long: then the file is given. */
  readonly address: string | null;
}

export function TaskSheet({ read: { giving, jobs }, address }: Props) {
  return (
    <div className="on-paper task-sheet">
      {jobs.map(({ file, scenario }, i) => (
        <article key={scenario.id} className="sheet-page">
          <h2>
            {jobs.length === 1 ? '' : `${i + 1} of ${jobs.length}: `}
            {scenario.title}
          </h2>
          <p>
            {giving.group === '' ? '' : `${giving.group} · `}word on the board: <strong>{giving.word}</strong>
          </p>
          {scenario.symptom === null ? null : <q>{scenario.symptom}</q>}
          <p>{scenario.brief}</p>
          <p>
            {unitLine(file as Offered)} · {scenario.rules}
          </p>
          <p>
            {RUNG_NAMES[giving.rung]}: {RUNG_MORE[giving.rung]}.
            {giving.rule === undefined ? '' : ` ${ruleText(giving.rule, jobs.length)}`}
          </p>
          {giving.minutes === undefined || i > 0 ? null : <p>{timeText(giving.minutes)}</p>}
          {scenario.allowed === 'all' ? null : (
            <p>
              Tests to choose from:{' '}
              {allowedActions(scenario)
                .map(({ id }) => testTitle(id))
                .join('; ')}
              .
            </p>
          )}
          <p>A critical unsafe act, or a unit accepted that is not shown to be sound, is not a pass.</p>
          {address === null ? (
            <p>
              Open the file that your tutor gives you on the trainer’s page, under Scenarios, Open a file.
            </p>
          ) : i === 0 ? (
            <div className="link-and-code">
              <QrCode text={address} name="QR code of the link" />
              <p className="link-text">{address}</p>
            </div>
          ) : null}
          <dl className="to-write">
            <dt>your {giving.clears ? 'code' : 'label'}</dt>
            <dd />
            <dt>record, eight characters</dt>
            <dd />
          </dl>
          <SheetBlock
            title={scenario.title}
            word={giving.word}
            rules={scenario.rules}
            page={i + 1}
            of={jobs.length}
          />
        </article>
      ))}
    </div>
  );
}
