/**
 * Which rung of support the concluded attempts on this device suggest next. Only a suggestion: the trainee moves by
 * hand.
 */
import type { Rung } from '../record/rung.ts';
import type { Summary } from './summary.ts';

/** One concluded attempt, as far as a suggestion looks at it. */
export interface Went {
  readonly rung: Rung;
  readonly summary: Pick<Summary, 'criticalActs' | 'total' | 'of' | 'passed'>;
}

/** A guess that this many in a hundred is enough to need less help, or little enough to need more: of our own. */
const UP = 80;
const DOWN = 50;

export interface Suggestion {
  readonly rung: Rung;
  readonly why: 'two good ones' | 'a critical act' | 'under half' | 'stay';
}

/**
 * Up one after two attempts on a rung of 80 or more in a hundred that were passed, with no critical act; down one after a
 * critical act or under 50. `went` from the oldest to the newest; null where there is none.
 */
export function suggestedRung(went: readonly Went[]): Suggestion | null {
  const last = went.at(-1);
  if (last === undefined) return null;
  const { rung } = last;
  const down = Math.max(1, rung - 1) as Rung;
  if (last.summary.criticalActs > 0) return { rung: down, why: 'a critical act' };
  if (inHundred(last) < DOWN) return { rung: down, why: 'under half' };
  const before = went.at(-2);
  if (rung < 4 && isGood(last) && before !== undefined && before.rung === rung && isGood(before))
    return { rung: (rung + 1) as Rung, why: 'two good ones' };
  return { rung, why: 'stay' };
}

const inHundred = ({ summary: { total, of } }: Went): number => (of > 0 ? (100 * total) / of : 0);
/** Where no pass is stated, the total alone speaks. */
const isGood = (one: Went): boolean =>
  one.summary.criticalActs === 0 && one.summary.passed !== false && inHundred(one) >= UP;
