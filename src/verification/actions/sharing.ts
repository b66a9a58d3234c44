/** Test action `sharing`: permission, default hours and random delay, and what takes them away. */
import { permission, unplug } from '../offer.ts';
import { published } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const sharing: Procedure = {
  id: 'sharing',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  applies: ({ sheet }) => sheet.permission !== 'open' || sheet.schedule !== null || sheet.startDelay > 0,
  steps: (papers) => [
    { op: 'vehicle', plugged: true, state: 'B' },
    waitFor(2),
    pilot,
    ...(papers.sheet.permission === 'open'
      ? []
      : [
          { op: 'vehicle', state: 'C' } as const,
          waitFor(3),
          ...outletVoltages(papers),
          { op: 'vehicle', state: 'B' } as const,
          waitFor(1),
        ]),
    ...permission(papers),
    waitFor(4),
    pilot,
    ...unplug,
  ],
  untold: () => [
    {
      id: 'hours-kept',
      toldBy: [],
      source: published('SI 2021/1467 regs 10 and 11'),
    },
  ],
};
