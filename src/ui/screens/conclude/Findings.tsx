/** The findings that a verdict rests on, to be ticked: first what was judged other than it should be by the trainee's
 * own prediction, or outside a limit; the rest folded. */
import type { JudgedFinding } from './judgedFindings.ts';

interface Props {
  readonly findings: readonly JudgedFinding[];
  readonly cited: readonly string[];
  readonly onCite: (cited: readonly string[]) => void;
}

export function Findings({ findings, cited, onCite }: Props) {
  const bad = findings.filter(({ isAsSaid }) => !isAsSaid);
  const good = findings.filter(({ isAsSaid }) => isAsSaid);
  const ticks = (list: readonly JudgedFinding[]) =>
    list.map(({ key, title, text, judged }) => (
      <label key={key} className="tick">
        <input
          type="checkbox"
          checked={cited.includes(key)}
          onChange={(event) =>
            onCite(event.target.checked ? [...cited, key] : cited.filter((other) => other !== key))
          }
        />
        <span>
          {text} <span className="note">{`${title} · you judged: ${judged}`}</span>
        </span>
      </label>
    ));
  return (
    <fieldset>
      <legend>
        <h3>Findings that it rests on</h3>
      </legend>
      {findings.length === 0 ? <p className="note">No test was judged, so there is none to choose.</p> : null}
      {bad.length === 0 ? null : ticks(bad)}
      {good.length === 0 ? null : (
        <details>
          <summary>{good.length} as you said they should be, or within</summary>
          {ticks(good)}
        </details>
      )}
    </fieldset>
  );
}
