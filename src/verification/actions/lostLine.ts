/** Test action `lost-line`: one line of three is lost, and then the line that feeds the electronics. */
import { unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

/** The line that feeds the electronics, and another. */
export const ELECTRONICS = 'L1';
export const OTHER = 'L2';

export const lostLine: Procedure = {
  id: 'lost-line',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: ({ site }) => site.phases === 3,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'supply', missing: OTHER },
    waitFor(2),
    ...outletVoltages(papers),
    { op: 'supply', missing: null },
    waitFor(2),
    ...unplug,
    ...untilSupplied(papers),
    { op: 'supply', missing: ELECTRONICS },
    waitFor(2),
    pilot,
    ...outletVoltages(papers),
    { op: 'supply', missing: null },
    waitFor(papers.sheet.startUp + 2),
    ...unplug,
    waitFor(1),
  ],
  untold: () => [
    {
      id: 'neutral',
      toldBy: ['open-pen'],
      source: CIRCUIT,
    },
  ],
};
