/** With power: what the unit does with no vehicle, a vehicle connected, a vehicle that asks, and one that stops asking. */
import type { Reading } from '../../bench/reading.ts';
import { DUTY_UNCERTAINTY } from '../../bench/reading.ts';
import { DUTY_TOLERANCE, dutyForCurrent, PILOT_FREQUENCY } from '../../laws/pilotDuty.ts';
import { MEASURED_PILOT } from '../../laws/pilotLevels.ts';
import type { Duty } from '../../laws/quantities.ts';
import { GREATEST_OFF_AFTER_NOT_READY, GREATEST_ON_AFTER_READY } from '../../laws/timing.ts';
import { linesOf } from '../../site/site.ts';
import {
  atOutlet,
  between,
  inState,
  isInside,
  isNumberInside,
  judgeAll,
  outletDead,
  outletSupplied,
  readingsOf,
  samplesWhen,
  settledFor,
  showsVoltage,
  unplugged,
  type When,
} from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { mayWait, offerDue, unplug, untilOffered, untilSupplied } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET, wiringRules } from '../sources.ts';
import { outletVoltages, pilot, voltage, waitFor } from '../steps.ts';
import type { Expectation, Finding, Papers, TestAction } from '../testAction.ts';

const pilotReadings = (o: Observed, when: When): readonly Reading[] => readingsOf(o, 'pilot', when);

/** One half of the pilot against its measured range (IEC 61851-1:2017 Table A.10). */
const halfInside = (
  readings: readonly Reading[],
  half: 'high' | 'low',
  range: { least: number; greatest: number },
) => judgeAll(readings, (r) => isNumberInside(r[half] ?? 0, r.uncertainty ?? 0, range));

const oscillating = (r: Reading): boolean => r.frequency !== null && r.frequency !== undefined;

/** Pilot samples in a state at which the sheet no longer allows the unit to keep the vehicle waiting. */
const offeredSamples = (papers: Papers, o: Observed, when: When): readonly Sample[] =>
  samplesWhen(o, settledFor(when, 1)).filter(
    (sample) => sample.readings.some((r) => r.quantity === 'pilot') && !mayWait(papers, o, sample),
  );

const offeredReadings = (papers: Papers, o: Observed, when: When): readonly Reading[] =>
  offeredSamples(papers, o, when).flatMap(({ readings }) => readings);

const dutyOf = (r: Reading): Duty => (oscillating(r) ? (r.duty ?? 0) : 0);

const dutyMargin = DUTY_TOLERANCE + DUTY_UNCERTAINTY;

const highExpectation = (state: 'B' | 'C', text: string): Expectation => {
  const range = MEASURED_PILOT[state];
  return {
    id: 'high',
    should: true,
    text: `${text} ${range.least.toFixed(2)} to ${range.greatest.toFixed(2)} V`,
    why: 'The stand-in’s resistors against the unit’s 1 kΩ give that, at the corners of their tolerances.',
    source: pilotStandard('Table A.10'),
    of: 'unit',
    points: ['pilot'],
    judge: (o) => halfInside(pilotReadings(o, settledFor(inState(state), 0.5)), 'high', range),
  };
};

const lowExpectation = (papers: Papers, state: 'B' | 'C'): Expectation => ({
  id: 'low',
  should: true,
  text: 'keeps the low half of the pilot at −12.6 to −11.4 V',
  why: 'The diode keeps the vehicle’s resistors off the low half; the unit looks for that.',
  source: pilotStandard('Table A.10'),
  of: 'unit',
  points: ['pilot'],
  judge: (o) =>
    halfInside(offeredReadings(papers, o, inState(state)).filter(oscillating), 'low', MEASURED_PILOT.low),
});

