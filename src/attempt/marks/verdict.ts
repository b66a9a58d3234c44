/**
 * The verdict: right is what a faultless trainee concludes from the tests that are allowed and from what was handed
 * over. Where those cannot tell, that is 'could not finish'.
 */
import type { Conclusion, Verified } from '../../scenario/verify.ts';
import type { EntryOf, Verdict } from '../attempt.ts';
import type { Run } from '../run.ts';
import { countingEntries } from '../untimely.ts';

/** The first one: with it the attempt ended. */
export const conclusionOf = (run: Run): EntryOf<'conclusion'> | undefined =>
  countingEntries(run, 'conclusion')[0];

const RIGHT: Readonly<Record<Conclusion, Verdict>> = {
  sound: 'fit',
  'not sound': 'not-fit',
  'could not finish': 'could-not-finish',
};

/** `asNow`: what the allowed tests find on the unit as it is at the end. */
export const rightVerdict = ({ conclusion }: Verified): Verdict => RIGHT[conclusion];

export const isRightVerdict = (said: Verdict | null | undefined, asNow: Verified): boolean =>
  said === rightVerdict(asNow);

/** The gate: met unless a unit was called fit for service that could not be shown to be sound. */
export const meetsVerdictGate = (run: Run, asNow: Verified): boolean =>
  conclusionOf(run)?.verdict !== 'fit' || asNow.conclusion === 'sound';
