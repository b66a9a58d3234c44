/** What test action `next-point` ought to show. */
import type { Amps } from '../../laws/quantities.ts';
import { drawnNext, houseOf, limitOf } from '../actions/nextPoint.ts';
import { isDue, isTooLittle, isTooMuch, offersShown } from '../actions/pilotLines.ts';
import { inState, judgeAll, type When } from '../judging.ts';
import { offerRange } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

/** What is left of the limit by the figures as stated, A. */
const leftBeside = (papers: Papers): Amps => limitOf(papers) - houseOf(papers) - drawnNext(papers);

const inB = inState('B');
const idle: When = (setUp, sample) => inB(setUp, sample) && setUp.nextPoint === 0;
const charging: When = (setUp, sample) => inB(setUp, sample) && setUp.nextPoint > 0;

/** The offer that is due while the next point draws that, and how far off it may be, A. */
function dueBeside(papers: Papers): { readonly value: Amps; readonly tolerance: Amps } {
  const { least, greatest } = offerRange(papers, {
    loadLimit: papers.sheet.loadLimit,
    siteLoad: 0,
    nextPoint: drawnNext(papers),
    standIn: { coding: papers.sheet.cable.coding },
  });
  const value = Math.min(greatest, Math.max(least, leftBeside(papers)));
  return { value, tolerance: Math.max(0.5, value - least, greatest - value) };
}

export const nextPoint: TestLines = {
  expectations: (papers) => {
    const values = {
      limit: limitOf(papers),
      house: houseOf(papers),
      next: drawnNext(papers),
      left: leftBeside(papers),
    };
    return [
      {
        id: 'beside-idle',
        should: true,
        values,
        source: pilotStandard('6.3.1.6, Table A.7'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(offersShown(papers, o, idle), isDue),
      },
      {
        id: 'over-service',
        should: false,
        values,
        source: rulesFor(papers).regulation('722.311; IEC 61851-1:2017 Table A.6 sequence 6'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(offersShown(papers, o, charging), (one) => !isTooMuch(one)),
      },
      {
        id: 'keeps-offering',
        should: true,
        values,
        source: pilotStandard('Table A.6 sequence 6, Table A.7'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(offersShown(papers, o, charging), (one) => !isTooLittle(one)),
      },
    ];
  },
  figures: (papers) => [
    {
      id: 'left',
      values: { next: drawnNext(papers) },
      unit: 'A',
      ...dueBeside(papers),
      source: rulesFor(papers).regulation('722.311'),
    },
  ],
  limits: () => [],
  stops: [],
};
