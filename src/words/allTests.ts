/**
 * The words of every test, by aims, and of every cause that may be put right. Whoever imports this has them all from then
 * on: the command line, which waits for nothing.
 */

import type { AimId } from '../scenario/aims.ts';
import { addTests } from './actions.ts';
import type { ActionWords } from './actionWords.ts';
import { NAMED_CAUSES } from './namedCauses.ts';
import { addCauses } from './puttingRight.ts';
import { clears } from './tests/clears.ts';
import { dead } from './tests/dead.ts';
import { design } from './tests/design.ts';
import { earth } from './tests/earth.ts';
import { insulation } from './tests/insulation.ts';
import { leakage } from './tests/leakage.ts';
import { letsGo } from './tests/letsGo.ts';
import { offer } from './tests/offer.ts';
import { outletDead } from './tests/outletDead.ts';
import { refuses } from './tests/refuses.ts';
import { supply } from './tests/supply.ts';
import { wiring } from './tests/wiring.ts';

/** By aims, as they come to the page. */
export const WORDS_BY_AIM: Readonly<Record<AimId, Readonly<Record<string, ActionWords>>>> = {
  design,
  dead,
  earth,
  insulation,
  wiring,
  supply,
  'outlet-dead': outletDead,
  offer,
  'lets-go': letsGo,
  clears,
  leakage,
  refuses,
};

for (const words of Object.values(WORDS_BY_AIM)) addTests(words);
addCauses(NAMED_CAUSES);
