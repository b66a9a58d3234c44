/** The lines of the tests of the aim `clears`, which come together. */
import { loop } from '../lines/loop.ts';
import { voltDrop } from '../lines/voltDrop.ts';
import type { TestLines } from '../testAction.ts';

export const clears: Readonly<Record<string, TestLines>> = { loop, 'volt-drop': voltDrop };
