/** The words of all causes, as they come to whoever puts one right (puttingRight.ts). */
import { causeTitle } from './causeTitles.ts';
import { impossibleText } from './impossible.ts';
import type { NamedCauses } from './puttingRight.ts';

export const NAMED_CAUSES: NamedCauses = { causeTitle, impossibleText };
