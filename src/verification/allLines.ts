/** The lines of every test, by aims. Whoever imports this has them all from then on, and may judge any test. */

import { addLines } from './lines.ts';
import { clears } from './linesByAim/clears.ts';
import { dead } from './linesByAim/dead.ts';
import { design } from './linesByAim/design.ts';
import { earth } from './linesByAim/earth.ts';
import { insulation } from './linesByAim/insulation.ts';
import { leakage } from './linesByAim/leakage.ts';
import { letsGo } from './linesByAim/letsGo.ts';
import { offer } from './linesByAim/offer.ts';
import { outletDead } from './linesByAim/outletDead.ts';
import { refuses } from './linesByAim/refuses.ts';
import { supply } from './linesByAim/supply.ts';
import { wiring } from './linesByAim/wiring.ts';
import type { TestLines } from './testAction.ts';

/** By aims, as they come to the page. */
export const LINES_BY_AIM: Readonly<Record<string, Readonly<Record<string, TestLines>>>> = {
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

for (const lines of Object.values(LINES_BY_AIM)) addLines(lines);
