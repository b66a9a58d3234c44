/** The trainee's own tests as they were done. */

import { memo } from 'react';
import type { Entry } from '../../../attempt/record/attempt.ts';
import { isJudgedAsSaid } from '../../../attempt/record/truth.ts';
import { JUDGED_WORDS, LIMIT_WORDS } from '../../../words/answers.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { operationText } from '../../../words/trade.ts';
import type { Bench } from '../../flow/bench.ts';
import { recordText } from '../measure/records.ts';

interface Row {
  readonly at: number;
  readonly title: string;
  readonly recorded: string;
  readonly judged: string;
}

const RECORDS_SHOWN = 3;

/** One row for each time a test was locked, and for each time something was put right. */
function rowsOf(bench: Bench): readonly Row[] {
  const { repairs, attempt } = bench.run;
  const { entries } = attempt;
  return entries.flatMap((entry, i): Row[] => {
    if (entry.kind === 'operation' && repairs.some((repair) => repair.entry === i))
      return [{ at: entry.at, title: operationText(entry.operation), recorded: '', judged: '' }];
    if (entry.kind !== 'prediction') return [];
    const next = entries.findIndex((other, j) => j > i && other.kind === 'prediction');
    const own = entries.slice(i, next < 0 ? undefined : next);
    return [
      {
        at: entry.at,
        title: testTitle(entry.test),
        recorded: recordedIn(own),
        judged: judgedIn(own),
      },
    ];
  });
}

function recordedIn(entries: readonly Entry[]): string {
  const all = entries.filter((entry) => entry.kind === 'observation').map(recordText);
  if (all.length === 0) return 'nothing';
  const records = [...new Set(all)].map((text) => {
    const times = all.filter((other) => other === text).length;
    return times === 1 ? text : `${times} × ${text}`;
  });
  const shown = records.slice(0, RECORDS_SHOWN).join('; ');
  return records.length > RECORDS_SHOWN ? `${shown} and ${records.length - RECORDS_SHOWN} more` : shown;
}

/** Held against what the trainee said beforehand, never against what is right: that is not told here. */
function judgedIn(entries: readonly Entry[]): string {
  const judgement = entries.findLast((entry) => entry.kind === 'judgement');
  if (judgement?.kind !== 'judgement') return 'open';
  const prediction = entries.find((entry) => entry.kind === 'prediction');
  const saidOf = (line: string) => prediction?.lines.find(({ id }) => id === line)?.answer;
  const words = [
    ...judgement.lines
      .filter(({ id, judged }) => !isJudgedAsSaid(saidOf(id), judged))
      .map(({ judged }) => (judged === 'not-shown' ? JUDGED_WORDS[judged] : 'not as you said')),
    ...judgement.limits.filter(({ judged }) => judged !== 'within').map(({ judged }) => LIMIT_WORDS[judged]),
  ];
  if (words.length === 0) return 'as you said';
  return [...new Set(words)].map((word) => `${words.filter((w) => w === word).length} ${word}`).join(', ');
}

export const YourTests = memo(function YourTests({ bench }: { readonly bench: Bench }) {
  const rows = rowsOf(bench);
  return (
    <section aria-labelledby="tests-heading">
      <div className="bar-title">
        <h2 id="tests-heading" tabIndex={-1}>
          Your tests
        </h2>
        <span className="note">in your order</span>
      </div>
      {rows.length === 0 ? (
        <p className="note">Each test stands here once you have locked it.</p>
      ) : (
        <div className="scroll your-tests">
          <table>
            <thead>
              <tr>
                <th scope="col">at</th>
                <th scope="col">test</th>
                <th scope="col">you wrote</th>
                <th scope="col">you judged</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ at, title, recorded, judged }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a log that only grows
                <tr key={i}>
                  <td>{benchTime(at)}</td>
                  <th scope="row">{title}</th>
                  <td>{recorded}</td>
                  <td>{judged}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
});
