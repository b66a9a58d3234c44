/** The lines of the tests of the aim `dead`, which come together. */
import { instruments } from '../lines/instruments.ts';
import { isolate } from '../lines/isolate.ts';
import { proveDead } from '../lines/proveDead.ts';
import type { TestLines } from '../testAction.ts';

export const dead: Readonly<Record<string, TestLines>> = { instruments, isolate, 'prove-dead': proveDead };
