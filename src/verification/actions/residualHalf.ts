/** Test action `residual-half`: half the rated residual current, which nothing may answer to. */
import type { Seconds } from '../../laws/quantities.ts';
import { NON_TRIPPING_SHARE } from '../../laws/residualLimits.ts';
import { linesOf } from '../../site/site.ts';
import { unplug, untilSupplied } from '../offer.ts';
import { PRACTICE } from '../sources.ts';
import { voltage } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { atOnce, testedDevice } from './residual.ts';

/** Common practice, no source. */
const HELD: Seconds = 2;

export const half = (papers: Papers) => NON_TRIPPING_SHARE * (testedDevice(papers)?.rated ?? 0.03);

export const residualHalf: Procedure = {
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
};
