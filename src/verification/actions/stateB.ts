/** Test action `state-b`: a vehicle connected that does not ask. */
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import { inState, judgeAll, outletDead, settledFor } from '../judging.ts';
import { offerFigure, unplug, untilOffered } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { pilot } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import {
  halfInside,
  hasRightFrequency,
  holdsPlug,
  isHalfInside,
  isTooMuch,
  offeredReadings,
  offersShown,
  oscillating,
  pilotReadings,
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
    {
      id: 'high',
      should: true,
      text: 'takes the high half of the pilot to 8.37 to 9.59 V',
      why: 'The stand-in’s resistors against the unit’s 1 kΩ give that, at the corners of their tolerances.',
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => halfInside(pilotReadings(o, settledFor(inState('B'), 0.5)), 'high', MEASURED_PILOT.B),
    },
    {
      id: 'offers',
      should: true,
      text: 'offers a current by a pilot of 980 to 1020 Hz, its low half at −12.6 to −11.4 V',
      why: 'With permission given and any delay over nothing keeps it from offering. A vehicle takes another frequency for a fault, and its diode keeps the low half as it is.',
      source: pilotStandard('A.3, Tables A.2, A.6 sequence 3.1 and A.10'),
      of: 'unit',
      points: ['pilot', 'protective-conductor', 'proximity-retention', 'supply-wiring'],
      judge: (o) =>
        judgeAll(
          offeredReadings(papers, o, inState('B')),
          (r) => oscillating(r) && hasRightFrequency(r) && isHalfInside(r, 'low', MEASURED_PILOT.low),
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
