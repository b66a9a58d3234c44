import type { CableCoding } from '../../laws/proximity.ts';
import { CABLE_CODINGS } from '../../laws/proximity.ts';
import { permission, unplug } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';

const plugIn = (papers: Papers, coding: CableCoding | null) =>
  [
    { op: 'vehicle', coding, plugged: true, state: 'B' },
    waitFor(2),
    ...permission(papers),
    waitFor(2),
    pilot,
  ] as const;

export const codingSizes: Procedure = {
  id: 'coding-sizes',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...CABLE_CODINGS.flatMap((coding) => [...plugIn(papers, coding), ...unplug]),
    ...plugIn(papers, null),
    { op: 'vehicle', state: 'C' },
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    { op: 'vehicle', coding: papers.sheet.cable.coding },
  ],
  untold: () => [
    {
      id: 'cable-itself',
      toldBy: ['inspect', 'coding'],
      source: pilotStandard('Annex B'),
    },
  ],
};
