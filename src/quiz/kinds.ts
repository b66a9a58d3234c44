/** Every kind of question, in the order of the aims they are about. */
import { CONDUCTOR_KINDS } from './kinds/conductors.ts';
import { LINE_KINDS } from './kinds/lines.ts';
import { OFFER_KINDS } from './kinds/offer.ts';
import { PROTECTION_KINDS } from './kinds/protection.ts';
import type { Kind } from './question.ts';

export const KINDS: readonly Kind[] = [
  ...LINE_KINDS,
  ...OFFER_KINDS,
  ...CONDUCTOR_KINDS,
  ...PROTECTION_KINDS,
];

export const kindNamed = (id: string): Kind | undefined => KINDS.find((kind) => kind.id === id);
