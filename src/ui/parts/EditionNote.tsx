/** Which edition of the wiring rules limits and lines go by, where it is no longer the one in force. */

import type { RuleSetName } from '../../verification/rules/ruleSet.ts';
import { editionNote } from '../../words/sources.ts';

export function EditionNote({ rules }: { readonly rules: RuleSetName }) {
  const note = editionNote(rules);
  return note === null ? null : <p className="note">{note}</p>;
}
