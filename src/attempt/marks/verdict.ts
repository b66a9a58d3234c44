/**
 * The verdict: right is what a faultless trainee concludes from the tests that are allowed and from what was handed
 * over. Where those cannot tell, that is 'could not finish'. A task of one aim asks about that alone.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import type { Conclusion, Verified } from '../../scenario/verify.ts';
import type { EntryOf, Verdict } from '../attempt.ts';
import { AIM_VERDICTS, VERDICTS } from '../attempt.ts';
import type { Run } from '../run.ts';
import { countingEntries } from '../untimely.ts';

/** The first one: with it the attempt ended. */
export const conclusionOf = (run: Run): EntryOf<'conclusion'> | undefined =>
  countingEntries(run, 'conclusion')[0];

/** Those that can be given of a scenario, in the order in which they are offered. */
export const verdictsOf = ({ task }: Pick<Scenario, 'task'>): readonly Verdict[] =>
  task === 'aim' ? AIM_VERDICTS : VERDICTS;

/** What each verdict says was found. */
const SAYS: Readonly<Record<Verdict, Conclusion>> = {
  fit: 'sound',
  'nothing-wrong': 'sound',
  'not-fit': 'not sound',
  'something-wrong': 'not sound',
  'could-not-finish': 'could not finish',
  'cannot-tell': 'could not finish',
};

export const saysSound = (verdict: Verdict): boolean => SAYS[verdict] === 'sound';
export const saysNotSound = (verdict: Verdict): boolean => SAYS[verdict] === 'not sound';

/** `asNow`: what the allowed tests find on the unit as it is at the end. */
export const rightVerdict = (scenario: Pick<Scenario, 'task'>, { conclusion }: Verified): Verdict =>
  verdictsOf(scenario).find((verdict) => SAYS[verdict] === conclusion) as Verdict;

/** A verdict of the other task is none: it answers what was not asked. */
export const isRightVerdict = (
  { scenario }: Pick<Run, 'scenario'>,
  said: Verdict | null | undefined,
  asNow: Verified,
): boolean => said === rightVerdict(scenario, asNow);

/** The gate: met unless a unit was called sound that could not be shown to be. */
export function meetsVerdictGate(run: Run, asNow: Verified): boolean {
  const said = conclusionOf(run)?.verdict;
  return said === undefined || !saysSound(said) || asNow.conclusion === 'sound';
}

/**
 * Whether what next and whom to tell is asked: after one aim only where something is wrong, since else the tests that
 * follow are what is next.
 */
export const asksSteps = ({ task }: Pick<Scenario, 'task'>, isNotSound: boolean): boolean =>
  task === 'verify' || isNotSound;
