/** Test action `recovery`: a pilot fault and a residual trip, each cleared exactly as the sheet says, no more. */
import type { OperationInput } from '../../bench/operation.ts';
import { linesOf } from '../../site/site.ts';
import { inState, judgeAll, outletDead, outletSupplied, settledFor, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { cleared, permission, unplug, untilOffered, untilSupplied } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { outletVoltages, pilot, voltage, waitFor } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { asked, offeredReadings, oscillating } from './pilotLines.ts';
import { shorted } from './pilotShort.ts';
import { afterTrip, atOnce, testedDevice } from './residual.ts';

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

export const recovery: TestAction = {
  id: 'recovery',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding', 'residual-device', 'earthing'],
  applies: (papers) => testedDevice(papers) !== null && papers.sheet.permission !== 'held',
  steps: (papers) => {
    const { rated } = testedDevice(papers) ?? { rated: 0.03 };
    return [
      ...untilSupplied(papers),
      atOnce('L1', 'sinusoidal', rated),
      waitFor(10),
      ...outletVoltages(papers),
      ...supplyAfterTrip(papers),
      ...supply(papers),
      { op: 'vehicle', pilot: 'shorted-to-earth' },
      waitFor(4),
      ...unplug,
      ...cleared(papers, 'E'),
      ...untilOffered(papers),
      pilot,
      ...unplug,
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
            !afterTrip(o)(setUp, sample),
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
