/** Totals of the concluded attempts in their order, and by the shape of each mark whether the gates were met. */
import { PLOT, Plot } from './Plot.tsx';
import type { Counting } from './rows.ts';

/** As many marks as can be told apart. */
const SHOWN = 24;

const shareOf = ({ summary: { total, of } }: Counting): number => Math.min(1, total / of);

export function Progress({ points }: { readonly points: readonly Counting[] }) {
  const shown = points.slice(-SHOWN);
  const step = (PLOT.right - PLOT.left - 24) / Math.max(1, shown.length - 1);
  const xAt = (i: number) => PLOT.left + 12 + i * Math.min(step, 60);
  // Numbers of attempts stand at least 28 apart, the last always among them.
  const every = Math.max(1, Math.ceil(28 / Math.min(step, 60)));
  return (
    <section className="stack" aria-labelledby="progress-heading">
      <h2 id="progress-heading">Progress</h2>
      {shown.length === 0 ? (
        <p className="note">
          Each concluded attempt stands here with its total, and with whether its gates were met.
        </p>
      ) : (
        <>
          <Plot name="Totals of the attempts in their order; the table below says the same" unit="total, %">
            <path
              className="line"
              d={shown
                .map((point, i) => `${i === 0 ? 'M' : 'L'}${xAt(i)} ${PLOT.y(shareOf(point))}`)
                .join('')}
            />
            {shown.map((point, i) => (
              <g key={point.number}>
                <Mark x={xAt(i)} y={PLOT.y(shareOf(point))} isMet={point.summary.gatesMet} />
                {(shown.length - 1 - i) % every === 0 ? (
                  <text x={xAt(i)} y={PLOT.bottom + 18} textAnchor="middle">
                    {point.number}
                  </text>
                ) : null}
              </g>
            ))}
          </Plot>
          <p className="note marks-key">
            <span>
              <Shape isMet /> gates met
            </span>
            <span>
              <Shape isMet={false} /> a gate not met
            </span>
            <span>
              below: number of the attempt
              {points.length > shown.length ? `; the last ${shown.length} of ${points.length}` : ''}
            </span>
          </p>
          <details>
            <summary>The same as a table</summary>
            <div className="scroll">
              <table>
                <thead>
                  <tr>
                    <th scope="col">attempt</th>
                    <th scope="col">total</th>
                    <th scope="col">gates</th>
                  </tr>
                </thead>
                <tbody>
                  {points.map(({ number, title, summary: { total, of, gatesMet } }) => (
                    <tr key={number}>
                      <th scope="row">
                        {number} · {title}
                      </th>
                      <td>
                        {total} of {of}
                      </td>
                      <td>{gatesMet ? 'met' : 'not met'}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          </details>
          <p className="note">One scenario is practice: a grade needs about ten.</p>
        </>
      )}
    </section>
  );
}

interface MarkProps {
  readonly x: number;
  readonly y: number;
  readonly isMet: boolean;
}

/** A filled disc, or an open square with a stroke through it: told apart without any colour. */
const Mark = ({ x, y, isMet }: MarkProps) =>
  isMet ? (
    <circle className="met" cx={x} cy={y} r="5" />
  ) : (
    <path className="not-met" d={`M${x - 5} ${y - 5}h10v10h-10zM${x - 5} ${y + 5}l10 -10`} />
  );

const Shape = ({ isMet }: { readonly isMet: boolean }) => (
  <svg className="shape" viewBox="0 0 14 14" aria-hidden="true">
    <Mark x={7} y={7} isMet={isMet} />
  </svg>
);
