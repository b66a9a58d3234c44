/** Test action `coding`: the resistor in a tether's connector, by which the vehicle knows the cable. */
import type { Reading } from '../../bench/reading.ts';
import { CODING_TOLERANCE, codedCurrent, codingResistance, readCoding } from '../../laws/proximity.ts';
import { isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { pilotStandard } from '../sources.ts';
import type { Papers, TestAction } from '../testAction.ts';

const codingReadings = (o: Observed): readonly Reading[] =>
  readingsOf(o, 'coding', off).filter(({ qualifier }) => qualifier !== 'unable');

const permits = ({ site, sheet }: Papers, r: Reading): boolean => {
  const coding = readCoding(r.value ?? Infinity);
  return (
    typeof coding === 'number' &&
    codedCurrent(coding, site.phases) >= Math.min(sheet.ratedCurrent, sheet.setCurrent)
  );
};

export const coding: TestAction = {
  id: 'coding',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['outlet'],
  applies: ({ sheet }) => sheet.outlet === 'tethered',
  steps: () => [{ op: 'measure', quantity: 'coding' }],
  expectations: (papers) => {
    const marked = papers.sheet.cable.coding;
    const nominal = codingResistance(marked);
    return [
      {
        id: 'as-marked',
        should: true,
        values: { resistance: nominal, coding: marked },
        source: pilotStandard('Table B.2'),
        of: 'unit',
        points: ['proximity-retention'],
        judge: (o) =>
          judgeAll(codingReadings(o), (r) =>
            isInside(r, {
              least: nominal * (1 - CODING_TOLERANCE),
              greatest: nominal * (1 + CODING_TOLERANCE),
            }),
          ),
      },
      {
        id: 'less-than-offered',
        should: false,
        source: pilotStandard('6.3.1.6, Annex B'),
        of: 'unit',
        points: ['proximity-retention'],
        judge: (o) => judgeAll(codingReadings(o), (r) => permits(papers, r)),
      },
    ];
  },
  untold: () => [
    {
      id: 'setting',
      toldBy: ['papers', 'inspect', 'state-b', 'coding-sizes', 'limit'],
      source: pilotStandard('Annex B'),
    },
  ],
  figures: ({ sheet }) => [
    {
      id: 'coding',
      values: { coding: sheet.cable.coding },
      unit: 'Ω',
      value: codingResistance(sheet.cable.coding),
      tolerance: CODING_TOLERANCE * codingResistance(sheet.cable.coding),
      source: pilotStandard('Table B.2'),
    },
  ],
  limits: () => [],
  stops: [],
};
