/** Test action `c-to-b`: a vehicle that takes its request back. */
import type { Reading } from '../../bench/reading.ts';
import { DUTY_UNCERTAINTY } from '../../bench/reading.ts';
import { GREATEST_OFF_AFTER_NOT_READY } from '../../laws/timing.ts';
import { linesOf } from '../../site/site.ts';
import {
  inState,
  isInside,
  judgeAll,
  outletDead,
  outletSupplied,
  readingsOf,
  samplesWhen,
  settledFor,
  type When,
} from '../judging.ts';
import type { Observed } from '../observed.ts';
import { mayWait, session, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { pilot, voltage, waitFor } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { asked, dutyOf, oscillating } from './pilotLines.ts';

/** The pilot's readings in B, each beside the last one in C of the same session, with nothing else changed between. */
function offersBeforeAndAfter(papers: Papers, o: Observed): readonly (readonly [Reading, Reading])[] {
  return samplesWhen(o, settledFor(inState('B'), 0.5)).flatMap((sample) => {
    if (mayWait(papers, o, sample)) return [];
    const { loadLimit, siteLoad } = sample.setUp;
    const last = session(o, sample).findLast(
      (one) =>
        inState('C')(one.setUp, one) &&
        one.setUp.loadLimit === loadLimit &&
        one.setUp.siteLoad === siteLoad &&
        one.readings.some(isOffer),
    );
    const before = last?.readings.find(isOffer);
    return before === undefined
      ? []
      : sample.readings
          .filter(({ quantity }) => quantity === 'pilot')
          .map((after) => [before, after] as const);
  });
}

const isOffer = (r: Reading): boolean => r.quantity === 'pilot' && oscillating(r);

/** As far as two readings of a duty tell. */
const isSame = (before: Reading, after: Reading): boolean =>
  oscillating(after) && Math.abs(dutyOf(after) - dutyOf(before)) <= 2 * DUTY_UNCERTAINTY + 1e-9;

/** Asked for the second time in a session, supply being due, and not authorised anew since. */
function askedAgain(papers: Papers, o: Observed): When {
  const due = asked(papers, o);
  return (setUp, sample) => {
    if (!due(setUp, sample)) return false;
    const done = session(o, sample);
    const back = done.findLastIndex((one) => inState('B')(one.setUp, one));
    return (
      done.slice(0, Math.max(0, back)).some((one) => inState('C')(one.setUp, one)) &&
      !done.slice(back).some(({ operation }) => operation.op === 'press' && operation.button === 'authorise')
    );
  };
}

export const cToB: TestAction = {
  id: 'c-to-b',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    pilot,
    { op: 'measure', quantity: 'opening-time', of: 'C-to-B' },
    waitFor(1),
    { op: 'prove-dead', at: 'outlet' },
    pilot,
    { op: 'vehicle', state: 'C' },
    waitFor(3),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    ...unplug,
  ],
  expectations: (papers) => [
    {
      id: 'off-in-time',
      should: true,
      source: pilotStandard('Table A.6 sequence 8.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) =>
        judgeAll(
          readingsOf(o, 'opening-time', () => true).filter((r) => r.qualifier !== 'unable'),
          (r) => isInside(r, { greatest: GREATEST_OFF_AFTER_NOT_READY }),
        ),
    },
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('Table A.6 sequence 8.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, settledFor(inState('B'), 0.5)),
    },
    {
      id: 'same-offer',
      should: true,
      source: pilotStandard('A.3'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => judgeAll(offersBeforeAndAfter(papers, o), ([before, after]) => isSame(before, after)),
    },
    {
      id: 'supplies-again',
      should: true,
      source: pilotStandard('A.3, Table A.6 sequence 4'),
      of: 'unit',
      points: ['switching', 'pilot', 'protective-conductor'],
      judge: (o) => outletSupplied(papers, o, askedAgain(papers, o)),
    },
  ],
  untold: () => [
    {
      id: 'unplugged',
      toldBy: ['unplug', 'release'],
      source: pilotStandard('Table A.6 sequence 2.2'),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'opening',
      quantity: 'opening-time',
      unit: 's',
      limit: GREATEST_OFF_AFTER_NOT_READY,
      kind: 'most',
      source: pilotStandard('Table A.6 sequence 8.1'),
      points: ['switching', 'pilot'],
      applies: (r) => r.quantity === 'opening-time' && r.of === 'C-to-B',
    },
  ],
  stops: ['voltage'],
};
