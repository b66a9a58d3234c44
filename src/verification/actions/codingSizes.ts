import type { CableCoding } from '../../laws/proximity.ts';
import { CABLE_CODINGS } from '../../laws/proximity.ts';
import { inState, judgeAll, outletDead, settledFor, type When } from '../judging.ts';
import { offerFigure, permission, unplug } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { isTooLittle, isTooMuch, offersShown, oscillating, pilotReadings } from './pilotLines.ts';

const plugIn = (papers: Papers, coding: CableCoding | null) =>
  [
    { op: 'vehicle', coding, plugged: true, state: 'B' },
    waitFor(2),
    ...permission(papers),
    waitFor(2),
    pilot,
  ] as const;

const uncoded: When = (setUp, sample) => setUp.standIn.coding === null && inState('B', 'C')(setUp, sample);

export const codingSizes: TestAction = {
  id: 'coding-sizes',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...CABLE_CODINGS.flatMap((coding) => [...plugIn(papers, coding), ...unplug]),
    ...plugIn(papers, null),
    { op: 'vehicle', state: 'C' },
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    { op: 'vehicle', coding: papers.sheet.cable.coding },
  ],
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
  untold: () => [
    {
      id: 'cable-itself',
      toldBy: ['inspect', 'coding'],
      source: pilotStandard('Annex B'),
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
