/** Test action `residual-ramp`: a.c. residual current, rising. */
import { linesOf } from '../../site/site.ts';
import { published } from '../sources.ts';
import { outletVoltages, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { oneAfterAnother, rising, testedDevice } from './residual.ts';

export const residualRamp: Procedure = {
  id: 'residual-ramp',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'outlet', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) =>
    oneAfterAnother(
      papers,
      'residual',
      linesOf(papers.site).map((line, i) => [
        rising(line, 'sinusoidal'),
        ...(i === 0 ? [waitFor(10), ...outletVoltages(papers)] : []),
      ]),
    ),
  untold: () => [
    {
      id: 'direct',
      toldBy: ['dc-ramp', 'dc-step'],
      source: published('IEC 62955:2018'),
    },
  ],
};
