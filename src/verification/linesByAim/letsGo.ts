/** The lines of the tests of the aim `lets-go`, which come together. */
import { codingInUse } from '../lines/codingInUse.ts';
import { cToB } from '../lines/cToB.ts';
import { hold } from '../lines/hold.ts';
import { stateC } from '../lines/stateC.ts';
import { stateD } from '../lines/stateD.ts';
import { stop } from '../lines/stop.ts';
import type { TestLines } from '../testAction.ts';

export const letsGo: Readonly<Record<string, TestLines>> = {
  hold,
  'state-c': stateC,
  'c-to-b': cToB,
  'coding-in-use': codingInUse,
  'state-d': stateD,
  stop,
};
