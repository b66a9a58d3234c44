/** A trace in a table: each level with the times from and to which it holds. Printed unfolded. */
import { timeText } from '../../format/figures.ts';
import type { Trace } from './trace.ts';

export function TraceTable({ trace }: { readonly trace: Trace }) {
  const { levels, time } = trace;
  const shown = levels.flatMap(({ at, value }, i) => {
    const from = Math.max(at, time.from);
    const to = Math.min(levels[i + 1]?.at ?? time.to, time.to);
    return to > from ? [{ from, to, value }] : [];
  });
  const text = (at: number) => timeText(at, time.unit, time.decimals);
  return (
    <details className="note">
      <summary>The trace as a table</summary>
      <table className="bare">
        <thead>
          <tr>
            <th scope="col">from</th>
            <th scope="col">to</th>
            <th scope="col">level</th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ from, to, value }) => (
            <tr key={from}>
              <td>{text(from)}</td>
              <td>{text(to)}</td>
              <td>{trace.levelText(value)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
