/**
 * What the trainee would have signed for and was wrong, a card for each misconception, the largest first; each jumps the replay
 * to where it would have shown. And how often sure was right.
 */

import type { Debrief, DebriefLine, WrongGroup } from '../../../attempt/marks/debrief.ts';
import type { Timeline } from '../../../attempt/opened/timeline.ts';
import { lineInWords } from '../../../words/actions.ts';
import { answerText, SURE_WORDS } from '../../../words/answers.ts';
import { causesTitle, causeTitle } from '../../../words/causeTitles.ts';
import { sourceText } from '../../../words/sources.ts';
import { SUBJECT_WORDS } from '../../../words/subjects.ts';
import { misconceptionText } from '../../../words/topics.ts';
import { Fold } from './Fold.tsx';

interface Props {
  readonly told: Debrief;
  /** Null until the attempt has been replayed. */
  readonly timeline: Timeline | null;
  /** The test that the replay is at. */
  readonly shown: string | null;
  readonly onShow: (test: string) => void;
}

export function SureAndWrong({ told, timeline, shown, onShow }: Props) {
  const { sureAndWrong, wrongCause, causes } = told;
  const lines = sureAndWrong.reduce((sum, group) => sum + group.lines.length, 0);
  const reasons = sureAndWrong.length + (wrongCause === null ? 0 : 1);
  const count =
    lines === 0
      ? wrongCause === null
        ? 'nothing'
        : 'the cause'
      : `${linesText(lines)}, ${reasons} ${reasons === 1 ? 'reason' : 'reasons'}`;
  const tests = new Map(timeline?.tests.map(({ test, number }) => [test, number]) ?? []);
  const current = sureAndWrong.find((group) => group.lines.some(({ test }) => test === shown));
  return (
    <Fold id="sure-heading" title={`Sure, and wrong: ${count}`}>
      {reasons === 0 ? <p className="note">No line that you would have signed for was wrong.</p> : null}
      {sureAndWrong.map((group, i) => (
        <Card
          key={`${group.misconception} ${group.topic}`}
          number={i + 1}
          group={group}
          tests={tests}
          isChosen={(current ?? sureAndWrong[0]) === group}
          onShow={onShow}
        />
      ))}
      {wrongCause === null ? null : (
        <div className="found">
          <div className="card-head">
            <span className="circled">{sureAndWrong.length + 1}</span>
            <p>
              <strong>Cause: “{causeTitle(wrongCause)}”</strong>
            </p>
          </div>
          <dl className="told">
            <dt>true</dt>
            <dd className="true">{causesTitle(causes.map(({ id }) => id))}</dd>
          </dl>
        </div>
      )}
      <Unsure told={told} />
      <Calibration told={told} />
    </Fold>
  );
}

interface CardProps {
  readonly number: number;
  readonly group: WrongGroup;
  readonly tests: ReadonlyMap<string, number>;
  readonly isChosen: boolean;
  readonly onShow: (test: string) => void;
}

function Card({ number, group, tests, isChosen, onShow }: CardProps) {
  const { lines } = group;
  // The first card stands open with its first line; of the others only the title, so that all are in sight.
  const open = number === 1 ? lines.slice(0, 1) : [];
  const folded = lines.slice(open.length);
  const numbers = [...new Set(group.lines.flatMap(({ test }) => tests.get(test) ?? []))].sort(
    (x, y) => x - y,
  );
  const shows = lines.find(({ test }) => tests.has(test))?.test;
  const title = misconceptionText(group.misconception, group.topic);
  return (
    <div className={isChosen ? 'found chosen' : 'found'}>
      <div className="card-head">
        <span className="circled">{number}</span>
        <div>
          <h3>{title.charAt(0).toUpperCase() + title.slice(1)}</h3>
          <p className="note">
            {numbers.length === 0
              ? linesText(lines.length)
              : `${numbers.length === 1 ? 'test' : 'tests'} ${numbers.join(', ')}`}
            {number === 1 ? ' · would sign for it, each time' : ''}
          </p>
        </div>
        {shows === undefined ? null : (
          <button type="button" className="plain" onClick={() => onShow(shows)}>
            show<span className="unseen"> {title}</span>
          </button>
        )}
      </div>
      {open.map((line) => (
        <WrongLine key={`${line.test} ${line.id}`} line={line} />
      ))}
      {folded.length === 0 ? null : (
        <details>
          <summary>{open.length === 0 ? linesText(folded.length) : `${folded.length} more`}</summary>
          {folded.map((line) => (
            <WrongLine key={`${line.test} ${line.id}`} line={line} />
          ))}
        </details>
      )}
    </div>
  );
}

const linesText = (count: number): string => `${count} ${count === 1 ? 'line' : 'lines'}`;

function WrongLine({ line }: { readonly line: DebriefLine }) {
  const { text, subject, predicted, right, sure, why, source } = lineInWords(line.test, line);
  return (
    <div className="judge-line">
      <p>
        {SUBJECT_WORDS[subject]} <strong>{text}</strong>
      </p>
      <dl className="told">
        <dt>you</dt>
        <dd>
          {predicted === null ? 'nothing' : answerText(predicted)}
          {sure === null ? '' : `, ${SURE_WORDS[sure]}`}
        </dd>
        <dt>true</dt>
        <dd className="true">{answerText(right)}</dd>
        <dt>why</dt>
        <dd>{why}</dd>
        <dt>source</dt>
        <dd>{sourceText(source)}</dd>
      </dl>
    </div>
  );
}

/** What was wrong and not signed for: told as well, folded. */
function Unsure({ told }: { readonly told: Debrief }) {
  const lines = told.unsureAndWrong.flatMap((group) => group.lines);
  if (lines.length === 0) return null;
  return (
    <details>
      <summary>Not sure, and wrong: {linesText(lines.length)}</summary>
      {lines.map((line) => (
        <WrongLine key={`${line.test} ${line.id}`} line={line} />
      ))}
    </details>
  );
}

/** Counts of sure and unsure, right and wrong; and how often each sureness was right. */
function Calibration({ told }: { readonly told: Debrief }) {
  const sure = told.calibration.find((one) => one.sure === 'would-sign');
  const unsure = told.calibration.filter((one) => one.sure !== 'would-sign');
  const rightUnsure = unsure.reduce((sum, { right }) => sum + right, 0);
  const ofUnsure = unsure.reduce((sum, { of }) => sum + of, 0);
  const counts = [
    ['wrong, sure', (sure?.of ?? 0) - (sure?.right ?? 0)],
    ['wrong, not sure', ofUnsure - rightUnsure],
    ['right, not sure', rightUnsure],
    ['right, sure', sure?.right ?? 0],
  ] as const;
  return (
    <>
      <dl className="counts">
        {counts.map(([name, count]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{count}</dd>
          </div>
        ))}
      </dl>
      <table className="bare">
        <caption className="lettering">how often sure was right</caption>
        <tbody>
          {told.calibration.map(({ sure: name, right, of }) => (
            <tr key={name}>
              <th scope="row">{SURE_WORDS[name]}</th>
              <td>
                {of === 0
                  ? 'never said'
                  : `right ${right} of ${of}, that is ${Math.round((100 * right) / of)} %`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
