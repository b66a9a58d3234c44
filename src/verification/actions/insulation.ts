/** What the insulation tests share: which readings count, and the limit of Table 64. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { wiringRules } from '../sources.ts';
import type { Limit } from '../testAction.ts';

export const insulationReadings = (observed: Observed): readonly Reading[] =>
  readingsOf(observed, 'insulation', off).filter((r) => r.qualifier !== 'unable');

export const toEarth = (r: Reading): boolean => r.between?.some((t) => t.endsWith('.PE')) === true;

/** Table 64 judged on the shown value, as the record will be; the instrument's uncertainty is the limit's business. */
export const enough = (least: Ohms) => (r: Reading) => r.qualifier === '>' || (r.value ?? 0) >= least;

export function insulationLimit(
  place: 'supply' | 'outlet',
  least: Ohms,
  sum: string,
  regulation: string,
): Limit {
  return {
    id: 'insulation',
    text: 'least insulation resistance',
    quantity: 'insulation',
    unit: 'Ω',
    limit: least,
    kind: 'least',
    sum,
    source: wiringRules(regulation),
    points: ['insulation'],
    // At the outlet 643.3.3 asks for live conductors to earth alone: electronics and bleeds lie between lives.
    applies: (r) =>
      r.quantity === 'insulation' &&
      r.between?.[0].startsWith(`${place}.`) === true &&
      (place === 'supply' || toEarth(r)),
  };
}
