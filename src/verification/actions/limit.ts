/** Test action `limit`: what the site leaves for the unit goes down, under 6 A, and up again. */
import type { OperationInput } from '../../bench/operation.ts';
import { dutyForCurrent, OFFER_RANGE } from '../../laws/pilotDuty.ts';
import type { Amps, Range } from '../../laws/quantities.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import { hasPassed, inState, judgeAll } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { knownLoad, offerRange, unplug, untilOffered } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE, pilotStandard } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import {
  dutyMargin,
  dutyOf,
  isDue,
  isTooMuch,
  offersShown,
  oscillating,
  pilotReadings,
  shownIn,
} from './pilotLines.ts';

/** Less than may be offered, A. */
const TOO_LITTLE: Amps = 4;
/** The pause before a new offer (Table A.6 sequence 9.2) on top of the time to follow, s. */
const AND_PAUSE = 4;

const lowered = (papers: Papers): Amps => (offerRange(papers).least > 10 ? 10 : OFFER_RANGE.least);

const setLimit = (loadLimit: Amps | null) => [
  { op: 'supply', loadLimit } as const,
  waitFor(GREATEST_DUTY_CHANGE),
];

const setLoad = (siteLoad: Amps) => [{ op: 'supply', siteLoad } as const, waitFor(GREATEST_DUTY_CHANGE)];

/** So much of what the sensor on the service allows is drawn by a load that is known to 10 %, whole amperes. */
const loadOf = (papers: Papers, drawn: Amps): Amps =>
  Math.max(1, Math.round(drawn - knownLoad(papers).greatest / 1.1));

/** A known load beside the unit, for a unit that goes by a sensor of its own: first some is left, then nothing. */
const withKnownLoad = (papers: Papers): readonly OperationInput[] => {
  const { serviceLimit } = papers.sheet;
  return serviceLimit === null
    ? []
    : [
        ...setLoad(loadOf(papers, serviceLimit - lowered(papers))),
        pilot,
        ...setLoad(loadOf(papers, (serviceLimit - TOO_LITTLE) / 0.9)),
        pilot,
        ...setLoad(0),
      ];
};

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

export const limit: TestAction = {
  id: 'limit',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['pilot', 'coding'],
  applies: ({ sheet }) => sheet.permission !== 'held',
  steps: (papers) => [
    ...untilOffered(papers),
    ...setLimit(lowered(papers)),
    pilot,
    ...setLimit(TOO_LITTLE),
    pilot,
    ...setLimit(papers.sheet.loadLimit),
    ...withKnownLoad(papers),
    waitFor(AND_PAUSE),
    pilot,
    ...unplug,
  ],
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
  untold: ({ sheet }) => [
    sheet.serviceLimit === null
      ? {
          id: 'sensor',
          toldBy: [],
          source: PRACTICE,
        }
      : {
          id: 'vehicle',
          toldBy: [],
          source: pilotStandard('Table A.6 sequence 6'),
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
