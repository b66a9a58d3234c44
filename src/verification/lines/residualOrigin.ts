/** What test action `residual-origin` ought to show. */
import type { ReadingOf } from '../../bench/reading.ts';
import { isOf } from '../../bench/reading.ts';
import type { Amps, Seconds } from '../../laws/quantities.ts';
import { breakTimeLimit, NON_TRIPPING_SHARE, VERIFICATION } from '../../laws/residualLimits.ts';
import { tripsInTime } from '../actions/residual.ts';
import { deviceOf } from '../actions/residualOrigin.ts';
import { judgeAll, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, published } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

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

export const residualOrigin: TestLines = {
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
