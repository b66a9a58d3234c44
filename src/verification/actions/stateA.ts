/** Test action `state-a`: nothing connected. */
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import { judgeAll, outletDead, samplesWhen, settledFor, unplugged } from '../judging.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { halfInside, pilotReadings } from './pilotLines.ts';

export const stateA: TestAction = {
  id: 'state-a',
  title: 'No vehicle (A)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  purpose: 'Show that nothing but the pilot is at the outlet while nothing is connected.',
  applies: () => true,
  steps: () => [waitFor(1), { op: 'prove-dead', at: 'outlet' }, pilot],
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      text: 'puts voltage on the outlet',
      why: 'Supply is allowed only while a vehicle asks for it.',
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => outletDead(papers, o, unplugged),
    },
    {
      id: 'high',
      should: true,
      text: 'holds the pilot at 11.4 to 12.6 V',
      why: 'Nothing loads its 1 kΩ.',
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => halfInside(pilotReadings(o, settledFor(unplugged, 0.5)), 'high', MEASURED_PILOT.A),
    },
    {
      id: 'ready',
      should: true,
      text: 'says that it is ready',
      why: 'Its start-up is over and no fault is latched.',
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching', 'residual-direct'],
      judge: (o) =>
        judgeAll(samplesWhen(o, settledFor(unplugged, 1)), ({ seen }) => seen.indicator === 'ready'),
    },
  ],
  untold: () => [
    {
      id: 'neutral-open',
      toldBy: ['poles-open'],
      ownOnly: true,
      text: 'has its neutral pole open',
      why: 'A closed neutral pole shows no voltage: only a dead test across the pole tells.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { voltage: 'the outlet is live with nothing connected: isolate and keep people away' },
};
