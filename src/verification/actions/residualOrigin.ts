/** Test action `residual-origin`: the residual device at the origin, by itself, where the unit has one of its own. */

import type { ReadingOf } from '../../bench/reading.ts';
import { isOf } from '../../bench/reading.ts';
import type { Amps, Seconds } from '../../laws/quantities.ts';
import { breakTimeLimit, NON_TRIPPING_SHARE, VERIFICATION } from '../../laws/residualLimits.ts';
import type { ResidualDevice } from '../../site/site.ts';
import { judgeAll, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE, published } from '../sources.ts';
import { waitFor } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { atOnce, tripsInTime } from './residual.ts';

/** Common practice, no source. */
const HELD: Seconds = 2;
/** Long enough for a delayed device, with some to spare: BS EN 61008-1 gives it 0.5 s. */
const ENOUGH: Seconds = 1;

/** Where there is none the action does not apply; its lines are then those of a device of 30 mA. */
const deviceOf = ({ site }: Papers): Pick<ResidualDevice, 'rated' | 'delay'> =>
  site.circuit.residualDevice ?? { rated: 0.03, delay: 'general' };

const asFound: When = ({ supply, disturbed }) => supply === 'on' && !disturbed;

/** Tests there at this current, as it was set: what is shown comes out up to 5 % high. */
const testsAt = (o: Observed, amps: Amps): readonly ReadingOf<'residual'>[] =>
  o.samples.flatMap((sample) => {
    const { operation, readings } = sample;
    return operation.op === 'measure' &&
      operation.quantity === 'residual' &&
      operation.at === 'origin' &&
      operation.waveform === 'sinusoidal' &&
      operation.mode === 'fixed' &&
      Math.abs((operation.amps ?? Infinity) - amps) < 0.01 * amps &&
      asFound(sample.setUp, sample)
      ? readings.filter((r) => isOf(r, 'residual')).filter(({ qualifier }) => qualifier !== 'unable')
      : [];
  });

const _ms = (s: Seconds): number => Math.round(1000 * s);

export const residualOrigin: TestAction = {
  id: 'residual-origin',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['upstream-device', 'earthing'],
  applies: ({ site, sheet }) => site.circuit.residualDevice !== null && sheet.residual.type !== null,
  steps: (papers) => {
    const { rated } = deviceOf(papers);
    return [
      { ...atOnce('L1', 'sinusoidal', NON_TRIPPING_SHARE * rated, { seconds: HELD }), at: 'origin' },
      { ...atOnce('L1', 'sinusoidal', rated, { seconds: ENOUGH }), at: 'origin' },
      { op: 'reset', what: 'upstream' },
      waitFor(papers.sheet.startUp + 2),
    ];
  },
  expectations: (papers) => {
    const { rated, delay } = deviceOf(papers);
    const { least, greatest } = VERIFICATION[delay];
    const half = NON_TRIPPING_SHARE * rated;
    return [
      {
        id: 'half-trips',
        should: false,
        values: { amps: half },
        source: published('IEC 61008-1', 'hold-by-practice'),
        of: 'circuit',
        points: ['residual-direct', 'insulation'],
        judge: (o) => judgeAll(testsAt(o, half), ({ qualifier }) => qualifier === '>'),
      },
      {
        id: 'in-time',
        should: true,
        values: { amps: rated, least, greatest, delayed: delay === 'S' },
        source: rulesFor(papers).regulation('643.8; IEC 61008-1, break times'),
        of: 'circuit',
        points: ['residual-direct'],
        judge: (o) => tripsInTime(testsAt(o, rated), { least, greatest }),
      },
      {
        id: 'which',
        should: true,
        source: CIRCUIT,
        of: 'circuit',
        points: ['residual-direct', 'supply-wiring'],
        judge: (o) =>
          judgeAll(
            testsAt(o, rated).filter(({ qualifier }) => qualifier === null),
            ({ trippedWhat }) => trippedWhat === 'upstream',
          ),
      },
    ];
  },
  untold: () => [
    {
      id: 'own-device',
      toldBy: [
        'residual-half',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'dc-ramp',
        'dc-step',
        'residual-again',
      ],
      source: PRACTICE,
    },
  ],
  figures: () => [],
  limits: (papers) => {
    const { rated, delay } = deviceOf(papers);
    return [
      {
        id: 'trip-time',
        values: { amps: rated, least: VERIFICATION[delay].least, greatest: breakTimeLimit(delay, 1) },
        quantity: 'residual',
        unit: 's',
        limit: breakTimeLimit(delay, 1),
        kind: 'most',
        compares: 'trip time',
        source: rulesFor(papers).regulation('643.8', 'with-iec-61008-1'),
        points: ['residual-direct'],
        applies: (r) =>
          r.quantity === 'residual' &&
          r.place === 'origin' &&
          r.mode === 'fixed' &&
          (r.tripAmps ?? r.limit ?? 0) >= 0.99 * rated &&
          (r.tripAmps ?? r.limit ?? 0) <= 1.06 * rated,
      },
    ];
  },
  stops: ['in-time'],
};
