/** Test action `energise`: watched and listened to from switch-on until the unit is ready. */
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import { judgeAll, outletDead, outletPairs, samplesWhen, settledFor, unplugged } from '../judging.ts';
import { CIRCUIT, PRACTICE, pilotStandard, SHEET } from '../sources.ts';
import { pilot, voltage, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { halfInside, oscillating, pilotReadings } from './pilotLines.ts';

export const energise: TestAction = {
  id: 'energise',
  title: 'Switching on',
  stage: 'with power',
  from: 'isolated',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  cover: 'closed',
  purpose: 'Show that the unit starts by itself, closes nothing, and says when it is ready.',
  applies: () => true,
  steps: (papers) => [
    { op: 'energise' },
    pilot,
    ...outletPairs(papers).map(([a, b]) => voltage(a, b)),
    waitFor(papers.sheet.startUp + 2),
    { op: 'prove-dead', at: 'outlet' },
    pilot,
  ],
  expectations: (papers) => {
    const ready = settledFor(unplugged, papers.sheet.startUp + 1);
    return [
      {
        id: 'voltage',
        should: false,
        text: 'puts voltage on the outlet at any moment',
        why: 'Nothing is connected, and nothing has been checked yet.',
        source: pilotStandard('6.3.1'),
        of: 'unit',
        points: ['switching'],
        judge: (o) => outletDead(papers, o, unplugged),
      },
      {
        id: 'contactor',
        should: false,
        text: 'lets its contactor be heard',
        why: 'Nothing is to close before a vehicle asks; its sheet names no self-test of the contactor.',
        source: SHEET,
        of: 'unit',
        points: ['switching'],
        judge: (o) =>
          judgeAll(samplesWhen(o, unplugged), ({ events }) =>
            events.every(({ what }) => what !== 'contactor closed'),
          ),
      },
      {
        id: 'offers-early',
        should: false,
        text: 'oscillates its pilot with nothing connected',
        why: 'Until it is ready the pilot is off, steady low or nought; then it is steady at +12 V.',
        source: pilotStandard('Table A.4'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(pilotReadings(o, unplugged), (r) => !oscillating(r)),
      },
      {
        id: 'trips',
        should: false,
        text: 'trips anything as it is switched on',
        why: 'Its filters and supplies draw little; a trip is a fault, or the wrong device.',
        source: PRACTICE,
        of: 'circuit',
        points: ['insulation', 'residual-direct', 'supply-wiring'],
        judge: (o) =>
          judgeAll(samplesWhen(o, unplugged), ({ events }) =>
            events.every(({ what }) => !what.endsWith('tripped')),
          ),
      },
      {
        id: 'ready',
        should: true,
        text: `says that it is ready once its ${papers.sheet.startUp} s are over`,
        why: 'Its sheet gives the time; a dark unit has no supply.',
        source: SHEET,
        of: 'unit',
        points: ['supply-wiring', 'pilot', 'switching', 'residual-direct'],
        judge: (o) => judgeAll(samplesWhen(o, ready), ({ seen }) => seen.indicator === 'ready'),
      },
      {
        id: 'twelve-volts',
        should: true,
        text: 'holds the pilot steady at 11.4 to 12.6 V once it is ready',
        why: 'Nothing is connected, and it is ready for a vehicle.',
        source: pilotStandard('Tables A.4 and A.10'),
        of: 'unit',
        points: ['pilot', 'supply-wiring'],
        judge: (o) => halfInside(pilotReadings(o, ready), 'high', MEASURED_PILOT.A),
      },
    ];
  },
  untold: () => [
    {
      id: 'poles',
      toldBy: ['poles-open'],
      ownOnly: true,
      text: 'has every pole of its contactor open',
      why: 'A closed neutral pole shows no voltage.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { voltage: 'the outlet is live with nothing connected: isolate and keep people away' },
};
