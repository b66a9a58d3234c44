/** What test action `coding` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import { CODING_TOLERANCE, codedCurrent, codingResistance, readCoding } from '../../laws/proximity.ts';
import { isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { pilotStandard } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

const codingReadings = (o: Observed): readonly Reading[] =>
  readingsOf(o, 'coding', off).filter(({ qualifier }) => qualifier !== 'unable');

const permits = ({ site, sheet }: Papers, r: Reading): boolean => {
  const coding = readCoding(r.value ?? Infinity);
  return (
    typeof coding === 'number' &&
    codedCurrent(coding, site.phases) >= Math.min(sheet.ratedCurrent, sheet.setCurrent)
  );
};

export const coding: TestLines = {
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
