/** Test action `diode-in-c`: the vehicle's diode shorts while it is supplied, and it asks again. */
import { PILOT_SOURCE, parallel, pilotLow, VEHICLE } from '../../laws/pilotLevels.ts';
import { GREATEST_OFF_AFTER_FAULT } from '../../laws/timing.ts';
import { isNumberInside, judgeAll, outletDead, readingsOf, type When } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';

/** The low half with the diode shorted in C, for a nominal source, V (−5.62). */
const SHORTED_LOW = pilotLow({
  open: PILOT_SOURCE.open,
  sourceResistance: PILOT_SOURCE.resistance,
  vehicleResistance: parallel(VEHICLE.permanent, VEHICLE.stateC),
  diode: 'shorted',
});
/** Spread from the source's own tolerance of ±5 % and ±3 %, V (IEC 61851-1:2017 Table A.2). */
const SHORTED_SPREAD = 0.5;

const shortedInC: When = ({ supply, standIn }) =>
  supply === 'on' &&
  standIn.plugged &&
  standIn.state === 'C' &&
  standIn.diode === 'shorted' &&
  standIn.pilot === 'sound' &&
  standIn.earth === 'sound';

/** Whether the request was taken back and made again with the diode shorted all the while. */
function askedAgain(o: Observed, sample: Sample): boolean {
  const before = o.samples.slice(0, o.samples.indexOf(sample) + 1);
  const backInB = before.findLastIndex(
    ({ setUp }) => setUp.standIn.diode === 'shorted' && setUp.standIn.state === 'B',
  );
  return backInB >= 0 && before.slice(backInB).every(({ setUp }) => setUp.standIn.diode === 'shorted');
}

const always = (papers: Papers): Expectation => ({
  id: 'opens',
  should: true,
  text: 'takes the voltage away within 3 s',
  why: 'The unit’s sheet says that it looks at the low half all the time.',
  source: SHEET,
  of: 'unit',
  points: ['pilot', 'switching'],
  judge: (o) =>
    outletDead(
      papers,
      o,
      (setUp, s) => shortedInC(setUp, s) && setUp.settled >= GREATEST_OFF_AFTER_FAULT && !askedAgain(o, s),
    ),
});

const lowHalf: Expectation = {
  id: 'low-half',
  should: true,
  text: 'lets the low half of the pilot rise to about −5.6 V',
  why: 'With no diode the vehicle’s resistors divide the low half too. The unit’s sheet says that it goes on.',
  source: CIRCUIT,
  of: 'circuit',
  points: ['pilot'],
  judge: (o) =>
    judgeAll(
      readingsOf(o, 'pilot', (setUp, s) => shortedInC(setUp, s) && !askedAgain(o, s)).filter(
        (r) => r.frequency !== null,
      ),
      (r) =>
        isNumberInside(r.low ?? 0, r.uncertainty ?? 0, {
          least: SHORTED_LOW - SHORTED_SPREAD,
          greatest: SHORTED_LOW + SHORTED_SPREAD,
        }),
    ),
};

export const diodeInC: TestAction = {
  id: 'diode-in-c',
  title: 'Vehicle’s diode shorts while supplying, then asks again',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  purpose:
    'See what the unit does with a diode that fails in service, and that it looks afresh at every request.',
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'vehicle', diode: 'shorted' },
    waitFor(GREATEST_OFF_AFTER_FAULT),
    pilot,
    ...(papers.sheet.diodeCheck === 'always' ? outletVoltages(papers) : []),
    { op: 'vehicle', state: 'B' },
    waitFor(1),
    { op: 'vehicle', state: 'C' },
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    ...cleared(papers, 'diode'),
  ],
  expectations: (papers) => [
    papers.sheet.diodeCheck === 'always' ? always(papers) : lowHalf,
    {
      id: 'supplies-again',
      should: false,
      text: 'supplies when asked again with the diode still shorted',
      why: 'The low half is checked at least once before every closing.',
      source: pilotStandard('Table A.4 note c'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        outletDead(papers, o, (setUp, s) => shortedInC(setUp, s) && setUp.settled >= 3 && askedAgain(o, s)),
    },
  ],
  untold: () => [
    {
      id: 'other-parts',
      toldBy: ['pilot-short', 'pilot-open', 'diode', 'pe-open'],
      text: 'notices any other part of the vehicle’s pilot circuit that fails',
      why: 'Only the diode was shorted.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { 'supplies-again': 'the unit supplies without a vehicle’s diode: isolate' },
};
