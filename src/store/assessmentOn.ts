/** Which assessment is under way on this device, in whatever tab. */
import type { About } from './about.ts';
import { isUnderWay } from './isUnderWay.ts';
import { keptAttempts } from './keptAttempt.ts';

/** The one kept last, or null; a device that keeps nothing knows of none. */
export const assessmentUnderWay = (): Promise<About | null> =>
  keptAttempts().then(
    (all) => all.find(isUnderWay) ?? null,
    () => null,
  );
