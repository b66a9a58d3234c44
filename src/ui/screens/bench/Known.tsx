/** What is known and how, and what was seen and heard last: the strip under the sheet, and its short form on a phone. */
import { memo } from 'react';
import type { Bench } from '../../flow/bench.ts';
import { knownOf, perceived, proofsOf, standInText, supplyText } from '../../flow/known.ts';
import { benchTime } from '../../words/figures.ts';

const SHOWN = 7;

export const Known = memo(function Known({ bench }: { readonly bench: Bench }) {
  const noticed = perceived(bench.happened, 0).slice(-SHOWN);
  return (
    <div className="strip">
      <section aria-labelledby="known-heading">
        <h2 id="known-heading" className="lettering">
          known, and how
        </h2>
        <table className="bare">
          <tbody>
            {knownOf(bench).map(({ what, value, how }) => (
              <tr key={`${what} ${value}`}>
                <th scope="row">{what}</th>
                <td>
                  <strong>{value}</strong>
                  {how === '' ? null : <span className="note"> {how}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section aria-labelledby="seen-heading">
        <h2 id="seen-heading" className="lettering">
          seen and heard
        </h2>
        {noticed.length === 0 ? (
          <p className="note">nothing yet</p>
        ) : (
          <table className="bare">
            <tbody>
              {noticed.map(({ at, text }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a log that only grows
                <tr key={i}>
                  <td>{benchTime(at)}</td>
                  <td>{text}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </section>
    </div>
  );
});

export const Status = memo(function Status({ bench }: { readonly bench: Bench }) {
  const { supply, origin } = proofsOf(bench);
  const dead = [supply, origin].find((proof) => proof?.isWhole);
  return (
    <section className="status" aria-label="known now">
      <span>
        supply <strong>{supplyText(bench.position)}</strong>
      </span>
      <span>
        stand-in <strong>{standInText(bench)}</strong>
      </span>
      <span>
        <strong>{dead === undefined ? 'not proved dead' : `proved dead ${benchTime(dead.at)}`}</strong>
      </span>
    </section>
  );
});
