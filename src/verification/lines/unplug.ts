import { GREATEST_OFF_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { offInTime, peakOf } from '../actions/pilotLines.ts';
import { judgeAll, outletDead, samplesWhen, settledFor, type When } from '../judging.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

/** No load on the pilot, plugged in or not. */
const noVehicle: When = ({ supply, disturbed, standIn }) =>
  supply === 'on' && !disturbed && (!standIn.plugged || standIn.state === 'A') && standIn.pilot === 'sound';

const goings = ['unplug', 'C-to-A'];

export const unplug: TestLines = {
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
