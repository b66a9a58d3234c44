/** Test action `coding`: the resistor in a tether's connector, by which the vehicle knows the cable. */
import { pilotStandard } from '../sources.ts';
import type { Procedure } from '../testAction.ts';

export const coding: Procedure = {
  id: 'coding',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['outlet'],
  applies: ({ sheet }) => sheet.outlet === 'tethered',
  steps: () => [{ op: 'measure', quantity: 'coding' }],
  untold: () => [
    {
      id: 'setting',
      toldBy: ['papers', 'inspect', 'state-b', 'coding-sizes', 'limit'],
      source: pilotStandard('Annex B'),
    },
  ],
};
