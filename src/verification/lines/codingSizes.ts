/** What test action `coding-sizes` ought to show. */
import type { CableCoding } from '../../laws/proximity.ts';
import { isTooLittle, isTooMuch, offersShown, oscillating, pilotReadings } from '../actions/pilotLines.ts';
import { inState, judgeAll, outletDead, settledFor, type When } from '../judging.ts';
import { offerFigure } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

const uncoded: When = (setUp, sample) => setUp.standIn.coding === null && inState('B', 'C')(setUp, sample);

export const codingSizes: TestLines = {
  expectations: (papers) => [
    {
      id: 'too-much',
      should: false,
      source: pilotStandard('6.3.1.6, Table B.2'),
      of: 'unit',
      points: ['proximity-retention', 'pilot'],
      judge: (o) =>
        judgeAll(
          offersShown(papers, o, inState('B')).filter(({ reading }) => oscillating(reading)),
          (shown) => !isTooMuch(shown),
        ),
    },
    {
      id: 'all-of-it',
      should: true,
      source: pilotStandard('6.3.1.6, Tables A.7, A.8 and B.2'),
      of: 'unit',
      points: ['proximity-retention', 'pilot'],
      judge: (o) => judgeAll(offersShown(papers, o, inState('B')), (shown) => !isTooLittle(shown)),
    },
    {
      id: 'uncoded-offer',
      should: false,
      source: pilotStandard('Table B.2'),
      of: 'unit',
      points: ['proximity-retention'],
      judge: (o) => judgeAll(pilotReadings(o, settledFor(uncoded, 1)), (r) => !oscillating(r)),
    },
    {
      id: 'uncoded-voltage',
      should: false,
      source: pilotStandard('Table B.2'),
      of: 'unit',
      points: ['proximity-retention', 'switching'],
      judge: (o) => outletDead(papers, o, uncoded),
    },
  ],
  figures: (papers) =>
    [13, 63].flatMap((coding) => {
      const cable = { ...papers.sheet.cable, coding: coding as CableCoding };
      const value = offerFigure({ ...papers, sheet: { ...papers.sheet, cable } });
      return value === null
        ? []
        : [
            {
              id: `offer-${coding}`,
              unit: 'A' as const,
              value,
              tolerance: 0.5,
              source: pilotStandard('6.3.1.6, Tables A.7 and B.2'),
            },
          ];
    }),
  limits: () => [],
  stops: ['uncoded-voltage'],
};
