/** What test action `state-b` ought to show. */
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import {
  halfInside,
  hasRightFrequency,
  holdsPlug,
  isHalfInside,
  isTooMuch,
  offeredReadings,
  offersShown,
  oscillating,
  pilotReadings,
} from '../actions/pilotLines.ts';
import { inState, judgeAll, outletDead, settledFor } from '../judging.ts';
import { offerFigure } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const stateB: TestLines = {
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, inState('B')),
    },
    {
      id: 'high',
      should: true,
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => halfInside(pilotReadings(o, settledFor(inState('B'), 0.5)), 'high', MEASURED_PILOT.B),
    },
    {
      id: 'offers',
      should: true,
      source: pilotStandard('A.3, Tables A.2, A.6 sequence 3.1 and A.10'),
      of: 'unit',
      points: ['pilot', 'protective-conductor', 'proximity-retention', 'supply-wiring'],
      judge: (o) =>
        judgeAll(
          offeredReadings(papers, o, inState('B')),
          (r) => oscillating(r) && hasRightFrequency(r) && isHalfInside(r, 'low', MEASURED_PILOT.low),
        ),
    },
    {
      id: 'too-much',
      should: false,
      source: pilotStandard('6.3.1.6, Table A.7'),
      of: 'unit',
      points: ['pilot', 'proximity-retention'],
      judge: (o) =>
        judgeAll(
          offersShown(papers, o, inState('B')).filter(({ reading }) => oscillating(reading)),
          (shown) => !isTooMuch(shown),
        ),
    },
    ...(papers.sheet.outlet === 'socket' && papers.sheet.holdInB ? [holdsPlug('B', SHEET)] : []),
  ],
  figures: (papers) => {
    const value = offerFigure(papers);
    return value === null
      ? []
      : [
          {
            id: 'offer',
            unit: 'A',
            value,
            tolerance: 0.5,
            source: pilotStandard('6.3.1.6, Tables A.7 and A.8'),
          },
        ];
  },
  limits: () => [],
  stops: ['voltage'],
};
