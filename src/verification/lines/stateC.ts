/** What test action `state-c` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import { linesOf } from '../../site/site.ts';
import { asked, holdsPlug, isHalfInside, offeredReadings, oscillating } from '../actions/pilotLines.ts';
import { threeLines } from '../actions/threeLines.ts';
import {
  atOutlet,
  between,
  inState,
  judgeAll,
  outletSupplied,
  readingsOf,
  samplesWhen,
  showsVoltage,
  type When,
} from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { stating } from '../stated.ts';
import type { Finding, Papers, TestLines } from '../testAction.ts';

function polarity(
  papers: Papers,
  o: Observed,
  isRight: (toEarth: Reading, toNeutral: Reading) => boolean,
): Finding {
  const readings = readingsOf(o, 'voltage', inState('C'));
  const pairs = linesOf(papers.site).flatMap((line) => {
    const toNeutral = between(readings, atOutlet(line), atOutlet('N')).filter(showsVoltage).at(-1);
    const toEarth = between(readings, atOutlet(line), atOutlet('PE')).at(-1);
    return toNeutral && toEarth ? [{ toNeutral, toEarth }] : [];
  });
  return pairs.length < linesOf(papers.site).length
    ? 'not shown'
    : judgeAll(pairs, ({ toEarth, toNeutral }) => isRight(toEarth, toNeutral));
}

const volts = (r: Reading): number => r.value ?? 0;

/** L–PE against L–N: the readings' own uncertainties and a few volts of drop, V. Common practice, no source. */
const ALIKE = 10;

/** The volt drop of a load is no fault of the lines. */
const unloadedC: When = (setUp, sample) => inState('C')(setUp, sample) && setUp.standIn.load === 0;

export const stateC: TestLines = {
  expectations: (papers) => {
    const peaks = stating(papers, 'state-c', pilotStandard('Table A.10'), {
      high: { unit: 'V', ...MEASURED_PILOT.C },
      low: { unit: 'V', ...MEASURED_PILOT.low },
    });
    return [
      {
        id: 'supplies',
        should: true,
        source: pilotStandard('Table A.6 sequence 4'),
        of: 'unit',
        points: ['switching', 'pilot', 'protective-conductor', 'supply-wiring'],
        judge: (o) => outletSupplied(papers, o, asked(papers, o)),
      },
      {
        id: 'pilot',
        should: true,
        ...peaks.line,
        of: 'unit',
        points: ['pilot', 'protective-conductor', 'supply-wiring'],
        judge: (o) =>
          judgeAll(
            offeredReadings(papers, o, inState('C')),
            (r) =>
              oscillating(r) &&
              isHalfInside(r, 'high', peaks.ranges.high) &&
              isHalfInside(r, 'low', peaks.ranges.low),
          ),
      },
      {
        id: 'line-to-earth',
        should: true,
        values: { few: ALIKE },
        source: rulesFor(papers).regulation('643.6'),
        of: 'circuit',
        points: ['protective-conductor', 'supply-wiring'],
        judge: (o) =>
          polarity(papers, o, (toEarth, toNeutral) => Math.abs(volts(toEarth) - volts(toNeutral)) <= ALIKE),
      },
      {
        id: 'crossed',
        should: false,
        source: rulesFor(papers).regulation('643.6'),
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) =>
          judgeAll(
            between(readingsOf(o, 'voltage', inState('C')), 'outlet.N', 'outlet.PE'),
            (r) => !showsVoltage(r),
          ),
      },
      ...threeLines(papers, 'outlet', unloadedC),
      {
        id: 'charging',
        should: true,
        source: SHEET,
        of: 'unit',
        points: ['switching', 'pilot'],
        judge: (o) =>
          judgeAll(samplesWhen(o, asked(papers, o)).slice(-1), ({ seen }) => seen.indicator === 'charging'),
      },
      ...(papers.sheet.outlet === 'socket' ? [holdsPlug('C', pilotStandard('Table A.6, 6.3.2'))] : []),
    ];
  },
  figures: () => [],
  limits: () => [],
  stops: ['line-to-earth', 'crossed'],
};
