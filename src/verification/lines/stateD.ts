import { GREATEST_VENTILATION } from '../../laws/timing.ts';
import { peakOf } from '../actions/pilotLines.ts';
import { inState, outletDead, outletSupplied, settledFor } from '../judging.ts';
import { mayWait } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** The peak in D: its lines with ventilation and without it are one the other way round. */
const peak = (papers: Papers, id: string, should: boolean): Expectation =>
  peakOf(papers, 'state-d', {
    id,
    should,
    source: pilotStandard('Tables A.2 and A.3', 'by-annex-a-circuit'),
    of: 'unit',
    points: ['pilot'],
    state: 'D',
    when: settledFor(inState('D'), 0.5),
  });

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
  peak(papers, 'fault', false),
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
  peak(papers, 'high', true),
];

export const stateD: TestLines = {
  expectations: (papers) => (papers.sheet.ventilation ? ventilated(papers) : unventilated(papers)),
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
