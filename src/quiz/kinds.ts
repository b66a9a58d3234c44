/** Every kind of question: those of every topic first, then in the order of the aims they are about. */
// Questions are made from what every test says.
import '../verification/allLines.ts';
import { ACT_KINDS } from './kinds/acts.ts';
import { CAUSE_KINDS } from './kinds/causes.ts';
import { CONDUCTOR_KINDS } from './kinds/conductors.ts';
import { DESIGN_KINDS } from './kinds/design.ts';
import { LINE_KINDS } from './kinds/lines.ts';
import { OFFER_KINDS } from './kinds/offer.ts';
import { PICTURE_KINDS } from './kinds/pictures.ts';
import { PROTECTION_KINDS } from './kinds/protection.ts';
import type { Kind } from './question.ts';

export const KINDS: readonly Kind[] = [
  ...LINE_KINDS,
  ...DESIGN_KINDS,
  ...OFFER_KINDS,
  ...CONDUCTOR_KINDS,
  ...PROTECTION_KINDS,
  ...PICTURE_KINDS,
  ...CAUSE_KINDS,
  ...ACT_KINDS,
];

export const kindNamed = (id: string): Kind | undefined => KINDS.find((kind) => kind.id === id);
