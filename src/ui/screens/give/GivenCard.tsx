/** What a learner sees of a giving-out before it is begun: the same for the learner and for the tutor who looks first. */
import type { ReactNode } from 'react';
import type { ReadGiving } from '../../../desk/giving.ts';
import { RUNG_MORE } from '../../../words/rungChoice.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import type { Offered } from '../offered.ts';
import { unitLine } from '../offered.ts';

interface Props {
  readonly read: ReadGiving;
  /** What stands beside each job. */
  readonly beside: (at: number) => ReactNode;
}

export function GivenCard({ read: { giving, jobs }, beside }: Props) {
  return (
    <div className="stack">
      <p>
        Word on the board: <strong>{giving.word}</strong>. If yours is another one, this is not your lesson.
      </p>
      <p>
        <strong>{RUNG_NAMES[giving.rung]}</strong>: {RUNG_MORE[giving.rung]}.{' '}
        {giving.held === undefined ? '' : 'The debrief waits for a second word from your tutor. '}
        {giving.rule === undefined ? '' : `${ruleText(giving.rule, jobs.length)} `}
        {giving.minutes === undefined ? '' : `${timeText(giving.minutes)} `}
        {giving.variants.length === 0 ? '' : 'Everybody gets figures of their own. '}
        The page that runs a job holds its answer: begin where your tutor supervises.
      </p>
      <ol className="attempt-rows" aria-label="Jobs">
        {jobs.map(({ file, scenario }, i) => (
          <li key={scenario.id}>
            <div>
              <h3>{scenario.title}</h3>
              {scenario.symptom === null ? null : <q>{scenario.symptom}</q>}
              <p>{scenario.brief}</p>
              <p className="note">
                {unitLine(file as Offered)} · {scenario.rules}
              </p>
            </div>
            {beside(i)}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** Extra time is whoever's who needs it: nothing ends by the clock. */
export const timeText = (minutes: number): string =>
  `Meant to take ${minutes} ${minutes === 1 ? 'minute' : 'minutes'}. Nothing ends by the clock, and time is in no mark.`;

/** `To pass the set: 8 of 10 jobs, no critical act, no unsound unit accepted.` */
export const ruleText = (
  rule: { readonly pass: number; readonly noCritical: boolean; readonly noUnsound: boolean },
  of: number,
): string =>
  `To pass the set: ${[
    `${rule.pass} of ${of} jobs`,
    ...(rule.noCritical ? ['no critical act'] : []),
    ...(rule.noUnsound ? ['no unsound unit accepted'] : []),
  ].join(', ')}.`;
