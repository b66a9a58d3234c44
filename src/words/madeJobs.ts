/** Jobs that were drawn, in words: what is told of them before anything is done. */
import type { MadeJobWords } from '../fairness/make.ts';
import type { SiteId } from '../scenario/aims.ts';
import { aimJobPlace, UNIT_WORDS } from './aimJobs.ts';

export const madeJobWords = (site: SiteId, seed: number): MadeJobWords => ({
  title: aimJobPlace(seed),
  brief: `${UNIT_WORDS[site]} Most of its tests are done and signed. These few are yours: do them, say what is wrong if anything is, and whether the unit may go into service.`,
  by: 'a colleague, this morning',
});
