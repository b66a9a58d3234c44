/** The twelve aims, each on three rungs: best result and last date of each, and a touch begins that job. */

import { Link } from 'wouter';
import type { Rung } from '../../../attempt/record/rung.ts';
import type { AimId } from '../../../scenario/aims.ts';
import { AIMS } from '../../../scenario/aims.ts';
import type { OfAim } from '../../../store/jobResults.ts';
import { aimResult } from '../../../store/jobResults.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { NOT_TRIED, resultText } from '../../../words/next.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { aimLink } from '../../flow/aimLinks.ts';
import { dayMonthText } from '../../format/dates.ts';

const OFFERED_RUNGS = [1, 2, 3] as const;

interface Props {
  readonly attempts: readonly OfAim[];
  readonly seed: number;
}

export function AimTable({ attempts, seed }: Props) {
  return (
    <table className="aims">
      <thead>
        <tr>
          <th scope="col">aim</th>
          {OFFERED_RUNGS.map((rung) => (
            <th key={rung} scope="col">
              {RUNG_NAMES[rung]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {AIMS.map(({ id }) => (
          <tr key={id}>
            <th scope="row">{AIM_WORDS[id].question}</th>
            {OFFERED_RUNGS.map((rung) => (
              <td key={rung}>
                <Cell aim={id} rung={rung} attempts={attempts} seed={seed} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Cell({ aim, rung, attempts, seed }: Props & { readonly aim: AimId; readonly rung: Rung }) {
  const result = aimResult(attempts, aim, rung);
  return (
    <Link href={aimLink(aim, rung, seed)}>
      <span className="unseen">
        {AIM_WORDS[aim].question} {RUNG_NAMES[rung]}:{' '}
      </span>
      {result === null ? (
        <span className="not-tried">{NOT_TRIED}</span>
      ) : (
        <>
          <strong>{resultText(result)}</strong> <span className="last">{dayMonthText(result.last)}</span>
        </>
      )}
    </Link>
  );
}
