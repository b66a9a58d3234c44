/** The words of the tests of the aim `outlet-dead`, which come together. */
import { release } from '../actions/release.ts';
import { stateA } from '../actions/stateA.ts';
import { unplug } from '../actions/unplug.ts';
import type { ActionWords } from '../actionWords.ts';

export const outletDead: Readonly<Record<string, ActionWords>> = {
  'state-a': stateA,
  unplug,
  release,
};
