/** The rungs of support by their names; what each asks stands in rungChoice.ts. */
import type { Rung } from '../attempt/record/rung.ts';

export const RUNG_NAMES: Readonly<Record<Rung, string>> = {
  1: 'guided',
  2: 'practice',
  3: 'harder practice',
  4: 'assessment',
};
