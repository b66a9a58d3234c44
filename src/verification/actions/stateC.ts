/** Test action `state-c`: a vehicle that asks for supply. */
import type { Reading } from '../../bench/reading.ts';
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import { linesOf } from '../../site/site.ts';
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
import { unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET, wiringRules } from '../sources.ts';
import { outletVoltages, pilot } from '../steps.ts';
import type { Finding, Papers, TestAction } from '../testAction.ts';
import { asked, holdsPlug, isHalfInside, offeredReadings, oscillating } from './pilotLines.ts';
import { threeLineSteps, threeLines } from './threeLines.ts';

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

export const stateC: TestAction = {
  id: 'state-c',
  title: 'Vehicle asks (C)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['circuit', 'contactor', 'pilot', 'coding'],
  purpose: 'Show that supply comes in time, on every line, with the right polarity.',
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    ...outletVoltages(papers),
    ...threeLineSteps(papers, 'outlet'),
    pilot,
    ...unplug,
  ],
  expectations: (papers) => [
    {
      id: 'supplies',
      should: true,
      text: 'supplies every line within 3 s of being asked',
      why: 'Permission is given and any delay is over.',
      source: pilotStandard('Table A.6 sequence 4'),
      of: 'unit',
      points: ['switching', 'pilot', 'protective-conductor', 'supply-wiring'],
      judge: (o) => outletSupplied(papers, o, asked(papers, o)),
    },
    {
      id: 'pilot',
      should: true,
      text: 'holds the halves of the pilot at 5.47 to 6.53 V and −12.6 to −11.4 V',
      why: 'The stand-in’s resistors against the unit’s 1 kΩ give the high half; its diode keeps them off the low one.',
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot', 'protective-conductor', 'supply-wiring'],
      judge: (o) =>
        judgeAll(
          offeredReadings(papers, o, inState('C')),
          (r) =>
            oscillating(r) &&
            isHalfInside(r, 'high', MEASURED_PILOT.C) &&
            isHalfInside(r, 'low', MEASURED_PILOT.low),
        ),
    },
    {
      id: 'line-to-earth',
      should: true,
      text: 'gives the same voltage from line to PE as from line to neutral',
      why: 'Neutral and PE are at one potential, near enough. Much less to PE means that PE is not there.',
      source: wiringRules('643.6'),
      of: 'circuit',
      points: ['protective-conductor', 'supply-wiring'],
      judge: (o) =>
        polarity(papers, o, (toEarth, toNeutral) => Math.abs(volts(toEarth) - volts(toNeutral)) <= ALIKE),
    },
    {
      id: 'crossed',
      should: false,
      text: 'has full voltage between neutral and PE',
      why: 'That would be line and neutral crossed.',
      source: wiringRules('643.6'),
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
      text: 'says that it is charging',
      why: 'The unit’s sheet says so for its state while supplying.',
      source: SHEET,
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) =>
        judgeAll(samplesWhen(o, asked(papers, o)).slice(-1), ({ seen }) => seen.indicator === 'charging'),
    },
    ...(papers.sheet.outlet === 'socket' ? [holdsPlug('C', pilotStandard('Table A.6, 6.3.2'))] : []),
  ],
  untold: () => [
    {
      id: 'trips',
      toldBy: [
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'residual-again',
      ],
      text: 'trips in time on a fault to earth',
      why: 'No test current has flowed yet.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: {
    'line-to-earth': 'the protective conductor does not hold its potential: isolate',
    crossed: 'line and neutral are crossed: isolate',
  },
};
