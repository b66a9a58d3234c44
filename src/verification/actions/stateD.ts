/** Test action `state-d`: a vehicle that asks for supply and for ventilation. */

import { GREATEST_VENTILATION } from '../../laws/timing.ts';
import { inState, outletDead, outletSupplied, settledFor } from '../judging.ts';
import { mayWait, unplug, untilOffered } from '../offer.ts';
import { CIRCUIT, pilotStandard } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { peakOf } from './pilotLines.ts';

const ventilated = (papers: Papers): readonly Expectation[] => [
  {
    id: 'supplies',
    should: true,
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
  peakOf(papers, 'state-d', {
    id: 'fault',
    should: false,
    source: pilotStandard('Tables A.2 and A.3', 'by-annex-a-circuit'),
    of: 'unit',
    points: ['pilot'],
    state: 'D',
    when: settledFor(inState('D'), 0.5),
  }),
];

const unventilated = (papers: Papers): readonly Expectation[] => [
  {
    id: 'voltage',
    should: false,
    source: pilotStandard('6.3.1.4'),
    of: 'unit',
    points: ['switching', 'pilot'],
    judge: (o) => outletDead(papers, o, settledFor(inState('D'), GREATEST_VENTILATION)),
  },
  peakOf(papers, 'state-d', {
    id: 'high',
    should: true,
    source: pilotStandard('Tables A.2 and A.3', 'by-annex-a-circuit'),
    of: 'unit',
    points: ['pilot'],
    state: 'D',
    when: settledFor(inState('D'), 0.5),
  }),
];

export const stateD: TestAction = {
  id: 'state-d',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
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
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
