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
  title: 'Insulation at the outlet, contactor open',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['outlet', 'contactor'],
  purpose: 'Measure the outlet and its cable at the voltage that the unit’s sheet allows.',
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
      text: 'reads under 1.0 MΩ from the outlet’s live conductors to PE',
      why: 'Between outlet and open contactor there is nothing but insulation.',
      source: rulesFor(papers).regulation('643.3.3'),
      of: 'unit',
      points: ['insulation'],
      judge: (o) => judgeAll(insulationReadings(o).filter(toEarth), enough(EQUIPMENT_MINIMUM)),
    },
    {
      id: 'outlet-lives',
      should: true,
      text: `reads ${(betweenOutletLives(papers.sheet) / 1e6).toFixed(1)} MΩ or more between line and neutral of the outlet`,
      why:
        papers.sheet.poleBleed === null
          ? 'The contactor’s open poles keep the unit’s electronics out of this measurement.'
          : 'The contactor’s poles are open; what the sheet says bleeds across them is read, twice in series.',
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
      text: 'has sound insulation between its own conductors',
      why: 'The open contactor cuts the circuit off from these leads.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: (papers) => {
    const rule = rulesFor(papers).insulation.equipment;
    return [
      insulationLimit(
        'outlet',
        rule,
        `equipment connected: ${rule.testVoltage} V d.c. or as the sheet allows, at least ${(rule.minimum / 1e6).toFixed(1)} MΩ`,
      ),
    ];
  },
  stops: {
    'outlet-to-earth': 'insulation of the outlet failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'outlet-lives': 'insulation of the outlet failed: do not energise (BS 7671 643.1)',
  },
};

/** Least resistance between two lives of the outlet with both poles open, Ω: a declared bleed lies across each pole. */
const betweenOutletLives = ({ poleBleed }: Papers['sheet']): Ohms =>
  poleBleed === null ? EQUIPMENT_MINIMUM : Math.min(EQUIPMENT_MINIMUM, 2 * poleBleed);
