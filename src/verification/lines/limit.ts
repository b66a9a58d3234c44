/** What test action `limit` ought to show. */
import { dutyForCurrent, OFFER_RANGE } from '../../laws/pilotDuty.ts';
import type { Range } from '../../laws/quantities.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import { lowered } from '../actions/limit.ts';
import {
  dutyMargin,
  dutyOf,
  isDue,
  isTooMuch,
  offersShown,
  oscillating,
  pilotReadings,
  shownIn,
} from '../actions/pilotLines.ts';
import { hasPassed, inState, judgeAll } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { offerRange } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

/** Under a limit or a load that was set, for as long as it may take to be followed. */
const limited = (papers: Papers, o: Observed, isMeant: (due: Range) => boolean) => {
  const changed = (sample: Sample) =>
    o.samples.slice(0, o.samples.indexOf(sample)).findLast(({ operation }) => operation.op === 'supply');
  return pilotReadings(o, (setUp, sample) => {
    const since = changed(sample)?.seen.at ?? -Infinity;
    return (
      inState('B')(setUp, sample) &&
      (setUp.loadLimit !== null || setUp.siteLoad > 0) &&
      isMeant(offerRange(papers, setUp)) &&
      hasPassed(GREATEST_DUTY_CHANGE, since, sample.readings[0]?.at ?? 0)
    );
  });
};

export const limit: TestLines = {
  expectations: (papers) => [
    {
      id: 'too-much',
      should: false,
      source: rulesFor(papers).regulation('722.311; IEC 61851-1:2017 Table A.6 sequence 6'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => {
        const readings = limited(papers, o, ({ greatest }) => greatest > 0);
        return judgeAll(
          shownIn(papers, o, inState('B')).filter(({ reading }) => readings.includes(reading)),
          (one) => !isTooMuch(one),
        );
      },
    },
    {
      id: 'follows',
      should: true,
      source: pilotStandard('Table A.6 sequence 6, Table A.7'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => judgeAll(offersShown(papers, o, inState('B')), isDue),
    },
    {
      id: 'under-six',
      should: true,
      source: pilotStandard('Table A.7'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(
          limited(papers, o, ({ greatest }) => greatest === 0),
          (r) => !oscillating(r) || Math.abs(dutyOf(r) - dutyForCurrent(OFFER_RANGE.least)) <= dutyMargin,
        ),
    },
    {
      id: 'digital',
      should: false,
      source: pilotStandard('Tables A.7 and A.8'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(pilotReadings(o, inState('B')), (r) => {
          const duty = dutyOf(r);
          return !oscillating(r) || duty < 0.03 || duty > 0.07;
        }),
    },
  ],
  figures: (papers) => [
    {
      id: 'lowered',
      values: { amps: lowered(papers) },
      unit: 'A',
      value: lowered(papers),
      tolerance: 0.5,
      source: pilotStandard('Table A.7'),
    },
  ],
  limits: () => [],
  stops: [],
};
