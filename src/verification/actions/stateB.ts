/** Test action `state-b`: a vehicle connected that does not ask. */
import { PILOT_FREQUENCY } from '../../laws/pilotDuty.ts';
import { inState, isNumberInside, judgeAll, outletDead } from '../judging.ts';
import { offerFigure, unplug, untilOffered } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { pilot } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import {
  highExpectation,
  holdsPlug,
  isTooMuch,
  lowExpectation,
  offeredReadings,
  offersShown,
  oscillating,
} from './pilotLines.ts';

export const stateB: TestAction = {
  id: 'state-b',
  title: 'Vehicle connected (B)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  purpose: 'Show that the unit finds the vehicle, offers the right current and supplies nothing yet.',
  applies: () => true,
  steps: (papers) => [...untilOffered(papers), pilot, { op: 'prove-dead', at: 'outlet' }, ...unplug],
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      text: 'puts voltage on the outlet',
      why: 'The vehicle is connected but has not asked.',
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, inState('B')),
    },
    highExpectation('B', 'takes the high half of the pilot to'),
    lowExpectation(papers, 'B'),
    {
      id: 'offers',
      should: true,
      text: 'offers a current by an oscillating pilot',
      why: 'Once permission is given and any delay is over, nothing keeps it from offering.',
      source: pilotStandard('A.3, Table A.6 sequence 3.1'),
      of: 'unit',
      points: ['pilot', 'protective-conductor', 'proximity-retention'],
      judge: (o) => judgeAll(offeredReadings(papers, o, inState('B')), oscillating),
    },
    {
      id: 'frequency',
      should: true,
      text: 'oscillates at 980 to 1020 Hz',
      why: 'A vehicle takes another frequency for a fault.',
      source: pilotStandard('Table A.2'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(offeredReadings(papers, o, inState('B')).filter(oscillating), (r) =>
          isNumberInside(r.frequency ?? 0, 0.5, PILOT_FREQUENCY.range),
        ),
    },
    {
      id: 'too-much',
      should: false,
      text: 'offers more than the least of unit, cable and setting',
      why: 'The vehicle would take it, and the weakest part would carry it.',
      source: pilotStandard('6.3.1.6, Table A.7'),
      of: 'unit',
      points: ['pilot', 'proximity-retention'],
      judge: (o) =>
        judgeAll(
          offersShown(papers, o, inState('B')).filter(({ reading }) => oscillating(reading)),
          (shown) => !isTooMuch(shown),
        ),
    },
    ...(papers.sheet.outlet === 'socket' && papers.sheet.holdInB ? [holdsPlug('B', SHEET)] : []),
  ],
  untold: () => [
    {
      id: 'diode',
      toldBy: ['diode', 'diode-in-c'],
      text: 'refuses a vehicle whose diode is shorted',
      why: 'The stand-in’s diode is sound in this set-up.',
      source: pilotStandard('Table A.4 note c'),
    },
  ],
  figures: (papers) => {
    const value = offerFigure(papers);
    return value === null
      ? []
      : [
          {
            id: 'offer',
            text: 'offers, per line',
            unit: 'A',
            value,
            tolerance: 0.5,
            why: 'The least of unit, cable and setting; the duty says it for each line.',
            source: pilotStandard('6.3.1.6, Tables A.7 and A.8'),
          },
        ];
  },
  limits: () => [],
  stops: { voltage: 'the outlet is live with no request: isolate and keep people away' },
};
