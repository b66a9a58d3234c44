/** What test action `c-to-b` ought to show. */
import { GREATEST_OFF_AFTER_NOT_READY } from '../../laws/timing.ts';
import { asked, isDue, offersShown, offInTime } from '../actions/pilotLines.ts';
import { inState, judgeAll, outletDead, outletSupplied, settledFor, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { session } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

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

export const cToB: TestLines = {
  expectations: (papers) => [
    offInTime(papers, 'c-to-b', {
      id: 'off-in-time',
      source: pilotStandard('Table A.6 sequence 8.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      greatest: GREATEST_OFF_AFTER_NOT_READY,
      isMeant: () => true,
    }),
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
      judge: (o) => judgeAll(offersShown(papers, o, inState('B')), isDue),
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
