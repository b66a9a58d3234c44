/** The causes that there can be, and those of them that what was handed over leaves. */
import type { Elimination } from '../../../attempt/opened/elimination.ts';

export function LeftAtFirst({ candidates, left: [first = 0] }: Elimination) {
  const bySheet = candidates.length - first;
  return (
    <>
      {candidates.length} causes can be on this site and unit, each by itself and at its usual size, “nothing
      wrong” among them.
      {bySheet === 0
        ? null
        : ` The sheet that was handed over rules out ${bySheet} of them, which would have read otherwise on it: ${first} left before the first test.`}
    </>
  );
}
