/** The lines of the tests of the aim `supply`, which come together. */
import { energise } from '../lines/energise.ts';
import { lostLine } from '../lines/lostLine.ts';
import { openPen } from '../lines/openPen.ts';
import { pfc } from '../lines/pfc.ts';
import { supplyReturn } from '../lines/supplyReturn.ts';
import { supplyVolts } from '../lines/supplyVolts.ts';
import type { TestLines } from '../testAction.ts';

export const supply: Readonly<Record<string, TestLines>> = {
  pfc,
  'supply-volts': supplyVolts,
  energise,
  'supply-return': supplyReturn,
  'lost-line': lostLine,
  'open-pen': openPen,
};
