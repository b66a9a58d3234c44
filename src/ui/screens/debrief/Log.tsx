/** The attempt as it was logged, entry by entry, with its bench time. */
import { memo } from 'react';
import type { Attempt, Entry } from '../../../attempt/record/attempt.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS, SURE_WORDS } from '../../../words/answers.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { operationText } from '../../../words/trade.ts';
import { leftOutText, VERDICT_WORDS } from '../../../words/verdicts.ts';
import { figureText } from '../../format/figures.ts';
import { Scroll } from '../../parts/Scroll.tsx';
import { recordText } from '../measure/records.ts';
import { Fold } from './Fold.tsx';

export const Log = memo(function Log({ attempt }: { readonly attempt: Attempt }) {
  return (
    <Fold id="log-heading" title={`The log: ${attempt.entries.length} entries`}>
      <Scroll name="Log">
        <table>
          <thead>
            <tr>
              <th scope="col">at</th>
              <th scope="col">what</th>
              <th scope="col">record</th>
            </tr>
          </thead>
          <tbody>
            {attempt.entries.map((entry) => (
              <tr key={entry.hash}>
                <td>{benchTime(entry.at)}</td>
                <td>{entryText(entry)}</td>
                <td className="note">{entry.hash.slice(0, 8)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </Fold>
  );
});

function entryText(entry: Entry): string {
  switch (entry.kind) {
    case 'operation':
      return operationText(entry.operation);
    case 'prediction':
      return `${entry.given ? 'given' : entry.sure === null ? 'predicted' : `predicted, ${SURE_WORDS[entry.sure]}`}: ${[
        ...entry.lines.map(({ id, answer, sure }) =>
          [id, answerText(answer), ...(sure === undefined ? [] : [`(${SURE_WORDS[sure]})`])].join(' '),
        ),
        ...entry.figures.map(({ id, value }) => `${id} ${figureText(value, '')}`.trim()),
      ].join(', ')}`;
    case 'observation':
      return `wrote: ${recordText(entry)}`;
    case 'judgement':
      return `judged: ${[
        ...entry.lines.map(({ id, judged }) => `${id} ${JUDGED_WORDS[judged]}`),
        ...entry.limits.map(({ id, judged }) => `${id} ${LIMIT_WORDS[judged]}`),
      ].join(', ')}`;
    case 'record':
      return `left out ${entry.test}: ${leftOutText(entry)}`;
    case 'conclusion':
      return `concluded: ${VERDICT_WORDS[entry.verdict]}${entry.because === '' ? '' : `, ${entry.because}`}`;
  }
}
