/** What test action `residual-half` ought to show. */

import { fixedReadings, testedDevice } from '../actions/residual.ts';
import { half } from '../actions/residualHalf.ts';
import { inState, judgeAll, outletSupplied } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { CIRCUIT, published } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

const tested = (papers: Papers, o: Observed) => fixedReadings(o, 'sinusoidal', half(papers));

export const residualHalf: TestLines = {
  expectations: (papers) => [
    {
      id: 'trips',
      should: false,
      values: { amps: half(papers) },
      source: published('IEC 61008-1', 'hold-by-practice'),
      of: testedDevice(papers)?.of ?? 'circuit',
      points: ['residual-direct', 'insulation'],
      judge: (o) => judgeAll(tested(papers, o), (r) => r.qualifier === '>'),
    },
    {
      id: 'stays-live',
      should: true,
      source: CIRCUIT,
      of: 'circuit',
      points: ['residual-direct', 'insulation', 'switching'],
      judge: (o) => {
        const first = o.samples.findIndex(({ readings }) =>
          readings.some((r) => tested(papers, o).some((one) => one === r)),
        );
        return first < 0
          ? 'not shown'
          : outletSupplied(
              papers,
              o,
              (setUp, sample) => inState('C')(setUp, sample) && o.samples.indexOf(sample) > first,
            );
      },
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
