/** The lines of the tests of the aim `outlet-dead`, which come together. */
import { release } from '../lines/release.ts';
import { stateA } from '../lines/stateA.ts';
import { unplug } from '../lines/unplug.ts';
import type { TestLines } from '../testAction.ts';

export const outletDead: Readonly<Record<string, TestLines>> = { 'state-a': stateA, unplug, release };