const holdsPlug = (state: 'B' | 'C', source: Expectation['source']): Expectation => ({
  id: 'plug-held',
  should: true,
  text: 'holds the plug',
  why:
    state === 'C'
      ? 'A plug may not come out live: it is held before the supply closes.'
      : 'The unit’s sheet says that it holds the plug as soon as a vehicle is connected.',
  source,
  of: 'unit',
  points: ['proximity-retention'],
  judge: (o) => judgeAll(samplesWhen(o, settledFor(inState(state), 3)), ({ seen }) => seen.plug === 'held'),
});

export const stateA: TestAction = {
  id: 'state-a',
  title: 'No vehicle (A)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Show that nothing but the pilot is at the outlet while nothing is connected.',
  applies: () => true,
  steps: () => [waitFor(1), { op: 'prove-dead', at: 'outlet' }, pilot],
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      text: 'puts voltage on the outlet',
      why: 'Supply is allowed only while a vehicle asks for it.',
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => outletDead(papers, o, unplugged),
    },
    {
      id: 'high',
      should: true,
      text: 'holds the pilot at 11.4 to 12.6 V',
      why: 'Nothing loads its 1 kΩ.',
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => halfInside(pilotReadings(o, settledFor(unplugged, 0.5)), 'high', MEASURED_PILOT.A),
    },
    {
      id: 'ready',
      should: true,
      text: 'says that it is ready',
      why: 'Its start-up is over and no fault is latched.',
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching', 'residual-direct'],
      judge: (o) =>
        judgeAll(samplesWhen(o, settledFor(unplugged, 1)), ({ seen }) => seen.indicator === 'ready'),
    },
  ],
  untold: () => [
    {
      id: 'neutral-open',
      text: 'has its neutral pole open',
      why: 'A closed neutral pole shows no voltage: only a dead test across the pole tells.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { voltage: 'the outlet is live with nothing connected: isolate and keep people away' },
};

export const stateB: TestAction = {
  id: 'state-b',
  title: 'Vehicle connected (B)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Show that the unit finds the vehicle, offers the right current and supplies nothing yet.',
  applies: () => true,
  steps: (papers) => [...untilOffered(papers), pilot, { op: 'prove-dead', at: 'outlet' }, ...unplug],
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      text: 'puts voltage on the outlet',
      why: 'The vehicle is connected but has not asked.',
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, inState('B')),
    },
    highExpectation('B', 'takes the high half of the pilot to'),
    lowExpectation(papers, 'B'),
    {
      id: 'offers',
      should: true,
      text: 'offers a current by an oscillating pilot',
      why: 'Once permission is given and any delay is over, nothing keeps it from offering.',
      source: pilotStandard('A.3, Table A.6 sequence 3.1'),
      of: 'unit',
      points: ['pilot', 'protective-conductor', 'proximity-retention'],
      judge: (o) => judgeAll(offeredReadings(papers, o, inState('B')), oscillating),
    },
    {
      id: 'frequency',
      should: true,
      text: 'oscillates at 980 to 1020 Hz',
      why: 'A vehicle takes another frequency for a fault.',
      source: pilotStandard('Table A.2'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(offeredReadings(papers, o, inState('B')).filter(oscillating), (r) =>
          isNumberInside(r.frequency ?? 0, 0.5, PILOT_FREQUENCY.range),
        ),
    },
    {
      id: 'too-much',
      should: false,
      text: 'offers more than the least of unit, cable and setting',
      why: 'The vehicle would take it, and the weakest part would carry it.',
      source: pilotStandard('6.3.1.6, Table A.7'),
      of: 'unit',
      points: ['pilot', 'proximity-retention'],
      judge: (o) =>
        judgeAll(
          offeredReadings(papers, o, inState('B')).filter(oscillating),
          (r) => dutyOf(r) <= dutyForCurrent(offerDue(papers)) + dutyMargin,
        ),
    },
    ...(papers.sheet.outlet === 'socket' && papers.sheet.holdInB ? [holdsPlug('B', SHEET)] : []),
  ],
  untold: () => [
    {
      id: 'diode',
      text: 'refuses a vehicle whose diode is shorted',
      why: 'The stand-in’s diode is sound in this set-up.',
      source: pilotStandard('Table A.4 note c'),
    },
  ],
  figures: (papers) => [
    {
      id: 'offer',
      text: 'offers, per line',
      unit: 'A',
      value: offerDue(papers),
      tolerance: 0.5,
      why: 'The least of unit, cable and setting; the duty says it for each line.',
      source: pilotStandard('6.3.1.6, Tables A.7 and A.8'),
    },
  ],
  limits: () => [],
  stops: { voltage: 'the outlet is live with no request: isolate and keep people away' },
};

