/** What test action `pilot-short` ought to show. */
import { GREATEST_OFF_AFTER_PILOT_SHORT } from '../../laws/timing.ts';
import { offInTime } from '../actions/pilotLines.ts';
import { shorted } from '../actions/pilotShort.ts';
import { isInside, judgeAll, outletDead, readingsOf, samplesWhen, settledFor } from '../judging.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const pilotShort: TestLines = {
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
