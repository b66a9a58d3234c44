/** How often each sureness was right, over all concluded attempts: drawn, and the same as a table. */

import type { Calibrated } from '../../../attempt/marks/recordSums.ts';
import { SURE_WORDS } from '../../../words/answers.ts';
import { COMPARED_WORDS } from '../../../words/topics.ts';
import { PLOT, Plot } from './Plot.tsx';

/** Middle of a column, of three. */
const columnAt = (i: number): number => PLOT.left + ((i + 0.5) * (PLOT.right - PLOT.left)) / 3;
/** Half of a column's drawn width. */
const HALF = 30;

export function Calibration({ over }: { readonly over: readonly Calibrated[] }) {
  const isUsed = over.some(({ of }) => of > 0);
  return (
    <section className="stack" aria-labelledby="calibration-heading">
      <h2 id="calibration-heading">How often sure was right</h2>
      {isUsed ? (
        <>
          <Plot name="How often each sureness was right; the table below says the same" unit="right, %">
            {over.map(({ sure, claimed: [from, to], share }, i) => (
              <g key={sure}>
                <rect
                  className="claimed"
                  x={columnAt(i) - HALF}
                  y={PLOT.y(to)}
                  width={2 * HALF}
                  height={PLOT.y(from) - PLOT.y(to)}
                />
                {share === null ? null : (
                  <>
                    <path
                      className="heavy"
                      d={`M${columnAt(i) - HALF - 8} ${PLOT.y(share)}h${2 * HALF + 16}`}
                    />
                    <text
                      x={columnAt(i)}
                      y={share > 0.9 ? PLOT.y(share) + 16 : PLOT.y(share) - 6}
                      textAnchor="middle"
                      className="bold"
                    >
                      {Math.round(100 * share)}
                    </text>
                  </>
                )}
                <text x={columnAt(i)} y={PLOT.bottom + 18} textAnchor="middle">
                  {SURE_WORDS[sure]}
                </text>
              </g>
            ))}
          </Plot>
          <p className="note">
            Box: what each sureness says. Heavy line: how often it was right. Below its box you were surer
            than right.
          </p>
        </>
      ) : (
        <p className="note">
          Once an attempt is concluded, each sureness stands here with how often it was right.
        </p>
      )}
      {isUsed ? (
        <table className="figures">
          <caption className="unseen">How often each sureness was right</caption>
          <thead>
            <tr>
              <th scope="col">you said</th>
              <th scope="col">right</th>
              <th scope="col">that is</th>
            </tr>
          </thead>
          <tbody>
            {over.map(({ sure, right, of, share, compared }) => (
              <tr key={sure}>
                <th scope="row">{SURE_WORDS[sure]}</th>
                <td>{of === 0 ? '–' : `${right} of ${of}`}</td>
                <td>
                  {share === null ? '' : `${Math.round(100 * share)} %: `}
                  {COMPARED_WORDS[compared]}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
    </section>
  );
}
