/** Every pair of the outlet at one step: what was read with things as they stand, and what both units truly have. */
import { memo } from 'react';
import type { Lockstep } from '../../../attempt/opened/twin.ts';
import { mainsText } from '../../../words/quantities.ts';
import { shownText } from '../../format/figures.ts';
import { Scroll } from '../../parts/Scroll.tsx';

interface Props {
  readonly lockstep: Lockstep;
  readonly step: number;
}

/** What was read of each pair since anything was last set, up to this step. */
function readSince({ steps }: Lockstep, step: number): ReadonlyMap<string, string> {
  const since = steps[step]?.unit.changedAt;
  const read = new Map<string, string>();
  for (const { unit } of steps.slice(0, step + 1)) {
    if (unit.changedAt !== since) continue;
    for (const { reading } of unit.met) {
      if (reading.quantity !== 'voltage') continue;
      const [a, b] = (reading.between ?? []).map((terminal) => /^outlet\.(\w+)$/.exec(terminal)?.[1]);
      if (a === undefined || b === undefined) continue;
      read.set(`${a}–${b}`, shownText(reading));
      read.set(`${b}–${a}`, shownText(reading));
    }
  }
  return read;
}

export const OutletPairs = memo(function OutletPairs({ lockstep, step }: Props) {
  const here = lockstep.steps[step];
  if (here === undefined) return null;
  const read = readSince(lockstep, step);
  return (
    <Scroll name="Outlet voltages">
      <table className="figures">
        <caption className="unseen">Voltages at the outlet, through a two-pole detector</caption>
        <thead>
          <tr>
            <th scope="col">outlet, between</th>
            <th scope="col">you read</th>
            <th scope="col">this unit</th>
            <th scope="col">twin</th>
          </tr>
        </thead>
        <tbody>
          {Object.entries(here.unit.pairs).map(([pair, volts]) => {
            const twin = here.twin.pairs[pair] ?? 0;
            const differs = Math.abs(volts - twin) > 3 + 0.02 * Math.max(volts, twin);
            return (
              <tr key={pair} className={differs ? 'differs' : undefined}>
                <th scope="row">{pair}</th>
                <td>{read.get(pair) ?? 'not measured'}</td>
                <td>{mainsText(volts)}</td>
                <td>{mainsText(twin)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroll>
  );
});
