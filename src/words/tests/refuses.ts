/** The words of the tests of the aim `refuses`, which come together. */
import { diode } from '../actions/diode.ts';
import { diodeInC } from '../actions/diodeInC.ts';
import { finish } from '../actions/finish.ts';
import { peOpen } from '../actions/peOpen.ts';
import { pilotOpen } from '../actions/pilotOpen.ts';
import { pilotShort } from '../actions/pilotShort.ts';
import { recovery } from '../actions/recovery.ts';
import type { ActionWords } from '../actionWords.ts';

export const refuses: Readonly<Record<string, ActionWords>> = {
  'pilot-short': pilotShort,
  'pilot-open': pilotOpen,
  diode,
  'diode-in-c': diodeInC,
  'pe-open': peOpen,
  recovery,
  finish,
};
