/** The words of every cause of the catalogue, by its id, and what the page and the command line ask of them. */

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
import { tester } from './causes/tester.ts';
import type { CauseWords } from './causeWords.ts';

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
  ...tester,
};

export function causeWords(id: string): CauseWords {
  const words = Object.hasOwn(CAUSE_WORDS, id) ? CAUSE_WORDS[id] : undefined;
  if (words === undefined) throw new Error(`no words for the cause ${id}`);
  return words;
}

/** Where it sits and what brings it about. */
export const causePlace = (id: string): string => {
  const { where, cause } = causeWords(id);
  return `Where: ${where}. ${cause}`;
};
