/** What test action `insulation-outlet` ought to show. */
import { EQUIPMENT_MINIMUM } from '../../laws/insulationLimits.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { enough, insulationLimit, insulationReadings, toEarth } from '../actions/insulation.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Papers, TestLines } from '../testAction.ts';

/** Least resistance between two lives of the outlet with both poles open, Ω: a declared bleed lies across each pole. */
const betweenOutletLives = ({ poleBleed }: Papers['sheet']): Ohms =>
  poleBleed === null ? EQUIPMENT_MINIMUM : Math.min(EQUIPMENT_MINIMUM, 2 * poleBleed);

export const insulationOutlet: TestLines = {
  expectations: (papers) => [
    {
      id: 'outlet-to-earth',
      should: false,
      source: rulesFor(papers).regulation('643.3.3'),
      of: 'unit',
      points: ['insulation'],
      judge: (o) => judgeAll(insulationReadings(o).filter(toEarth), enough(EQUIPMENT_MINIMUM)),
    },
    {
      id: 'outlet-lives',
      should: true,
      values: { least: betweenOutletLives(papers.sheet), bleeds: papers.sheet.poleBleed !== null },
      source: rulesFor(papers).regulation('643.3.3'),
      of: 'unit',
      points: ['insulation', 'switching'],
      judge: (o) =>
        judgeAll(
          insulationReadings(o).filter((r) => !toEarth(r)),
          papers.sheet.poleBleed === null
            ? enough(EQUIPMENT_MINIMUM)
            : (r) => isInside(r, { least: betweenOutletLives(papers.sheet) }),
        ),
    },
  ],
  figures: () => [],
  limits: (papers) => [insulationLimit('outlet', rulesFor(papers).insulation.equipment)],
  stops: ['outlet-to-earth', 'outlet-lives'],
};
