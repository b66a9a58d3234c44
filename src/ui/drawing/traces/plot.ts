/** Where a trace's times and levels stand on its plot, and its lines as paths. Lengths in drawing units, as all drawings. */
import type { Seconds } from '../../../laws/quantities.ts';
import type { Trace } from './trace.ts';

export const PLOT = { width: 288, left: 44, right: 276, top: 30, bottom: 152 } as const;
/** Base line of the time axis's numbers, and the heights of the dimension lines. */
export const TIME_NUMBERS = PLOT.bottom + 15;
export const DIMENSIONS = [PLOT.bottom + 28, PLOT.bottom + 48] as const;

type Axes = Pick<Trace, 'time' | 'level'>;

export const xAt = ({ time }: Axes, at: Seconds): number =>
  PLOT.left + ((at - time.from) / (time.to - time.from)) * (PLOT.right - PLOT.left);

export const timeAtX = ({ time }: Axes, x: number): Seconds =>
  time.from + ((x - PLOT.left) / (PLOT.right - PLOT.left)) * (time.to - time.from);

export const yAt = ({ level }: Axes, value: number): number =>
  PLOT.bottom - ((value - level.from) / (level.to - level.from)) * (PLOT.bottom - PLOT.top);

/** Straight lines and right angles only: what lies between two edges is level. */
export function tracePath(trace: Pick<Trace, 'time' | 'level' | 'levels'>): string {
  const [first, ...rest] = trace.levels.filter(({ at }) => at <= trace.time.to);
  if (first === undefined) return '';
  const start = `M${round(Math.max(PLOT.left, xAt(trace, first.at)))} ${round(yAt(trace, first.value))}`;
  const steps = rest.map(
    ({ at, value }) => `H${round(Math.max(PLOT.left, xAt(trace, at)))}V${round(yAt(trace, value))}`,
  );
  return `${start}${steps.join('')}H${PLOT.right}`;
}

const round = (length: number): number => Math.round(10 * length) / 10;
