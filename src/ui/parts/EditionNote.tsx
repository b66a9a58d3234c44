/** Which edition of the wiring rules limits and lines go by, where it is no longer the one in force. */

import type { RuleSetName } from '../../verification/rules/ruleSet.ts';
import { rulesFor } from '../../verification/rules/rules.ts';

export function EditionNote({ rules }: { readonly rules: RuleSetName }) {
  const { inForce, note } = rulesFor({ rules }).edition;
  return inForce ? null : <p className="note">{note}</p>;
}
