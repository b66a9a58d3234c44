/**
 * What an attempt was marked by, for whoever holds it against something else: the scenario and where it is from, the
 * record's code, weights, pass mark, gates set aside, rung, thinking time; and apart from it whatever is not to be believed.
 */
import { memo, useMemo } from 'react';
import type { Debrief as Told } from '../../../attempt/marks/debrief.ts';
import type { Attempt } from '../../../attempt/record/attempt.ts';
import { headOf } from '../../../attempt/record/attempt.ts';
import type { Origin } from '../../../attempt/record/origin.ts';
import { idOf, originOf } from '../../../attempt/record/origin.ts';
import { rungOf } from '../../../attempt/record/rung.ts';
import { MOST_LISTED } from '../../../scenario/problem.ts';
import { filesFor } from '../../../words/aimJobs.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { doubtText, UNTIMELY_WORDS } from '../../../words/doubts.ts';
import { ownLimitLines } from '../../../words/ownLimits.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { unsafeActText } from '../../../words/unsafeActs.ts';
import { recordNumber } from '../../format/figures.ts';
import { SheetLines } from '../../parts/SheetLines.tsx';
import { OFFERED } from '../shelf.ts';

const FROM: Readonly<Record<Origin, string>> = {
  known: 'as it comes with this page',
  carried: 'carried: the file’s own, which nobody vouches for',
  against: 'the one it was held against',
};

const originOnPage = (attempt: Attempt) =>
  originOf(attempt, undefined, filesFor(idOf(attempt.scenario), OFFERED));

/** Whatever is not to be believed of the file: never folded away. */
export const Doubts = memo(function Doubts({ told }: { readonly told: Told }) {
  const { run, marks } = told;
  const origin = useMemo(() => originOnPage(run.attempt), [run]);
  return (
    <>
      <Doubtful
        title="The scenario in this file is not the one of that name that comes with this page."
        lines={origin.differs.map(doubtText)}
      />
      <Doubtful
        title="These came at the wrong time and earn nothing."
        lines={marks.untimely.map(
          ({ entry, why }) => `Entry ${entry + 1}, ${kindOf(told, entry)}: ${UNTIMELY_WORDS[why]}.`,
        )}
      />
      <Doubtful title="The file and its replay differ." lines={marks.differs.map(doubtText)} />
      {origin.from === 'carried' ? (
        <p className="note">
          The scenario is the file’s own. Whoever marks this for a grade holds it against theirs.
        </p>
      ) : null}
    </>
  );
});

export const MarkedBy = memo(function MarkedBy({ told }: { readonly told: Told }) {
  const { run, marks } = told;
  const { attempt, scenario } = run;
  const origin = useMemo(() => originOnPage(attempt), [attempt]);
  const setAside = scenario.marking.setAside ?? [];
  const lines = [
    ['record', recordNumber(headOf(attempt))],
    ['scenario', `${origin.id}, ${FROM[origin.from]}`],
    ['its SHA-256', (origin.sha256.match(/.{8}/g) ?? []).join(' ')],
    ['rung', RUNG_NAMES[rungOf(scenario.support, attempt)]],
    [
      'weights',
      Object.entries(marks.weights)
        .map(([part, weight]) => `${part} ${weight}`)
        .join(', '),
    ],
    [
      'own limits',
      scenario.own.length === 0
        ? 'none'
        : ownLimitLines(run.papers)
            .map(({ term, text }) => `${term}, ${text}`)
            .join('; '),
    ],
    ['pass mark', `${marks.pass}, with every gate and hurdle met`],
    [
      'gates set aside',
      setAside.length === 0
        ? 'none'
        : setAside.map(({ gate, reason }) => `${unsafeActText(gate)}: ${reason}`).join('; '),
    ],
    ['thinking time', `${benchTime(marks.thinking)}, minutes and seconds`],
  ] as const;
  return (
    <details className="debrief-test">
      <summary>What it was marked by</summary>
      <SheetLines lines={lines.map(([term, text]) => ({ term, text }))} />
    </details>
  );
});

function Doubtful({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div className="found">
      <p>
        <strong>{title}</strong>
      </p>
      <ul className="choices note">
        {lines.slice(0, MOST_LISTED).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {lines.length > MOST_LISTED ? <p className="note">And {lines.length - MOST_LISTED} more.</p> : null}
    </div>
  );
}

function kindOf({ run }: Told, at: number): string {
  const entry = run.attempt.entries[at];
  const about = entry !== undefined && 'test' in entry && entry.test !== null ? ` in ${entry.test}` : '';
  return `${entry?.kind ?? ''}${about}`;
}
