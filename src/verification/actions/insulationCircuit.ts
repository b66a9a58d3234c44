/** Test action `insulation-circuit`: the cable alone, unit taken off. */
import { minimumInsulation } from '../../laws/insulationLimits.ts';
import { pairsOf } from '../../site/part.ts';
import { livesOf } from '../../site/site.ts';
import { between, judgeAll, off } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';

import { insulation } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { circuitReadings, enough, insulationLimit, toEarth } from './insulation.ts';

const TABLE_64 = minimumInsulation(230);

/** The cable alone: with the unit connected its electronics are measured too. */
const alone = (o: Observed) =>
  circuitReadings(o, (setUp, sample) => off(setUp, sample) && !setUp.unitConnected);

export const insulationCircuit: TestAction = {
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
  expectations: (papers) => [
    {
      id: 'lives-to-earth',
      should: false,
      source: rulesFor(papers).regulation('643.3, Table 64'),
      of: 'circuit',
      points: ['insulation', 'supply-wiring'],
      judge: (o) => {
        const readings = alone(o).filter(toEarth);
        if (readings.some((r) => !enough(TABLE_64.minimum)(r))) return 'broken';
        const all = livesOf(papers.site).every(
          (x) => between(readings, `supply.${x}`, 'supply.PE').length > 0,
        );
        return all ? 'met' : 'not shown';
      },
    },
    {
      id: 'between-lives',
      should: true,
      source: rulesFor(papers).regulation('643.3, Table 64'),
      of: 'circuit',
      points: ['insulation'],
      judge: (o) =>
        judgeAll(
          alone(o).filter((r) => !toEarth(r)),
          enough(TABLE_64.minimum),
        ),
    },
  ],
  untold: (papers) => [
    {
      id: 'inside-unit',
      toldBy: ['insulation-unit'],
      source: rulesFor(papers).regulation('643.3.2'),
    },
  ],
  figures: () => [],
  limits: (papers) => [insulationLimit('supply', rulesFor(papers).insulation.circuit)],
  stops: ['lives-to-earth', 'between-lives'],
};
