/** Test action `insulation-outlet`: outlet and its cable, contactor open. */
import { linesOf, livesOf } from '../../site/site.ts';
import { CIRCUIT } from '../sources.ts';
import { insulation } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { equipmentTestVoltage } from './insulation.ts';

export const insulationOutlet: Procedure = {
  id: 'insulation-outlet',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['outlet', 'contactor'],
  applies: () => true,
  steps: ({ site, sheet }) => {
    const volts = equipmentTestVoltage(sheet.insulationTestVoltageMax);
    const lives = livesOf(site).map((x) => `outlet.${x}`);
    return [
      ...linesOf(site).map((x) => insulation(`outlet.${x}`, 'outlet.N', volts)),
      insulation(lives, 'outlet.PE', volts),
      ...(sheet.outlet === 'tethered'
        ? ([
            { op: 'flex-cable' },
            insulation(lives, 'outlet.PE', volts),
            { op: 'flex-cable', on: false },
          ] as const)
        : []),
    ];
  },
  untold: () => [
    {
      id: 'circuit-insulated',
      toldBy: ['insulation-circuit'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
