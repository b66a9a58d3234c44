/** Expectations of the pilot and the plug that several states share, and how their samples are chosen. */

import type { ReadingOf } from '../../bench/reading.ts';
import { isOf } from '../../bench/reading.ts';
import { DUTY_UNCERTAINTY, FREQUENCY_DIGITS } from '../../bench/readings/pilot.ts';
import { DUTY_TOLERANCE, dutyForCurrent } from '../../laws/pilotDuty.ts';
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import type { Amps, Duty, Range, Seconds } from '../../laws/quantities.ts';
import { GREATEST_DUTY_CHANGE, GREATEST_ON_AFTER_READY } from '../../laws/timing.ts';
import {
  hasPassed,
  inState,
  isInside,
  isNumberInside,
  judgeAll,
  readingsOf,
  samplesWhen,
  settledFor,
  type When,
} from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { mayWait, offerRange } from '../offer.ts';
import { stating } from '../stated.ts';
import type { Expectation, Papers } from '../testAction.ts';

export const pilotReadings = (o: Observed, when: When): readonly ReadingOf<'pilot'>[] =>
  readingsOf(o, 'pilot', when);

/** One half of the pilot against its measured range (IEC 61851-1:2017 Table A.10). */
export const isHalfInside = (r: ReadingOf<'pilot'>, half: 'high' | 'low', range: Partial<Range>): boolean =>
  isNumberInside(r[half] ?? 0, r.uncertainty ?? 0, range);

export const halfInside = (
  readings: readonly ReadingOf<'pilot'>[],
  half: 'high' | 'low',
  range: Partial<Range>,
) => judgeAll(readings, (r) => isHalfInside(r, half, range));

interface Peak extends Omit<Expectation, 'judge'> {
  readonly state: 'A' | 'B' | 'D';
  readonly when: When;
}

/** The pilot's positive peak in its range for a state (IEC 61851-1:2017 Table A.10), or in the one that a job states. */
export function peakOf(papers: Papers, test: string, { state, when, ...line }: Peak): Expectation {
  const { ranges, line: stated } = stating(papers, test, line.source, {
    high: { unit: 'V', ...MEASURED_PILOT[state] },
  });
  return {
    ...line,
    ...stated,
    judge: (o) => halfInside(pilotReadings(o, when), 'high', ranges.high),
  };
}

/** From the end of whatever let it supply to a dead outlet: the time of the test's own limit `opening`. */
export function offInTime(
  papers: Papers,
  test: string,
  {
    greatest,
    isMeant,
    ...line
  }: Omit<Expectation, 'judge' | 'should'> & {
    readonly greatest: Seconds;
    readonly isMeant: (of: string) => boolean;
  },
): Expectation {
  const { ranges, line: stated } = stating(papers, test, line.source, {
    opening: { unit: 's', greatest, ofLimit: true },
  });
  return {
    ...line,
    ...stated,
    should: true,
    judge: (o) =>
      judgeAll(
        readingsOf(o, 'opening-time', () => true).filter(
          (r) => r.qualifier !== 'unable' && isMeant(r.of ?? ''),
        ),
        (r) => isInside(r, ranges.opening),
      ),
  };
}

export const oscillating = (r: ReadingOf<'pilot'>): boolean =>
  r.frequency !== null && r.frequency !== undefined;

/** Of a pilot that oscillates. */
export const hasFrequency = ({ frequency }: ReadingOf<'pilot'>, range: Partial<Range>): boolean =>
  isNumberInside(frequency ?? 0, FREQUENCY_DIGITS, range);

/** A changed limit of the site may take this long to be followed. */
const followed = (o: Observed, sample: Sample): boolean => {
  const before = o.samples.slice(0, o.samples.indexOf(sample));
  const changed = before.findLast(
    ({ operation }) =>
      operation.op === 'supply' &&
      (operation.loadLimit !== undefined ||
        operation.siteLoad !== undefined ||
        operation.nextPoint !== undefined),
  );
  return (
    changed === undefined || hasPassed(GREATEST_DUTY_CHANGE, changed.seen.at, sample.readings[0]?.at ?? 0)
  );
};

/** Pilot samples in a state at which the sheet no longer allows the unit to keep the vehicle waiting. */
export const offeredSamples = (papers: Papers, o: Observed, when: When): readonly Sample[] =>
  samplesWhen(o, settledFor(when, 1)).filter(
    (sample) =>
      sample.readings.some((r) => r.quantity === 'pilot') &&
      followed(o, sample) &&
      !mayWait(papers, o, sample),
  );

export const offeredReadings = (papers: Papers, o: Observed, when: When): readonly ReadingOf<'pilot'>[] =>
  offeredSamples(papers, o, when).flatMap(({ readings }) => readings.filter((r) => isOf(r, 'pilot')));

export const dutyOf = (r: ReadingOf<'pilot'>): Duty => (oscillating(r) ? (r.duty ?? 0) : 0);

/** An offer, and the duties that were due with what was set. */
interface Shown {
  readonly reading: ReadingOf<'pilot'>;
  readonly due: Range;
}

/** Nothing due is a steady pilot, which has no duty. */
const dutyDue = (amps: Amps): Duty => (amps === 0 ? 0 : dutyForCurrent(amps));

function besideDue(papers: Papers, { readings, setUp }: Sample): readonly Shown[] {
  const { least, greatest } = offerRange(papers, setUp);
  const due = { least: dutyDue(least), greatest: dutyDue(greatest) };
  return readings.filter((r) => isOf(r, 'pilot')).map((reading) => ({ reading, due }));
}

/** Every offer shown in a state, whether or not the unit might keep the vehicle waiting. */
export const shownIn = (papers: Papers, o: Observed, when: When): readonly Shown[] =>
  samplesWhen(o, when).flatMap((sample) => besideDue(papers, sample));

/** The offers shown where one was due. */
export const offersShown = (papers: Papers, o: Observed, when: When): readonly Shown[] =>
  offeredSamples(papers, o, when).flatMap((sample) => besideDue(papers, sample));

export const isDue = (shown: Shown): boolean => !isTooMuch(shown) && !isTooLittle(shown);
export const isTooMuch = ({ reading, due }: Shown): boolean => dutyOf(reading) > due.greatest + dutyMargin;
export const isTooLittle = ({ reading, due }: Shown): boolean => dutyOf(reading) < due.least - dutyMargin;

export const dutyMargin = DUTY_TOLERANCE + DUTY_UNCERTAINTY;

export const holdsPlug = (state: 'B' | 'C', source: Expectation['source']): Expectation => ({
  id: 'plug-held',
  should: true,
  source,
  of: 'unit',
  points: ['proximity-retention'],
  judge: (o) => judgeAll(samplesWhen(o, settledFor(inState(state), 3)), ({ seen }) => seen.plug === 'held'),
});

/** In C and long enough for supply to be due. */
export const asked = (papers: Papers, o: Observed): When => {
  const settled = settledFor(inState('C'), GREATEST_ON_AFTER_READY);
  return (setUp, sample) => settled(setUp, sample) && !mayWait(papers, o, sample);
};
