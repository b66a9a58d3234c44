/**
 * The timing of the pilot, row by row, as IEC 61851-1:2017 Table A.6 and the clauses beside it have it: who has to act,
 * and by when. Seconds. Rows of the vehicle, and rows without a limit, are there to be complete.
 */

import type { ReferenceRow } from './row.ts';

export interface PilotTime extends ReferenceRow {
  /** The number in Table A.6, or the clause. */
  readonly sequence: string;
  readonly event: string;
  readonly answer: string;
  readonly by: 'unit' | 'vehicle' | 'nobody';
  readonly least?: number;
  readonly greatest?: number;
}

const TABLE = 'IEC 61851-1:2017, Table A.6';
const row = (
  sequence: string,
  event: string,
  answer: string,
  by: PilotTime['by'],
  limits: Pick<PilotTime, 'least' | 'greatest'> = {},
  source: string = TABLE,
): PilotTime => ({ sequence, event, answer, by, ...limits, source });
const most = (greatest: number) => ({ greatest });
const least = (seconds: number) => ({ least: seconds });

export const PILOT_TIMES: readonly PilotTime[] = [
  row('1.1', 'A to B', 'none', 'nobody'),
  row('1.2', 'A to C or D', 'treated as a simplified pilot', 'unit'),
  row('2.1', 'B to A', 'socket unlocked', 'unit', most(5)),
  row('2.2', 'C2 or D2 to A', 'supply off', 'unit', most(0.1)),
  row('2.2', 'C2 or D2 to A', 'vehicle opens its switch', 'vehicle', most(3)),
  row('3.1', 'B1 to B2', 'oscillation starts', 'unit'),
  row('3.2', 'C1 to C2', 'supply on', 'unit', most(3)),
  row('4', 'B2 to C2 or D2', 'supply on', 'unit', most(3)),
  row('4', 'C2 to D2', 'ventilation on, or supply off without it', 'unit', most(3)),
  row('5', 'supply on', 'current is drawn', 'vehicle'),
  row('6', 'the limit from outside changes', 'duty follows', 'unit', most(10)),
  row('6', 'duty changes', 'current at or below it', 'vehicle', most(5)),
  row('6', 'duty changes', 'no further change', 'unit', least(5)),
  row('7', 'vehicle stops', 'draws under 1 A, then opens its switch', 'vehicle'),
  row('8.1', 'C2 or D2 to B2', 'supply off', 'unit', most(0.1)),
  row('8.2', 'C1 or D1 to B1', 'supply off', 'unit', most(0.1)),
  row('9.1', 'x2 to x1 while charging', 'vehicle stops drawing', 'vehicle', most(3)),
  row('9.2', 'B2 to B1', 'no oscillation before', 'unit', least(3)),
  row('9.3', 'A2 to A1', 'oscillation stops', 'unit'),
  row('10.1', 'after 9.1', 'vehicle opens its switch', 'vehicle', most(3)),
  row('10.2', 'vehicle ignores 9.1', 'supply off under load, not before', 'unit', least(6)),
  row('11', 'B to C to B as a signal', 'for a digital link', 'vehicle', { least: 0.2, greatest: 3 }),
  row('12', 'any state to E or F', 'supply off', 'unit', most(3)),
  row('12', 'any state to E or F', 'vehicle opens its switch', 'vehicle', most(3)),
  row('12', 'any state to E or F', 'socket unlocked', 'unit', most(30)),
  row(
    '6.3.1.2',
    'PE to the vehicle lost',
    'supply off',
    'unit',
    most(0.1),
    'IEC 61851-1:2017, 6.3.1.2, A.4.8',
  ),
  row(
    'A.4.9',
    '120 Ω from pilot to PE in C or D',
    'supply off',
    'unit',
    most(3),
    'IEC 61851-1:2017, 6.3.1.2, A.4.9',
  ),
  row(
    'A.3',
    'F of a tethered unit',
    'held before a steady state',
    'unit',
    least(0.3),
    'IEC 61851-1:2017, A.3, after Table A.5',
  ),
  row(
    'A.5.3',
    'no reaction to B1–B2 for 30 s',
    'legacy wake-up by 0 V for more than 4 s, informative',
    'unit',
    {},
    'IEC 61851-1:2017, A.5.3',
  ),
];
