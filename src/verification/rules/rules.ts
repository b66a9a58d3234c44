/** Which set of rules an installation is judged by. */
import type { Papers } from '../testAction.ts';
import { BS_7671_AMENDMENT_2 } from './bs7671Amendment2.ts';
import type { RuleSet, RuleSetName } from './ruleSet.ts';

const RULE_SETS: Readonly<Record<RuleSetName, RuleSet>> = {
  'BS 7671:2018+A2:2022': BS_7671_AMENDMENT_2,
};

/** Papers that name none go by the only set there is. */
export const rulesFor = ({ rules = 'BS 7671:2018+A2:2022' }: Pick<Papers, 'rules'>): RuleSet =>
  RULE_SETS[rules];
