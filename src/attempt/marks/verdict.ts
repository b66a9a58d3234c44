/**
 * The verdict: right is what a faultless trainee concludes from the tests that are allowed and from what was handed
 * over. Where those cannot tell, that is 'could not finish'. A task of one aim asks about that alone, a task to find
 * about what is behind the symptom.
 */
import { faultsAmong } from '../../faults/catalogue.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Task } from '../../scenario/tasks.ts';
import type { Conclusion, Verified } from '../../scenario/verify.ts';
import type { EntryOf, Verdict } from '../record/attempt.ts';
import { AIM_VERDICTS, FIND_VERDICTS, VERDICTS } from '../record/attempt.ts';
import type { Run } from '../record/run.ts';
import { countingEntries } from '../record/untimely.ts';
import type { Expected } from './counted.ts';

/** The first one: with it the attempt ended. */
export const conclusionOf = (run: Run): EntryOf<'conclusion'> | undefined =>
  countingEntries(run, 'conclusion')[0];

const OFFERED: Readonly<Record<Task, readonly Verdict[]>> = {
  verify: VERDICTS,
  aim: AIM_VERDICTS,
  find: FIND_VERDICTS,
};

/** Those that can be given of a scenario, in the order in which they are offered. */
export const verdictsOf = ({ task }: Pick<Scenario, 'task'>): readonly Verdict[] => OFFERED[task];

/** What each verdict says was found. */
const SAYS: Readonly<Record<Verdict, Conclusion>> = {
  fit: 'sound',
  'nothing-wrong': 'sound',
  'as-designed': 'sound',
  'not-fit': 'not sound',
  'something-wrong': 'not sound',
  'could-not-finish': 'could not finish',
  'cannot-tell': 'could not finish',
};

export const saysSound = (verdict: Verdict): boolean => SAYS[verdict] === 'sound';
export const saysNotSound = (verdict: Verdict): boolean => SAYS[verdict] === 'not sound';

/**
 * What a verdict is about: the unit as it is at the end, but what is behind a symptom is behind it however the unit is
 * left.
 */
export const verdictIsAbout = (
  { task }: Pick<Scenario, 'task'>,
  { asMet, asNow }: Pick<Expected, 'asMet' | 'asNow'>,
): Verified => (task === 'find' ? asMet : asNow);

/** `found`: what the allowed tests find on the unit that it is about. */
export function rightVerdict(
  scenario: Pick<Scenario, 'task' | 'faults'>,
  { conclusion }: Pick<Verified, 'conclusion'>,
): Verdict {
  const own = verdictsOf(scenario).filter((verdict) => SAYS[verdict] === conclusion);
  const isDesigned = scenario.faults.length > faultsAmong(scenario.faults).length;
  return (own.find((verdict) => (verdict === 'as-designed') === isDesigned) ?? own[0]) as Verdict;
}

/**
 * A verdict of another task is none: it answers what was not asked. That nothing is wrong is right of what is as
 * designed, and the other way round: which of the two it is, is the diagnosis.
 */
export const isRightVerdict = (
  { scenario }: Pick<Run, 'scenario'>,
  said: Verdict | null | undefined,
  { conclusion }: Verified,
): boolean => said != null && verdictsOf(scenario).includes(said) && SAYS[said] === conclusion;

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
  task !== 'aim' || isNotSound;

/**
 * Whether reasons for tests that were left out are asked: of a few to choose from, those that were not needed need none.
 */
export const asksLeftOut = ({ task }: Pick<Scenario, 'task'>): boolean => task !== 'find';
