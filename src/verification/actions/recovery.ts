/** Test action `recovery`: a pilot fault and a residual trip, each cleared exactly as the sheet says, no more. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading, ReadingOf } from '../../bench/reading.ts';
import { DIRECT } from '../../laws/residualLimits.ts';
import { GREATEST_ON_AFTER_READY, LEAST_OSCILLATION_PAUSE } from '../../laws/timing.ts';
import { linesOf } from '../../site/site.ts';
import { inState, judgeAll, outletDead, outletSupplied, settledFor, type When } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { cleared, permission, unplug, untilOffered, untilSupplied } from '../offer.ts';
import { pilotStandard, published, SHEET } from '../sources.ts';
import { outletVoltages, pilot, voltage, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { asked, offeredReadings, oscillating } from './pilotLines.ts';
import { shorted } from './pilotShort.ts';
import { afterTrip, atOnce, atTheOutlet, mayTrip, readyAgain, testedDevice } from './residual.ts';

/** What the sheet asks for after a residual trip: the device that opened is closed again, or the latch cleared. */
function clearedTrip(papers: Papers): readonly OperationInput[] {
  const { sheet } = papers;
  const upstream = papers.site.circuit.residualDevice;
  const restart = waitFor(sheet.startUp + 2);
  return [
    ...(upstream === null ? [] : [{ op: 'reset', what: 'upstream' } as const, restart]),
    ...(sheet.residual.by === 'breaker'
      ? [{ op: 'reset', what: 'unit' } as const, restart]
      : sheet.residual.type === null
        ? []
        : cleared(papers, 'residual')),
  ];
}

/** The request is left standing unless the sheet asks for state A. */
const supplyAfterTrip = (papers: Papers): readonly OperationInput[] =>
  papers.sheet.clearsBy.residual === 'state-A'
    ? [...unplug, ...clearedTrip(papers), ...untilSupplied(papers)]
    : [...clearedTrip(papers), ...permission(papers), waitFor(5)];

const supply = ({ site }: Papers): readonly OperationInput[] =>
  linesOf(site).map((x) => voltage(`outlet.${x}`, 'outlet.N'));

const wasShorted = (o: Observed, index: number): boolean =>
  o.samples.slice(0, index).some((s) => shorted(s.setUp, s));
const wasTripped = (o: Observed, index: number): boolean =>
  o.samples
    .slice(0, index)
    .some(({ readings }) => readings.some((r) => r.quantity === 'residual' && r.qualifier === null));

/** Nothing plugged in, at the end of it all: whatever there was is cleared. */
const afterAll: When = (setUp, sample) =>
  setUp.supply === 'on' && !setUp.standIn.plugged && sample.operation.op === 'wait';

/**
 * The trip of the contactor that only its reset button clears, by the sheet: a return of supply is none. A unit's own
 * breaker stays open by itself.
 */
function keptTrip(papers: Papers): 'residual' | 'direct' | null {
  const { residual, clearsBy } = papers.sheet;
  // A device upstream that may act as well would leave the unit as it was.
  const alone = mayTrip(papers, residual.rated ?? 0.03).join() === 'unit';
  if (residual.type !== null && residual.by === 'contactor' && clearsBy.residual === 'reset' && alone)
    return 'residual';
  const opensBreaker = residual.direct === 'protective' && residual.by === 'breaker';
  return residual.direct !== null && !opensBreaker && clearsBy.direct === 'reset' ? 'direct' : null;
}

/** The supply goes and comes back to what has tripped, with the vehicle still asking and nothing else to wait for. */
const returning = (papers: Papers): readonly OperationInput[] => [
  { op: 'reset', what: 'supply' },
  waitFor(papers.sheet.startUp + 1),
  ...permission(papers),
  waitFor(LEAST_OSCILLATION_PAUSE + GREATEST_ON_AFTER_READY),
  ...outletVoltages(papers),
];

/** Where no residual trip waits for the button, the d.c. detector's does: 6 mA for as long as it may take. */
const returningAfterDirect = (papers: Papers): readonly OperationInput[] => [
  ...untilSupplied(papers),
  atOnce('L1', 'smooth-dc-positive', DIRECT.operating),
  ...returning(papers),
  ...readyAgain(papers, 'direct'),
];

