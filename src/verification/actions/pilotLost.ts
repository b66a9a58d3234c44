/** What losing the pilot and losing PE at the vehicle have in common: to the unit both look as unplugged. */

import type { Opening } from '../../bench/readings/choices.ts';
import type { StandIn } from '../../bench/standIn.ts';
import type { Seconds } from '../../laws/quantities.ts';
import { inState, judgeAll, outletDead, settledFor, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { permission, unplug, untilSupplied } from '../offer.ts';
import type { Source } from '../sources.ts';
import { CIRCUIT, pilotStandard } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Expectation, Limit, Papers } from '../testAction.ts';
import { offeredReadings, offInTime, oscillating, peakOf } from './pilotLines.ts';

export interface Loss {
  readonly test: string;
  readonly of: Opening;
  readonly is: (standIn: StandIn) => boolean;
  readonly mended: Partial<StandIn>;
  readonly greatest: Seconds;
  readonly source: Source;
}

const lost =
  ({ is }: Loss): When =>
  ({ supply, standIn }) =>
    supply === 'on' && standIn.plugged && is(standIn);

export const lossSteps = (papers: Papers, loss: Loss) =>
  [
    ...untilSupplied(papers),
    { op: 'measure', quantity: 'opening-time', of: loss.of },
    waitFor(1),
    pilot,
    ...outletVoltages(papers),
    // Mended, through B: to the unit a new vehicle.
    { op: 'vehicle', ...loss.mended, state: 'B' },
    waitFor(1),
    ...permission(papers),
    waitFor(2),
    pilot,
    ...unplug,
  ] as const;

export function lossExpectations(papers: Papers, loss: Loss): readonly Expectation[] {
  const points: Expectation['points'] = ['pilot', 'switching'];
  return [
    offInTime(papers, loss.test, {
      id: 'off-in-time',
      source: loss.source,
      of: 'unit',
      points,
      greatest: loss.greatest,
      isMeant: (of) => of === loss.of,
    }),
    {
      id: 'voltage',
      should: false,
      source: loss.source,
      of: 'unit',
      points,
      judge: (o) => outletDead(papers, o, settledFor(lost(loss), 0.5)),
    },
    peakOf(papers, loss.test, {
      id: 'as-unplugged',
      should: true,
      source: CIRCUIT,
      of: 'circuit',
      points: ['pilot'],
      state: 'A',
      when: settledFor(lost(loss), 0.5),
    }),
    {
      id: 'offers-again',
      should: true,
      source: pilotStandard('Table A.6'),
      of: 'unit',
      points,
      judge: (o) =>
        judgeAll(
          offeredReadings(
            papers,
            o,
            (setUp, sample) => inState('B')(setUp, sample) && wasLost(loss, o, o.samples.indexOf(sample)),
          ),
          oscillating,
        ),
    },
  ];
}

/** Whether the loss was set, or timed, before this sample. */
const wasLost = (loss: Loss, o: Observed, index: number): boolean =>
  o.samples
    .slice(0, index)
    .some(
      (s) =>
        lost(loss)(s.setUp, s) || s.readings.some((r) => r.quantity === 'opening-time' && r.of === loss.of),
    );

export const lossLimit = (loss: Loss): Limit => ({
  id: 'opening',
  quantity: 'opening-time',
  unit: 's',
  limit: loss.greatest,
  kind: 'most',
  source: loss.source,
  points: ['pilot', 'switching'],
  applies: (r) => r.quantity === 'opening-time' && r.of === loss.of,
});
