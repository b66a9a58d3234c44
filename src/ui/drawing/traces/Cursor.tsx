/** A cursor's letter over the plot: arrow keys move it, Page Up and Page Down go from edge to edge. */
import type { KeyboardEvent } from 'react';
import type { Seconds } from '../../../laws/quantities.ts';
import { timeText } from '../../format/figures.ts';
import { PLOT, xAt } from './plot.ts';
import type { Trace } from './trace.ts';
import { edgeFrom, levelAt, resolutionOf } from './trace.ts';

/** An arrow key moves by so much of the time axis; with Shift by the smallest step that is shown. */
const STRIDE = 1 / 200;

interface Props {
  readonly name: string;
  readonly trace: Trace;
  readonly at: Seconds;
  /** On which side of its line the letter stands, so that the two never cover each other. */
  readonly isLeft: boolean;
  readonly onMove: (at: Seconds) => void;
}

export function Cursor({ name, trace, at, isLeft, onMove }: Props) {
  const { time } = trace;
  const onKeyDown = (event: KeyboardEvent) => {
    const to = movedBy(event, trace, at);
    if (to === null) return;
    event.preventDefault();
    onMove(to);
  };
  return (
    <div
      role="slider"
      tabIndex={0}
      className={`cursor ${isLeft ? 'left' : 'right'}`}
      style={{ left: `${(100 * xAt(trace, at)) / PLOT.width}%` }}
      aria-label={`cursor ${name}`}
      aria-orientation="horizontal"
      aria-valuemin={time.from}
      aria-valuemax={time.to}
      aria-valuenow={at}
      aria-valuetext={`${timeText(at, time.unit, time.decimals)}, ${trace.levelText(levelAt(trace, at))}`}
      onKeyDown={onKeyDown}
      onClick={(event) => event.stopPropagation()}
    >
      {name}
    </div>
  );
}

function movedBy({ key, shiftKey }: KeyboardEvent, trace: Trace, at: Seconds): Seconds | null {
  const { from, to } = trace.time;
  const least = resolutionOf(trace);
  const stride = shiftKey ? least : Math.max(least, Math.round(((to - from) * STRIDE) / least) * least);
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return at + stride;
    case 'ArrowLeft':
    case 'ArrowDown':
      return at - stride;
    case 'PageUp':
      return edgeFrom(trace, at, 'next');
    case 'PageDown':
      return edgeFrom(trace, at, 'before');
    case 'Home':
      return from;
    case 'End':
      return to;
    default:
      return null;
  }
}
