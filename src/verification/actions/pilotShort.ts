/** Test action `pilot-short`: the pilot shorted to PE while supplying. */

import { GREATEST_OFF_AFTER_PILOT_SHORT } from '../../laws/timing.ts';
import {
  isInside,
  judgeAll,
  outletDead,
  readingsOf,
  samplesWhen,
  settledFor,
  type When,
} from '../judging.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { offInTime } from './pilotLines.ts';

export const shorted: When = ({ supply, standIn }) =>
  supply === 'on' && standIn.plugged && standIn.pilot === 'shorted-to-earth';

export const pilotShort: TestAction = {
  id: 'pilot-short',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'measure', quantity: 'opening-time', of: 'pilot-short' },
    waitFor(3),
    pilot,
    { op: 'prove-dead', at: 'outlet' },
    ...unplug,
    ...cleared(papers, 'E'),
  ],
  expectations: (papers) => [
    offInTime(papers, 'pilot-short', {
      id: 'off-in-time',
      source: pilotStandard('6.3.1.2, Table A.6 sequence 12'),
      of: 'unit',
      points: ['pilot', 'switching'],
      greatest: GREATEST_OFF_AFTER_PILOT_SHORT,
      isMeant: (of) => of === 'pilot-short',
    }),
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('Table A.6 sequence 12'),
      of: 'unit',
      points: ['pilot', 'switching'],
      judge: (o) => outletDead(papers, o, settledFor(shorted, 3)),
    },
    {
      id: 'near-zero',
      should: true,
      source: CIRCUIT,
      of: 'circuit',
      points: ['pilot'],
      judge: (o) => judgeAll(readingsOf(o, 'pilot', shorted), (r) => isInside(r, { least: -1, greatest: 1 })),
    },
    {
      id: 'fault',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(samplesWhen(o, settledFor(shorted, 3)), ({ seen }) => seen.indicator === 'fault'),
    },
  ],
  untold: () => [
    {
      id: 'pe-lost',
      toldBy: ['pe-open'],
      source: pilotStandard('A.4.8'),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'opening',
      quantity: 'opening-time',
      unit: 's',
      limit: GREATEST_OFF_AFTER_PILOT_SHORT,
      kind: 'most',
      source: pilotStandard('6.3.1.2'),
      points: ['pilot'],
      applies: (r) => r.quantity === 'opening-time' && r.of === 'pilot-short',
    },
  ],
  stops: ['voltage'],
};
