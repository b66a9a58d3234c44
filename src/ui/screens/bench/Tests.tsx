/** The trainee's own tests as they were done, and the actions to choose from, by stage; none is ticked off. */
import type { Entry } from '../../../attempt/attempt.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import { STAGES } from '../../../verification/testAction.ts';
import type { Bench } from '../../flow/bench.ts';
import { benchTime } from '../../words/figures.ts';
import { operationText } from '../../words/trade.ts';
import { recordText } from '../observe/records.ts';

interface Row {
  readonly at: number;
  readonly title: string;
  readonly recorded: string;
  readonly judged: string;
}

const RECORDS_SHOWN = 3;

/** One row for each time a test was locked, and for each time something was put right. */
function rowsOf(bench: Bench, actions: readonly TestAction[]): readonly Row[] {
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
        title: actions.find(({ id }) => id === entry.test)?.title ?? entry.test,
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

function judgedIn(entries: readonly Entry[]): string {
  const judgement = entries.findLast((entry) => entry.kind === 'judgement');
  if (judgement?.kind !== 'judgement') return 'open';
  const words = [
    ...judgement.lines.map(({ judged }) => judged).filter((word) => word !== 'as it should'),
    ...judgement.limits.map(({ judged }) => judged).filter((word) => word !== 'within'),
  ];
  if (words.length === 0) return 'as it should';
  return [...new Set(words)].map((word) => `${words.filter((w) => w === word).length} ${word}`).join(', ');
}

interface Props {
  readonly bench: Bench;
  readonly actions: readonly TestAction[];
}

export function YourTests({ bench, actions }: Props) {
  const rows = rowsOf(bench, actions);
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
}

interface ChooseProps {
  readonly actions: readonly TestAction[];
  readonly onChoose: (id: string) => void;
  readonly onPutRight: () => void;
  readonly onConclude: () => void;
}

export function ChooseTest({ actions, onChoose, onPutRight, onConclude }: ChooseProps) {
  return (
    <div className="wide-stack">
      <div className="stages">
        {STAGES.map((stage) => {
          const own = actions.filter((action) => action.stage === stage);
          return own.length === 0 ? null : (
            <section key={stage} aria-label={stage}>
              <h3>{stage}</h3>
              <ul>
                {own.map(({ id, title }) => (
                  <li key={id}>
                    <button type="button" className="plain" onClick={() => onChoose(id)}>
                      {title}
                    </button>
                  </li>
                ))}
              </ul>
            </section>
          );
        })}
      </div>
      <div className="acts apart">
        <span className="note">Any order; nothing stops a wrong choice.</span>
        <button type="button" onClick={onPutRight} aria-haspopup="dialog">
          Put something right…
        </button>
        <button type="button" onClick={onConclude}>
          Conclude…
        </button>
      </div>
    </div>
  );
}
