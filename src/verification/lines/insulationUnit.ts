/** What test action `insulation-unit` ought to show. */
import { livesOf } from '../../site/site.ts';
import { circuitReadings, enough, insulationLimit, toEarth } from '../actions/insulation.ts';
import { judgeAll, off } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Papers, TestLines } from '../testAction.ts';

/** Every live conductor of the supply terminals joined, to PE, with the unit connected. */
const joined = ({ site }: Papers, o: Observed) => {
  const lives = livesOf(site).map((x) => `supply.${x}`);
  return circuitReadings(o, (setUp, sample) => off(setUp, sample) && setUp.unitConnected).filter(
    (r) =>
      toEarth(r) &&
      lives.every((terminal) => r.between?.some((end) => end.split(' + ').includes(terminal)) === true),
  );
};

export const insulationUnit: TestLines = {
  expectations: (papers) => {
    const { minimum, source } = rulesFor(papers).insulation.equipment;
    return [
      {
        id: 'unit-to-earth',
        should: false,
        values: { minimum },
        source,
        of: 'unit',
        points: ['insulation'],
        judge: (o) => judgeAll(joined(papers, o), enough(minimum)),
      },
    ];
  },
  figures: () => [],
  limits: (papers) => {
    const rule = rulesFor(papers).insulation.equipment;
    const limit = insulationLimit('supply', rule);
    return [
      {
        ...limit,
        // A lower voltage is no test by the table.
        applies: (r, o) =>
          limit.applies(r, o) &&
          r.quantity === 'insulation' &&
          toEarth(r) &&
          (r.volts ?? 0) >= rule.testVoltage,
      },
    ];
  },
  stops: ['unit-to-earth'],
};
