/** The words of the tests of the aim `lets-go`, which come together. */

import { codingInUse } from '../actions/codingInUse.ts';
import { cToB } from '../actions/cToB.ts';
import { hold } from '../actions/hold.ts';
import { stateC } from '../actions/stateC.ts';
import { stateD } from '../actions/stateD.ts';
import { stop } from '../actions/stop.ts';
import type { ActionWords } from '../actionWords.ts';

export const letsGo: Readonly<Record<string, ActionWords>> = {
  hold,
  'state-c': stateC,
  'c-to-b': cToB,
  'coding-in-use': codingInUse,
  'state-d': stateD,
  stop,
};
