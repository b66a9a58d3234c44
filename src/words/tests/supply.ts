/** The words of the tests of the aim `supply`, which come together. */
import { energise } from '../actions/energise.ts';
import { lostLine } from '../actions/lostLine.ts';
import { openPen } from '../actions/openPen.ts';
import { pfc } from '../actions/pfc.ts';
import { supplyReturn } from '../actions/supplyReturn.ts';
import { supplyVolts } from '../actions/supplyVolts.ts';
import type { ActionWords } from '../actionWords.ts';

export const supply: Readonly<Record<string, ActionWords>> = {
  pfc,
  'supply-volts': supplyVolts,
  energise,
  'supply-return': supplyReturn,
  'lost-line': lostLine,
  'open-pen': openPen,
};