/** Tripped by the unit itself, with the supply gone and back since, and no reset; and the sheet asks for one. */
const backAfterTrip =
  ({ sheet }: Papers, o: Observed): When =>
  (setUp, sample) => {
    const before = o.samples.slice(0, o.samples.indexOf(sample));
    const tripped = before.findLastIndex(({ readings }) => readings.some(isOwnTrip));
    const since = before.slice(tripped + 1);
    const reading = before[tripped]?.readings.find(isOwnTrip);
    const reason = reading?.waveform === 'sinusoidal' ? 'residual' : 'direct';
    return (
      inState('C')(setUp, sample) &&
      reading !== undefined &&
      sheet.clearsBy[reason] === 'reset' &&
      since.some(supplyReturned) &&
      !since.some(({ operation }) => operation.op === 'reset' && operation.what === 'unit')
    );
  };

/** Which of its devices answers to a half-wave nobody can tell. */
const isOwnTrip = (r: Reading): r is ReadingOf<'residual'> =>
  atTheOutlet(r) &&
  r.qualifier === null &&
  r.trippedWhat === 'unit' &&
  r.waveform?.startsWith('half-wave') === false;

const supplyReturned = ({ operation }: Sample): boolean =>
  operation.op === 'energise' || (operation.op === 'reset' && operation.what === 'supply');

const afterReturn = (papers: Papers): readonly Expectation[] =>
  keptTrip(papers) === null
    ? []
    : [
        {
          id: 'after-return',
          should: false,
          source: published('IEC 61851-1:2017 clause 14, UK note', 'and-sheet'),
          of: 'unit',
          points: ['residual-direct', 'switching'],
          judge: (o) => outletDead(papers, o, backAfterTrip(papers, o)),
        },
      ];

export const recovery: TestAction = {
  id: 'recovery',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding', 'residual-device', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null && papers.sheet.permission !== 'held',
  steps: (papers) => {
    const { rated } = testedDevice(papers) ?? { rated: 0.03 };
    return [
      ...untilSupplied(papers),
      atOnce('L1', 'sinusoidal', rated),
      waitFor(10),
      ...outletVoltages(papers),
      ...(keptTrip(papers) === 'residual' ? returning(papers) : []),
      ...supplyAfterTrip(papers),
      ...supply(papers),
      { op: 'vehicle', pilot: 'shorted-to-earth' },
      waitFor(4),
      ...unplug,
      ...cleared(papers, 'E'),
      ...untilOffered(papers),
      pilot,
      ...unplug,
      ...(keptTrip(papers) === 'direct' ? returningAfterDirect(papers) : []),
      waitFor(1),
    ];
  },
  expectations: (papers) => [
    {
      id: 'after-short',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching'],
      judge: (o) =>
        judgeAll(
          offeredReadings(
            papers,
            o,
            (setUp, sample) => inState('B')(setUp, sample) && wasShorted(o, o.samples.indexOf(sample)),
          ),
          oscillating,
        ),
    },
    {
      id: 'after-trip',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['residual-direct', 'switching'],
      judge: (o) =>
        outletSupplied(
          papers,
          o,
          (setUp, sample) =>
            asked(papers, o)(setUp, sample) &&
            wasTripped(o, o.samples.indexOf(sample)) &&
            !afterTrip(o)(setUp, sample) &&
            !backAfterTrip(papers, o)(setUp, sample),
        ),
    },
    {
      id: 'by-itself',
      should: false,
      source: pilotStandard('clause 14, UK note'),
      of: 'unit',
      points: ['residual-direct', 'switching'],
      judge: (o) =>
        outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterTrip(o)(setUp, sample)),
    },
    ...afterReturn(papers),
    {
      id: 'ready',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'residual-direct', 'switching'],
      judge: (o) =>
        judgeAll(
          o.samples
            .filter(
              (s) =>
                settledFor(afterAll, 1)(s.setUp, s) &&
                wasTripped(o, o.samples.indexOf(s)) &&
                wasShorted(o, o.samples.indexOf(s)),
            )
            .slice(-1),
          ({ seen }) => seen.indicator === 'ready',
        ),
    },
  ],
  untold: () => [
    {
      id: 'every-cause',
      toldBy: [],
      source: SHEET,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
