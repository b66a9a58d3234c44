/** Test action `insulation-outlet`: outlet and its cable, contactor open. */
import { EQUIPMENT_MINIMUM } from '../../laws/insulationLimits.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { linesOf, livesOf } from '../../site/site.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import { insulation } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { enough, equipmentTestVoltage, insulationLimit, insulationReadings, toEarth } from './insulation.ts';

export const insulationOutlet: TestAction = {
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
  untold: () => [
    {
      id: 'circuit-insulated',
      toldBy: ['insulation-circuit'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: (papers) => [insulationLimit('outlet', rulesFor(papers).insulation.equipment)],
  stops: ['outlet-to-earth', 'outlet-lives'],
};

/** Least resistance between two lives of the outlet with both poles open, Ω: a declared bleed lies across each pole. */
const betweenOutletLives = ({ poleBleed }: Papers['sheet']): Ohms =>
  poleBleed === null ? EQUIPMENT_MINIMUM : Math.min(EQUIPMENT_MINIMUM, 2 * poleBleed);
