/** What is known in one line; unfolded, how it is known, and what was seen and heard last. */
import { memo, useState } from 'react';
import { benchTime } from '../../../words/benchTime.ts';
import type { Bench } from '../../flow/bench.ts';
import { knownOf, perceived, proofsOf, standInText, supplyText } from '../../flow/whatIsKnown.ts';
import { Dialog } from '../../parts/Dialog.tsx';
import { useSoundSwitch } from '../../sound/useSounds.ts';

const SHOWN = 7;

export const Known = memo(function Known({ bench }: { readonly bench: Bench }) {
  const noticed = perceived(bench.happened, 0).slice(-SHOWN);
  const [isSoundOn, turnSound] = useSoundSwitch();
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
        <div className="acts apart">
          <h2 id="seen-heading" className="lettering">
            seen and heard
          </h2>
          <button type="button" aria-pressed={isSoundOn} onClick={turnSound}>
            Sound {isSoundOn ? 'on' : 'off'}
          </button>
        </div>
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
  const [isUnfolded, setUnfolded] = useState(false);
  return (
    <section className="status" aria-label="known now">
      <p>
        supply <strong>{supplyText(bench.position)}</strong> · stand-in <strong>{standInText(bench)}</strong>{' '}
        · <strong>{dead === undefined ? 'not proved dead' : `proved dead ${benchTime(dead.at)}`}</strong>
      </p>
      <button type="button" className="plain" aria-haspopup="dialog" onClick={() => setUnfolded(true)}>
        Unfold<span className="unseen"> what is known</span>
      </button>
      {isUnfolded ? (
        <Dialog title="Known, and how" closeWith="Back" onClose={() => setUnfolded(false)}>
          <Known bench={bench} />
        </Dialog>
      ) : null}
    </section>
  );
});
