/** Where statements and limits come from: each document once, with the tests that lean on it. */
import { papersOf, readScenario } from '../../scenario/scenario.ts';
import { ACTIONS } from '../../verification/actions.ts';
import { sourceText } from '../../verification/sources.ts';
import { OFFERED } from './offered.ts';
import { Reading } from './Reading.tsx';

interface Row {
  readonly text: string;
  readonly source: string;
}

export function Sources() {
  return (
    <Reading title="Sources" about="where each line and each limit comes from">
      <p className="prose">
        Published clauses name their edition; check them against the licensed edition in force where you work.
        “From memory” means that the value is still to be checked against the document; “common practice” that
        the trade does it so and no document says so.
      </p>
      {ACTIONS.map((action) => {
        const rows = rowsFor(action.id);
        return (
          <section key={action.id} aria-label={action.title}>
            <h2>{action.title}</h2>
            <div className="scroll">
              <table>
                <thead>
                  <tr>
                    <th scope="col">line or limit</th>
                    <th scope="col">source</th>
                  </tr>
                </thead>
                <tbody>
                  {rows.map(({ text, source }) => (
                    <tr key={`${text} ${source}`}>
                      <th scope="row">{text}</th>
                      <td>{source}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          </section>
        );
      })}
    </Reading>
  );
}

/** The action's statements on every offered scenario, each only once. */
function rowsFor(id: string): readonly Row[] {
  const action = ACTIONS.find((one) => one.id === id);
  const all = OFFERED.map((file) => readScenario(file))
    .flatMap((read) => (read.ok ? [papersOf(read.scenario)] : []))
    .filter((papers) => action?.applies(papers))
    .flatMap((papers) => [
      ...(action?.expectations(papers) ?? []),
      ...(action?.untold(papers) ?? []),
      ...(action?.figures(papers) ?? []),
      ...(action?.limits(papers) ?? []).map((limit) => ({ ...limit, text: `${limit.text}: ${limit.sum}` })),
    ])
    .map(({ text, source }) => ({ text, source: sourceText(source) }));
  return all.filter(
    (row, i) => all.findIndex((other) => other.text === row.text && other.source === row.source) === i,
  );
}
