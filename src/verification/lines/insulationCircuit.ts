/** What test action `insulation-circuit` ought to show. */
import { minimumInsulation } from '../../laws/insulationLimits.ts';
import { livesOf } from '../../site/site.ts';
import { circuitReadings, enough, insulationLimit, toEarth } from '../actions/insulation.ts';
import { between, judgeAll, off } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import type { TestLines } from '../testAction.ts';

const TABLE_64 = minimumInsulation(230);

/** The cable alone: with the unit connected its electronics are measured too. */
const alone = (o: Observed) =>
  circuitReadings(o, (setUp, sample) => off(setUp, sample) && !setUp.unitConnected);

export const insulationCircuit: TestLines = {
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
  figures: () => [],
  limits: (papers) => [insulationLimit('supply', rulesFor(papers).insulation.circuit)],
  stops: ['lives-to-earth', 'between-lives'],
};