/** In C and long enough for supply to be due. */
const asked = (papers: Papers, o: Observed): When => {
  const settled = settledFor(inState('C'), GREATEST_ON_AFTER_READY);
  return (setUp, sample) => settled(setUp, sample) && !mayWait(papers, o, sample);
};

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

export const stateC: TestAction = {
  id: 'state-c',
  title: 'Vehicle asks (C)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Show that supply comes in time, on every line, with the right polarity.',
  applies: () => true,
  steps: (papers) => [...untilSupplied(papers), ...outletVoltages(papers), pilot, ...unplug],
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
    highExpectation('C', 'takes the high half of the pilot to'),
    lowExpectation(papers, 'C'),
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

export const cToB: TestAction = {
  id: 'c-to-b',
  title: 'Vehicle stops asking (C to B)',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Time how soon the outlet is dead, and show that supply returns when asked again.',
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'measure', quantity: 'opening-time', of: 'C-to-B' },
    waitFor(1),
    { op: 'prove-dead', at: 'outlet' },
    pilot,
    { op: 'vehicle', state: 'C' },
    waitFor(3),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    ...unplug,
  ],
  expectations: (papers) => [
    {
      id: 'off-in-time',
      should: true,
      text: 'is dead on every pole within 100 ms',
      why: 'A vehicle that takes its request back may be unplugged at once.',
      source: pilotStandard('Table A.6 sequence 8.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) =>
        judgeAll(
          readingsOf(o, 'opening-time', () => true).filter((r) => r.qualifier !== 'unable'),
          (r) => isInside(r, { greatest: GREATEST_OFF_AFTER_NOT_READY }),
        ),
    },
    {
      id: 'voltage',
      should: false,
      text: 'leaves voltage on the outlet in B',
      why: 'The connector would come out live.',
      source: pilotStandard('Table A.6 sequence 8.1'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) => outletDead(papers, o, settledFor(inState('B'), 0.5)),
    },
    {
      id: 'same-offer',
      should: true,
      text: 'goes on offering the same current',
      why: 'The session is not over: the vehicle may ask again.',
      source: pilotStandard('A.3'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(
          offeredReadings(papers, o, inState('B')),
          (r) => Math.abs(dutyOf(r) - dutyForCurrent(offerDue(papers))) <= dutyMargin,
        ),
    },
    {
      id: 'supplies-again',
      should: true,
      text: 'supplies again when asked again, with no new permission',
      why: 'Going back to B does not end the permission.',
      source: pilotStandard('A.3, Table A.6 sequence 4'),
      of: 'unit',
      points: ['switching', 'pilot', 'protective-conductor'],
      judge: (o) => outletSupplied(papers, o, asked(papers, o)),
    },
  ],
  untold: () => [
    {
      id: 'unplugged',
      text: 'switches off when the connector is pulled',
      why: 'It stayed plugged in throughout.',
      source: pilotStandard('Table A.6 sequence 2.2'),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'opening',
      text: 'time from the end of the request to a dead outlet',
      quantity: 'opening-time',
      unit: 's',
      limit: GREATEST_OFF_AFTER_NOT_READY,
      kind: 'most',
      sum: 'C2 to B2: supply off within 100 ms',
      source: pilotStandard('Table A.6 sequence 8.1'),
      points: ['switching', 'pilot'],
      applies: (r) => r.quantity === 'opening-time' && r.of === 'C-to-B',
    },
  ],
  stops: { voltage: 'the outlet stays live after the request ended: isolate and keep people away' },
};
