/** Test action `pe-outlet`: the protective conductor from unit to outlet, and exposed metal. */
import { opensEarthUnpowered } from '../../unit/design.ts';
import { CIRCUIT, SHEET } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const peOutlet: Procedure = {
  id: 'pe-outlet',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['unit-earth', 'outlet'],
  applies: () => true,
  steps: ({ sheet }) => [
    { op: 'null-leads' },
    continuity('supply.PE', 'outlet.PE'),
    ...(sheet.outlet === 'tethered' && !opensEarthUnpowered(sheet)
      ? ([
          { op: 'flex-cable' },
          continuity('supply.PE', 'outlet.PE'),
          { op: 'flex-cable', on: false },
        ] as const)
      : []),
    continuity('supply.PE', 'case'),
  ],
  untold: ({ sheet }) => [
    ...(opensEarthUnpowered(sheet)
      ? [
          {
            id: 'with-power',
            toldBy: ['state-c', 'loop'],
            source: SHEET,
          },
        ]
      : []),
    {
      id: 'to-met',
      toldBy: ['inspect', 'pe-circuit', 'electrode', 'make-good', 'ze', 'state-c', 'loop'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
