/** The lines of the tests of the aim `refuses`, which come together. */
import { diode } from '../lines/diode.ts';
import { diodeInC } from '../lines/diodeInC.ts';
import { finish } from '../lines/finish.ts';
import { peOpen } from '../lines/peOpen.ts';
import { pilotOpen } from '../lines/pilotOpen.ts';
import { pilotShort } from '../lines/pilotShort.ts';
import { recovery } from '../lines/recovery.ts';
import type { TestLines } from '../testAction.ts';

export const refuses: Readonly<Record<string, TestLines>> = {
  'pilot-short': pilotShort,
  'pilot-open': pilotOpen,
  diode,
  'diode-in-c': diodeInC,
  'pe-open': peOpen,
  recovery,
  finish,
};
