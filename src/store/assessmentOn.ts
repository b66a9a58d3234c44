/**
 * Whether an assessment is under way on this device, in whatever tab: until it is concluded nothing is told elsewhere
 * either. One put away unbegun was left; one that is begun may be gone on with, so it counts until it is concluded or
 * deleted.
 */
import type { About } from './about.ts';
import { keptAttempts } from './keptAttempt.ts';

type Known = Pick<About, 'support' | 'concluded' | 'isGuest' | 'entries' | 'putAway'>;

export const isUnderWay = ({ support, concluded, isGuest, entries, putAway }: Known): boolean =>
  support === 'assessment' && !concluded && !isGuest && (entries > 0 || !putAway);

/** The one kept last, or null; a device that keeps nothing knows of none. */
export const assessmentUnderWay = (): Promise<About | null> =>
  keptAttempts().then(
    (all) => all.find(isUnderWay) ?? null,
    () => null,
  );
