/** Test action `insulation-unit`: the unit connected, all its live conductors joined, against PE. */
import { livesOf } from '../../site/site.ts';
import { judgeAll, off } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import { insulation } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { circuitReadings, enough, equipmentTestVoltage, toEarth } from './insulation.ts';

/** Every live conductor of the supply terminals joined, to PE, with the unit connected. */
const joined = ({ site }: Papers, o: Observed) => {
  const lives = livesOf(site).map((x) => `supply.${x}`);
  return circuitReadings(o, (setUp, sample) => off(setUp, sample) && setUp.unitConnected).filter(
    (r) =>
      toEarth(r) &&
      lives.every((terminal) => r.between?.some((end) => end.split(' + ').includes(terminal)) === true),
  );
};

export const insulationUnit: TestAction = {
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
  figures: () => [],
  limits: (papers) => {
    const { testVoltage, minimum, source } = rulesFor(papers).insulation.equipment;
    return [
      {
        id: 'insulation',
        values: { testVoltage, minimum },
        quantity: 'insulation',
        unit: 'Ω',
        limit: minimum,
        kind: 'least',
        source,
        points: ['insulation'],
        // A lower voltage is no test by the table.
        applies: (r) =>
          r.quantity === 'insulation' &&
          toEarth(r) &&
          r.between?.[0].startsWith('supply.') === true &&
          (r.volts ?? 0) >= testVoltage,
      },
    ];
  },
  stops: ['unit-to-earth'],
};
