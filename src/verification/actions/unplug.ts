/** Test action `unplug`: the vehicle goes away, from C and then from B. */

import { GREATEST_OFF_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { linesOf } from '../../site/site.ts';
import { judgeAll, outletDead, samplesWhen, settledFor, type When } from '../judging.ts';
import { unplug as away, untilOffered, untilSupplied } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { outletVoltages, pilot, voltage, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { offInTime, peakOf } from './pilotLines.ts';

/** No load on the pilot, plugged in or not. */
const noVehicle: When = ({ supply, disturbed, standIn }) =>
  supply === 'on' && !disturbed && (!standIn.plugged || standIn.state === 'A') && standIn.pilot === 'sound';

const goings = ['unplug', 'C-to-A'];

export const unplug: TestAction = {
  id: 'unplug',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    // A held plug cannot be pulled: there the pilot is let go at the vehicle's end.
    { op: 'measure', quantity: 'opening-time', of: papers.sheet.outlet === 'socket' ? 'C-to-A' : 'unplug' },
    waitFor(1),
    ...outletVoltages(papers),
    ...away,
    ...untilOffered(papers),
    ...away,
    waitFor(1),
    pilot,
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.PE')),
  ],
  expectations: (papers) => [
    offInTime(papers, 'unplug', {
      id: 'off-in-time',
      source: pilotStandard('Table A.6 sequence 2.2'),
      of: 'unit',
      points: ['switching', 'pilot'],
      greatest: GREATEST_OFF_AFTER_UNPLUGGING,
      isMeant: (of) => goings.includes(of),
    }),
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, settledFor(noVehicle, 0.5)),
    },
    peakOf(papers, 'unplug', {
      id: 'twelve-volts',
      should: true,
      source: pilotStandard('Tables A.4 and A.10, Table A.6 sequence 9.3'),
      of: 'unit',
      points: ['pilot'],
      state: 'A',
      when: settledFor(noVehicle, 0.5),
    }),
    {
      id: 'session-ends',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching'],
      judge: (o) =>
        judgeAll(samplesWhen(o, settledFor(noVehicle, 3)), ({ seen }) => seen.indicator === 'ready'),
    },
  ],
  untold: () => [
    {
      id: 'earth-lost',
      toldBy: ['pe-open'],
      ownOnly: true,
      source: pilotStandard('A.4.8'),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'opening',
      quantity: 'opening-time',
      unit: 's',
      limit: GREATEST_OFF_AFTER_UNPLUGGING,
      kind: 'most',
      source: pilotStandard('Table A.6 sequence 2.2'),
      points: ['switching', 'pilot'],
      applies: (r) => r.quantity === 'opening-time' && goings.includes(r.of ?? ''),
    },
  ],
  stops: ['voltage'],
};
