/** The lines of every test, for whoever judges any. */

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

for (const lines of [
  design,
  dead,
  earth,
  insulation,
  wiring,
  supply,
  outletDead,
  offer,
  letsGo,
  clears,
  leakage,
  refuses,
])
  addLines(lines);
