/**
 * A trace of which one step is touched: the touch goes to the nearest step, and a cursor stands there. Arrow keys walk from
 * step to step.
 */
import type { KeyboardEvent, MouseEvent } from 'react';
import { useId } from 'react';
import { PLOT, TIME_NUMBERS, timeAtX, xAt } from '../../drawing/traces/plot.ts';
import { TraceLines } from '../../drawing/traces/TraceLines.tsx';
import { edgesOf, levelAt } from '../../drawing/traces/trace.ts';
import type { Lines } from './askedTrace.ts';
import { momentText } from './askedTrace.ts';

interface Props {
  readonly trace: Lines;
  readonly at: number | null;
  /** Null: it is answered. */
  readonly onTouch: ((at: number) => void) | null;
}

export function TouchTrace({ trace, at, onTouch }: Props) {
  const title = useId();
  const edges = edgesOf(trace);
  const touch = (event: MouseEvent<HTMLElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const when = timeAtX(trace, ((event.clientX - box.left) / box.width) * PLOT.width);
    const [nearest] = edges.toSorted((a, b) => Math.abs(a - when) - Math.abs(b - when));
    if (nearest !== undefined) onTouch?.(nearest);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const now = at === null ? (step > 0 ? -1 : edges.length) : edges.indexOf(at);
    const next = edges[Math.min(edges.length - 1, Math.max(0, now + step))];
    if (next !== undefined) onTouch?.(next);
  };
  const marks = at === null ? null : xAt(trace, at);
  return (
    <figure className="trace asked-trace">
      <figcaption className="lettering">{trace.title}</figcaption>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the slider in it does the same by key */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a touch here is what the slider does */}
      <div className="plot" onClick={onTouch === null ? undefined : touch}>
        <svg viewBox={`0 0 ${PLOT.width} ${TIME_NUMBERS + 8}`} role="img" aria-labelledby={title}>
          <title id={title}>{`${trace.title}. ${inWords(trace)}`}</title>
          <TraceLines trace={trace} />
          {marks === null ? null : (
            <>
              <path className="cursor-line" d={`M${marks} 20V${PLOT.bottom}`} />
              <text
                className="lead-words"
                x={marks > PLOT.width / 2 ? marks - 26 : marks + 26}
                y={16}
                textAnchor={marks > PLOT.width / 2 ? 'end' : 'start'}
              >
                your touch, {momentText(trace, at ?? 0)}
              </text>
            </>
          )}
        </svg>
        {onTouch === null ? (
          marks === null ? null : (
            <div
              className="cursor right"
              style={{ left: `${(100 * marks) / PLOT.width}%` }}
              aria-hidden="true"
            >
              a
            </div>
          )
        ) : (
          <div
            role="slider"
            tabIndex={0}
            className={`cursor ${at === null ? 'waiting' : 'right'}`}
            style={{ left: `${(100 * (marks ?? PLOT.left)) / PLOT.width}%` }}
            aria-label="your touch: arrow keys walk from step to step"
            aria-orientation="horizontal"
            aria-valuemin={trace.time.from}
            aria-valuemax={trace.time.to}
            aria-valuenow={at ?? trace.time.from}
            aria-valuetext={at === null ? 'not set' : stepText(trace, at)}
            onKeyDown={onKeyDown}
          >
            a
          </div>
        )}
      </div>
    </figure>
  );
}

const stepText = (trace: Lines, at: number): string =>
  `${momentText(trace, at)}, from ${trace.levelText(levelAt(trace, at - 1e-4))} to ${trace.levelText(levelAt(trace, at))}`;

/** All its steps, for whoever does not see them. */
const inWords = (trace: Lines): string =>
  `It begins at ${trace.levelText(levelAt(trace, trace.time.from))}. Steps: ${edgesOf(trace)
    .map((at) => stepText(trace, at))
    .join('; ')}.`;
