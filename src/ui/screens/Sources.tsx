/** Where statements and limits come from: each document once, with the tests that lean on it. */

import { papersOf, scenarioIn } from '../../scenario/scenario.ts';
import { ACTIONS } from '../../verification/actions.ts';
import { RULE_SET_NAMES } from '../../verification/rules/ruleSet.ts';
import type { Papers, TestAction } from '../../verification/testAction.ts';
import { adviceText, figureInWords, limitSum, limitText, lineInWords } from '../../words/actions.ts';
import { sourceText } from '../../words/sources.ts';
import { testTitle } from '../../words/testTitles.ts';
import { useSliced } from '../flow/useSliced.ts';
import { EditionNote } from '../parts/EditionNote.tsx';
import { Reading } from './Reading.tsx';
import { OFFERED } from './shelf.ts';

interface Row {
  readonly text: string;
  readonly source: string;
}

export function Sources() {
  const gathering = useSliced(rowsByAction);
  return (
    <Reading title="Sources" about="where each line and each limit comes from">
      <p className="prose">
        Published clauses name their edition; check them against the licensed edition in force where you work.
        “From memory” means that the value is still to be checked against the document; “common practice” that
        the trade does it so and no document says so.
      </p>
      {RULE_SET_NAMES.map((rules) => (
        <EditionNote key={rules} rules={rules} />
      ))}
      <p className="prose">
        <a href="licences.txt">Licences</a> of this page and of the software in it.
      </p>
      {gathering.failed === null ? null : (
        <p className="error" role="alert">
          <strong>Not gathered.</strong> {gathering.failed}
        </p>
      )}
      {gathering.result === null && gathering.failed === null ? (
        <p role="status" className="marking">
          Gathering …
        </p>
      ) : null}
      {[...(gathering.result ?? [])].map(([action, rows]) => (
        <section key={action.id} className="drawn-near" aria-label={testTitle(action.id)}>
          <h2>{testTitle(action.id)}</h2>
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
      ))}
    </Reading>
  );
}

/** Each action's statements on every offered scenario, each only once; in pieces, so that the page stays in hand. */
function* rowsByAction(): Generator<null, ReadonlyMap<TestAction, readonly Row[]>> {
  const rows = new Map(ACTIONS.map((action) => [action, new Map<string, Row>()]));
  for (const file of OFFERED) {
    const scenario = scenarioIn(file);
    yield null;
    const papers = papersOf(scenario);
    yield null;
    for (const [action, found] of rows) {
      for (const row of action.applies(papers) ? rowsOf(action, papers) : [])
        found.set(`${row.text} ${row.source}`, row);
      yield null;
    }
  }
  return new Map([...rows].map(([action, found]) => [action, [...found.values()]]));
}

const rowsOf = (action: TestAction, papers: Papers): readonly Row[] =>
  [
    ...[...action.expectations(papers), ...action.untold(papers)].map((line) => lineInWords(action.id, line)),
    ...action.figures(papers).map((figure) => figureInWords(action.id, figure)),
    ...action.limits(papers).map((limit) => ({
      ...limit,
      text: `${limitText(action.id, limit)}: ${limitSum(action.id, limit)}`,
    })),
    ...(action.advice?.(papers) ?? []).map((one) => ({ ...one, text: adviceText(action.id, one) })),
  ].map(({ text, source }) => ({ text, source: sourceText(source) }));
