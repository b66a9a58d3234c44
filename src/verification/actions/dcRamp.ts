/** Test action `dc-ramp`: smooth d.c., rising, both polarities. */
import { published } from '../sources.ts';
import type { Procedure } from '../testAction.ts';
import { oneAfterAnother, rising } from './residual.ts';

export const dcRamp: Procedure = {
  id: 'dc-ramp',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['direct-detector', 'contactor'],
  applies: ({ sheet }) => sheet.residual.direct !== null,
  steps: (papers) =>
    oneAfterAnother(papers, 'direct', [
      [rising('L1', 'smooth-dc-positive')],
      [rising('L1', 'smooth-dc-negative')],
    ]),
  untold: () => [
    {
      id: 'step-time',
      toldBy: ['dc-step'],
      source: published('IEC 62955:2018 Table 2'),
    },
  ],
};
