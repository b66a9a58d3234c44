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
  title: 'Vehicle stops asking (C to B)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  purpose: 'Time how soon the outlet is dead, and show that supply returns when asked again.',
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
      text: 'is dead on every pole within 100 ms',
      why: 'A vehicle that takes its request back may be unplugged at once.',
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
      text: 'leaves voltage on the outlet in B',
      why: 'The connector would come out live.',
      source: pilotStandard('Table A.6 sequence 8.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, settledFor(inState('B'), 0.5)),
    },
    {
      id: 'same-offer',
      should: true,
      text: 'goes on offering the same current',
      why: 'The session is not over: the vehicle may ask again.',
      source: pilotStandard('A.3'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => judgeAll(offersShown(papers, o, inState('B')), isDue),
    },
    {
      id: 'supplies-again',
      should: true,
      text: 'supplies again when asked again, with no new permission',
      why: 'Going back to B does not end the permission.',
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
      text: 'switches off when the connector is pulled',
      why: 'It stayed plugged in throughout.',
      source: pilotStandard('Table A.6 sequence 2.2'),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'opening',
      text: 'time from the end of the request to a dead outlet',
      quantity: 'opening-time',
      unit: 's',
      limit: GREATEST_OFF_AFTER_NOT_READY,
      kind: 'most',
      sum: 'C2 to B2: supply off within 100 ms',
      source: pilotStandard('Table A.6 sequence 8.1'),
      points: ['switching', 'pilot'],
      applies: (r) => r.quantity === 'opening-time' && r.of === 'C-to-B',
    },
  ],
  stops: { voltage: 'the outlet stays live after the request ended: isolate and keep people away' },
};
