/** Test action `state-d`: a vehicle that asks for supply and for ventilation. */

import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import { GREATEST_VENTILATION } from '../../laws/timing.ts';
import { inState, outletDead, outletSupplied, settledFor } from '../judging.ts';
import { mayWait, unplug, untilOffered } from '../offer.ts';
import { CIRCUIT, pilotStandard } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { halfInside, pilotReadings } from './pilotLines.ts';

const ventilated = (papers: Papers): readonly Expectation[] => [
  {
    id: 'supplies',
    should: true,
    text: 'supplies every line within 3 s of being asked',
    why: 'The unit’s sheet declares ventilation, which the unit then switches on.',
    source: pilotStandard('6.3.1.4, Table A.6 sequence 4'),
    of: 'unit',
    points: ['switching', 'pilot'],
    judge: (o) => {
      const asked = settledFor(inState('D'), GREATEST_VENTILATION);
      return outletSupplied(
        papers,
        o,
        (setUp, sample) => asked(setUp, sample) && !mayWait(papers, o, sample),
      );
    },
  },
  {
    id: 'fault',
    should: false,
    text: 'takes the pilot out of 2.59 to 3.28 V',
    why: 'Outside it the unit could take the vehicle for another state.',
    source: pilotStandard('Tables A.2 and A.3, by the circuit of Annex A'),
    of: 'unit',
    points: ['pilot'],
    judge: (o) => halfInside(pilotReadings(o, settledFor(inState('D'), 0.5)), 'high', MEASURED_PILOT.D),
  },
];

const unventilated = (papers: Papers): readonly Expectation[] => [
  {
    id: 'voltage',
    should: false,
    text: 'supplies',
    why: 'No ventilation is declared on its sheet, and the vehicle says that it needs it.',
    source: pilotStandard('6.3.1.4'),
    of: 'unit',
    points: ['switching', 'pilot'],
    judge: (o) => outletDead(papers, o, settledFor(inState('D'), GREATEST_VENTILATION)),
  },
  {
    id: 'high',
    should: true,
    text: 'takes the high half of the pilot to 2.59 to 3.28 V, oscillating or steady',
    why: 'The stand-in’s 270 Ω against the unit’s 1 kΩ give that, at the corners of their tolerances.',
    source: pilotStandard('Tables A.2 and A.3, by the circuit of Annex A'),
    of: 'unit',
    points: ['pilot'],
    judge: (o) => halfInside(pilotReadings(o, settledFor(inState('D'), 0.5)), 'high', MEASURED_PILOT.D),
  },
];

export const stateD: TestAction = {
  id: 'state-d',
  title: 'Vehicle asks for ventilation (D)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  purpose: 'Show that a vehicle that needs ventilation is supplied only where the sheet declares it.',
  applies: () => true,
  steps: (papers) => [
    ...untilOffered(papers),
    { op: 'vehicle', state: 'D' },
    waitFor(GREATEST_VENTILATION),
    ...outletVoltages(papers),
    pilot,
    ...unplug,
  ],
  expectations: (papers) => (papers.sheet.ventilation ? ventilated(papers) : unventilated(papers)),
  untold: () => [
    {
      id: 'air-moves',
      toldBy: [],
      text: 'moves air when it switches its ventilation on',
      why: 'The command says nothing of the fan: that is looked at by itself.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { voltage: 'the unit supplies a vehicle that needs ventilation and has none: isolate' },
};
