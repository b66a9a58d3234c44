/** Test action `limit`: what the site leaves for the unit goes down, under 6 A, and up again. */
import type { OperationInput } from '../../bench/operation.ts';
import { OFFER_RANGE } from '../../laws/pilotDuty.ts';
import type { Amps } from '../../laws/quantities.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import { knownLoad, offerRange, unplug, untilOffered } from '../offer.ts';
import { PRACTICE, pilotStandard } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';

/** Less than may be offered, A. */
const TOO_LITTLE: Amps = 4;
/** The pause before a new offer (Table A.6 sequence 9.2) on top of the time to follow, s. */
const AND_PAUSE = 4;

export const lowered = (papers: Papers): Amps => (offerRange(papers).least > 10 ? 10 : OFFER_RANGE.least);

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

export const limit: Procedure = {
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
};
