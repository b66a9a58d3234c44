/** What test action `state-b` ought to show. */
import { PILOT_FREQUENCY } from '../../laws/pilotDuty.ts';
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import {
  hasFrequency,
  holdsPlug,
  isHalfInside,
  isTooMuch,
  offeredReadings,
  offersShown,
  oscillating,
  peakOf,
} from '../actions/pilotLines.ts';
import { inState, judgeAll, outletDead, settledFor } from '../judging.ts';
import { offerFigure } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { stating } from '../stated.ts';
import type { TestLines } from '../testAction.ts';

export const stateB: TestLines = {
  expectations: (papers) => {
    const offer = stating(papers, 'state-b', pilotStandard('A.3, Tables A.2, A.6 sequence 3.1 and A.10'), {
      frequency: { unit: 'Hz', ...PILOT_FREQUENCY.range },
      low: { unit: 'V', ...MEASURED_PILOT.low },
    });
    return [
      {
        id: 'voltage',
        should: false,
        source: pilotStandard('6.3.1'),
        of: 'unit',
        points: ['switching', 'pilot'],
        judge: (o) => outletDead(papers, o, inState('B')),
      },
      peakOf(papers, 'state-b', {
        id: 'high',
        should: true,
        source: pilotStandard('Table A.10'),
        of: 'unit',
        points: ['pilot'],
        state: 'B',
        when: settledFor(inState('B'), 0.5),
      }),
      {
        id: 'offers',
        should: true,
        ...offer.line,
        of: 'unit',
        points: ['pilot', 'protective-conductor', 'proximity-retention', 'supply-wiring'],
        judge: (o) =>
          judgeAll(
            offeredReadings(papers, o, inState('B')),
            (r) =>
              oscillating(r) &&
              hasFrequency(r, offer.ranges.frequency) &&
              isHalfInside(r, 'low', offer.ranges.low),
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
    ];
  },
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
