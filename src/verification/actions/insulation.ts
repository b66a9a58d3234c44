/** What the insulation tests share: which readings count, and the limit of Table 64. */
import type { ReadingOf } from '../../bench/reading.ts';
import { EQUIPMENT_TEST_VOLTAGE } from '../../laws/insulationLimits.ts';
import type { Ohms, Volts } from '../../laws/quantities.ts';
import { off, readingsOf, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import type { InsulationRule } from '../rules/ruleSet.ts';
import type { Limit } from '../testAction.ts';

export const insulationReadings = (
  observed: Observed,
  when: When = off,
): readonly ReadingOf<'insulation'>[] =>
  readingsOf(observed, 'insulation', when).filter((r) => r.qualifier !== 'unable');

const isNeutralToEarth = (r: ReadingOf<'insulation'>): boolean =>
  r.between?.some((t) => t.split(' + ').some((one) => one.endsWith('.N'))) === true && toEarth(r);

/**
 * Readings of the circuit while it is off. With the neutral left joined at the origin it meets earth at the source:
 * what is read from neutral to PE then tells nothing of its insulation.
 */
export const circuitReadings = (observed: Observed, when: When): readonly ReadingOf<'insulation'>[] => {
  const joined = insulationReadings(observed, (setUp, s) => when(setUp, s) && setUp.neutral === 'joined');
  return insulationReadings(observed, when).filter((r) => !(joined.includes(r) && isNeutralToEarth(r)));
};

export const toEarth = (r: ReadingOf<'insulation'>): boolean =>
  r.between?.some((t) => t.endsWith('.PE')) === true;

/** Table 64 judged on the shown value, as the record will be; the instrument's uncertainty is the limit's business. */
export const enough = (least: Ohms) => (r: ReadingOf<'insulation'>) =>
  r.qualifier === '>' || (r.value ?? 0) >= least;

/** The highest of the usual test voltages that neither the sheet nor the rules forbid with equipment connected, V. */
export const equipmentTestVoltage = (allowed: Volts): 50 | 100 | 250 =>
  allowed >= EQUIPMENT_TEST_VOLTAGE ? 250 : allowed >= 100 ? 100 : 50;

export function insulationLimit(
  place: 'supply' | 'outlet',
  { testVoltage, minimum, source }: InsulationRule,
): Limit {
  return {
    id: 'insulation',
    values: { testVoltage, minimum },
    quantity: 'insulation',
    unit: 'Ω',
    limit: minimum,
    kind: 'least',
    source,
    points: ['insulation'],
    // At the outlet 643.3.3 asks for live conductors to earth alone: electronics and bleeds lie between lives.
    applies: (r) =>
      r.quantity === 'insulation' &&
      r.between?.[0].startsWith(`${place}.`) === true &&
      (place === 'supply' || toEarth(r)),
  };
}
