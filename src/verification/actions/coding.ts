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
  title: 'Coding of the tether',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['outlet'],
  purpose: 'Show that the connector tells the vehicle what its cable carries.',
  applies: ({ sheet }) => sheet.outlet === 'tethered',
  steps: () => [{ op: 'measure', quantity: 'coding' }],
  expectations: (papers) => {
    const marked = papers.sheet.cable.coding;
    const nominal = codingResistance(marked);
    return [
      {
        id: 'as-marked',
        should: true,
        text: `reads ${nominal} Ω ± 3 % from its proximity contact to PE`,
        why: `That codes the ${marked} A that its sheet gives for the cable.`,
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
        text: 'codes less than it may offer',
        why: 'The vehicle goes by the lesser of coding and offer; a cable for less would not be the unit’s own.',
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
      text: 'is set to the current that the coding gives',
      why: 'Nothing in a tethered unit reads this resistor: its own limit is fixed inside.',
      source: pilotStandard('Annex B'),
    },
  ],
  figures: ({ sheet }) => [
    {
      id: 'coding',
      text: 'reads about',
      unit: 'Ω',
      value: codingResistance(sheet.cable.coding),
      tolerance: CODING_TOLERANCE * codingResistance(sheet.cable.coding),
      why: `The resistor for ${sheet.cable.coding} A.`,
      source: pilotStandard('Table B.2'),
    },
  ],
  limits: () => [],
  stops: {},
};
