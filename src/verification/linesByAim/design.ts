/** The lines of the tests of the aim `design`, which come together. */
import { papers } from '../lines/papers.ts';
import type { TestLines } from '../testAction.ts';

export const design: Readonly<Record<string, TestLines>> = { papers };
