/**
 * A trace as data: levels that hold from one edge to the next, its axes, and where the two cursors begin. Made of what
 * the instrument shows and of how its test is done; it says nothing that is to be worked out.
 */
import type { Seconds } from '../../../laws/quantities.ts';

export interface Tick {
  readonly value: number;
  readonly text: string;
}

interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly Tick[];
}

/** From `at` on the level is `value`, until the next. */
export interface Level {
  readonly at: Seconds;
  readonly value: number;
}

export interface Trace {
  readonly title: string;
  readonly time: Axis & {
    /** One of the unit in seconds, and the digits shown behind the point. */
    readonly unit: 'ms' | 's';
    readonly decimals: number;
  };
  readonly level: Axis;
  /** A level in words: `+8.94 V`. */
  readonly levelText: (value: number) => string;
  /** The difference of two levels in words, or null where there is none to take. */
  readonly stepText: (value: number) => string | null;
  readonly levels: readonly [Level, ...Level[]];
  readonly cursors: readonly [Seconds, Seconds];
  /** A time between two edges that is dimensioned beside the cursors. */
  readonly dimension: { readonly name: string; readonly from: Seconds; readonly to: Seconds } | null;
  readonly uncertainty: string;
}

export const FACTOR = { ms: 0.001, s: 1 } as const;

export const levelAt = ({ levels }: Pick<Trace, 'levels'>, at: Seconds): number =>
  (levels.findLast((level) => level.at <= at + 1e-9) ?? levels[0]).value;

/** Times at which the level changes, in view. */
export const edgesOf = ({ levels, time }: Pick<Trace, 'levels' | 'time'>): readonly Seconds[] =>
  levels.filter(({ at }, i) => i > 0 && at >= time.from && at <= time.to).map(({ at }) => at);

/** The edge before or after a time, or the end of the trace where there is none. */
export function edgeFrom(trace: Trace, at: Seconds, towards: 'before' | 'next'): Seconds {
  const slack = resolutionOf(trace) / 2;
  const edges = edgesOf(trace);
  return towards === 'next'
    ? (edges.find((edge) => edge > at + slack) ?? trace.time.to)
    : (edges.findLast((edge) => edge < at - slack) ?? trace.time.from);
}

/** The smallest step that the trace's times are shown in, s. */
export const resolutionOf = ({ time }: Pick<Trace, 'time'>): Seconds =>
  FACTOR[time.unit] / 10 ** time.decimals;

const ROUND_STEPS = [1, 2, 5] as const;

/** Round numbers over a range, about `count` of them. */
export function roundNumbers(from: number, to: number, count: number): readonly number[] {
  const rough = (to - from) / count;
  let decade = 1;
  while (decade > rough) decade /= 10;
  while (decade * 10 <= rough) decade *= 10;
  const step = decade * (ROUND_STEPS.find((s) => s * decade >= rough) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}
