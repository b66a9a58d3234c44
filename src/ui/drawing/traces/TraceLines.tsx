/** What every plot of a trace has: its axes with their numbers, and the line. */
import { PLOT, TIME_NUMBERS, tracePath, xAt, yAt } from './plot.ts';
import type { Trace } from './trace.ts';

export function TraceLines({ trace }: { readonly trace: Pick<Trace, 'time' | 'level' | 'levels'> }) {
  const { time, level } = trace;
  return (
    <>
      {level.ticks.map(({ value, text }) => (
        <g key={value}>
          <path className="grid" d={`M${PLOT.left} ${yAt(trace, value)}H${PLOT.right}`} />
          <text x={PLOT.left - 5} y={yAt(trace, value) + 4} textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      <path className="dimension" d={`M${PLOT.left} ${PLOT.bottom}H${PLOT.right}`} />
      {time.ticks.map(({ value, text }) => (
        <g key={value}>
          <path className="dimension" d={`M${xAt(trace, value)} ${PLOT.bottom}v4`} />
          <text
            x={xAt(trace, value)}
            y={TIME_NUMBERS}
            textAnchor={xAt(trace, value) > PLOT.right - 14 ? 'end' : 'middle'}
          >
            {text}
          </text>
        </g>
      ))}
      <path className="trace-line" d={tracePath(trace)} />
    </>
  );
}
