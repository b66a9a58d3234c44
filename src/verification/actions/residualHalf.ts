/** Test action `residual-half`: half the rated residual current, which nothing may answer to. */
import type { Seconds } from '../../laws/quantities.ts';
import { NON_TRIPPING_SHARE } from '../../laws/residualLimits.ts';
import { linesOf } from '../../site/site.ts';
import { inState, judgeAll, outletSupplied } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT, PRACTICE, published } from '../sources.ts';
import { voltage } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { atOnce, fixedReadings, testedDevice } from './residual.ts';

/** Common practice, no source. */
const HELD: Seconds = 2;

const half = (papers: Papers) => NON_TRIPPING_SHARE * (testedDevice(papers)?.rated ?? 0.03);
const tested = (papers: Papers, o: Observed) => fixedReadings(o, 'sinusoidal', half(papers));

export const residualHalf: TestAction = {
  id: 'residual-half',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'outlet', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) => [
    ...untilSupplied(papers),
    ...linesOf(papers.site).map((line) => atOnce(line, 'sinusoidal', half(papers), { seconds: HELD })),
    ...linesOf(papers.site).map((line) => voltage(`outlet.${line}`, 'outlet.N')),
    ...unplug,
  ],
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
  untold: () => [
    {
      id: 'acts-at-rating',
      toldBy: [
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'residual-again',
      ],
      source: PRACTICE,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
