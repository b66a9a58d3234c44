/**
 * The rungs of support on which an attempt can be made, and which one an attempt was made on. What is shown and
 * marked on each is the business of lines.ts, mark.ts and the screens.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import type { Attempt } from './attempt.ts';

/** 1: lines filled in; 2: every line asked; 3: those that matter to be found among ten; 4: nothing told until the end. */
export const RUNGS = [1, 2, 3, 4] as const;
export type Rung = (typeof RUNGS)[number];

export const supportOf = (rung: Rung): Scenario['support'] =>
  rung === 4 ? 'assessment' : rung === 1 ? 'guided' : 'practice';

/** The rung of an attempt; of one that does not say it, what its scenario's support means. */
export function rungOf(support: Scenario['support'], { rung }: Pick<Attempt, 'rung'>): Rung {
  if (support === 'assessment') return 4;
  return rung ?? (support === 'guided' ? 1 : 2);
}
