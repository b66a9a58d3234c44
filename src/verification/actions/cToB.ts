/** Test action `c-to-b`: a vehicle that takes its request back. */
import { GREATEST_OFF_AFTER_NOT_READY } from '../../laws/timing.ts';
import { linesOf } from '../../site/site.ts';
import {
  inState,
  isInside,
  judgeAll,
  outletDead,
  outletSupplied,
  readingsOf,
  settledFor,
} from '../judging.ts';
import { unplug, untilSupplied } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { pilot, voltage, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { asked, isDue, offersShown } from './pilotLines.ts';

export const cToB: TestAction = {
  id: 'c-to-b',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
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
      judge: (o) => judgeAll(offersShown(papers, o, inState('B')), isDue),
    },
    {
      id: 'supplies-again',
      should: true,
      source: pilotStandard('A.3, Table A.6 sequence 4'),
      of: 'unit',
      points: ['switching', 'pilot', 'protective-conductor'],
      judge: (o) => outletSupplied(papers, o, asked(papers, o)),
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
