/** The words of every cause of the catalogue, by its id, and what the page and the command line ask of them. */

import type { NOTHING } from '../attempt/marks/diagnosis.ts';
import { controlFaults } from './causes/controlFaults.ts';
import { design } from './causes/design.ts';
import { insulationFaults } from './causes/insulationFaults.ts';
import { mechanical } from './causes/mechanical.ts';
import { notFaults } from './causes/notFaults.ts';
import { penFaults } from './causes/penFaults.ts';
import { pilotFaults } from './causes/pilotFaults.ts';
import { protectiveConductor } from './causes/protectiveConductor.ts';
import { proximityRetention } from './causes/proximityRetention.ts';
import { residualDirect } from './causes/residualDirect.ts';
import { supplyWiring } from './causes/supplyWiring.ts';
import { switching } from './causes/switching.ts';
import type { CauseWords } from './causeWords.ts';

// Its type alone: a value would make the page's two files wait for each other.
const NO_CAUSE: typeof NOTHING = 'nothing';

/** Every entry of the catalogue has its words here. */
export const CAUSE_WORDS: Readonly<Record<string, CauseWords>> = {
  ...controlFaults,
  ...insulationFaults,
  ...mechanical,
  ...design,
  ...notFaults,
  ...penFaults,
  ...pilotFaults,
  ...protectiveConductor,
  ...proximityRetention,
  ...residualDirect,
  ...supplyWiring,
  ...switching,
};

export function causeWords(id: string): CauseWords {
  const words = Object.hasOwn(CAUSE_WORDS, id) ? CAUSE_WORDS[id] : undefined;
  if (words === undefined) throw new Error(`no words for the cause ${id}`);
  return words;
}

/** The answer that nothing is wrong has no entry in the catalogue; a file may name a cause that there is not: then its id. */
export const causeTitle = (id: string): string =>
  id === NO_CAUSE ? 'nothing is wrong' : (CAUSE_WORDS[id]?.title ?? id);

/** Several at once; none of them: nothing is wrong. */
export const causesTitle = (ids: readonly string[]): string =>
  ids.length === 0 ? causeTitle(NO_CAUSE) : ids.map(causeTitle).join(', and ');

/** Where it sits and what brings it about. */
export const causePlace = (id: string): string => {
  const { where, cause } = causeWords(id);
  return `Where: ${where}. ${cause}`;
};
