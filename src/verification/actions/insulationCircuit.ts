/** Test action `insulation-circuit`: the cable alone, unit taken off. */
import { pairsOf } from '../../site/part.ts';
import { livesOf } from '../../site/site.ts';
import { rulesFor } from '../rules/rules.ts';
import { insulation } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const insulationCircuit: Procedure = {
  id: 'insulation-circuit',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit'],
  applies: () => true,
  steps: ({ site, sheet }) => [
    { op: 'disconnect', what: 'unit' },
    ...(sheet.surgeArrester ? [{ op: 'disconnect', what: 'arrester' } as const] : []),
    ...pairsOf([...livesOf(site), 'PE']).map(([x, y]) => insulation(`supply.${x}`, `supply.${y}`, 500)),
    ...(sheet.surgeArrester ? [{ op: 'reconnect', what: 'arrester' } as const] : []),
    { op: 'reconnect', what: 'unit' },
  ],
  untold: (papers) => [
    {
      id: 'inside-unit',
      toldBy: ['insulation-unit'],
      source: rulesFor(papers).regulation('643.3.2'),
    },
  ],
};
