/** Test action `insulation-unit`: the unit connected, all its live conductors joined, against PE. */
import { livesOf } from '../../site/site.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import { insulation } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { equipmentTestVoltage } from './insulation.ts';

export const insulationUnit: Procedure = {
  id: 'insulation-unit',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit', 'arrester', 'filter'],
  applies: () => true,
  steps: ({ site, sheet }) => [
    insulation(
      livesOf(site).map((x) => `supply.${x}`),
      'supply.PE',
      equipmentTestVoltage(sheet.insulationTestVoltageMax),
    ),
  ],
  untold: (papers) => [
    {
      id: 'between-lives',
      toldBy: ['insulation-outlet'],
      source: rulesFor(papers).regulation('643.3.3'),
    },
    {
      id: 'outlet-side',
      toldBy: ['insulation-outlet'],
      source: CIRCUIT,
    },
  ],
};
