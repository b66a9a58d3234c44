/**
 * Whether an attempt is an assessment that is under way: until it is concluded nothing is told elsewhere either. One put
 * away unbegun was left; one that is begun may be gone on with, so it counts until it is concluded or deleted.
 */
import type { About } from './about.ts';

type Known = Pick<About, 'support' | 'concluded' | 'isGuest' | 'entries' | 'putAway'>;

export const isUnderWay = ({ support, concluded, isGuest, entries, putAway }: Known): boolean =>
  support === 'assessment' && !concluded && !isGuest && (entries > 0 || !putAway);
