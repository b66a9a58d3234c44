/** Test action `supply-return`: the supply goes for 10 s and comes back with a vehicle asking. */
import { permission, unplug, untilSupplied } from '../offer.ts';
import { SHEET } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const supplyReturn: Procedure = {
  id: 'supply-return',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: ({ sheet }) => sheet.permission !== 'held',
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'reset', what: 'supply' },
    ...outletVoltages(papers).slice(0, 2),
    waitFor(papers.sheet.startUp + 1),
    ...permission(papers),
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    waitFor(1),
    pilot,
  ],
  untold: () => [
    {
      id: 'brown-out',
      toldBy: [],
      source: SHEET,
    },
  ],
};
