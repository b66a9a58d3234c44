/** Test action `recovery`: a pilot fault and a residual trip, each cleared exactly as the sheet says, no more. */
import type { OperationInput } from '../../bench/operation.ts';
import { DIRECT } from '../../laws/residualLimits.ts';
import { GREATEST_ON_AFTER_READY, LEAST_OSCILLATION_PAUSE } from '../../laws/timing.ts';
import { linesOf } from '../../site/site.ts';
import { cleared, permission, unplug, untilOffered, untilSupplied } from '../offer.ts';
import { SHEET } from '../sources.ts';
import { outletVoltages, pilot, voltage, waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { atOnce, mayTrip, readyAgain, testedDevice } from './residual.ts';

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

/**
 * The trip of the contactor that only its reset button clears, by the sheet: a return of supply is none. A unit's own
 * breaker stays open by itself.
 */
export function keptTrip(papers: Papers): 'residual' | 'direct' | null {
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

export const recovery: Procedure = {
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
  untold: () => [
    {
      id: 'every-cause',
      toldBy: [],
      source: SHEET,
    },
  ],
};
