/** The pilot as its instrument shows it, with its high time and its period dimensioned; nothing in it is touched. */
import { useId } from 'react';
import type { PilotPicture } from '../../../quiz/question.ts';
import { dimension } from '../../drawing/symbols.ts';
import { DIMENSIONS, PLOT, xAt } from '../../drawing/traces/plot.ts';
import { TraceLines } from '../../drawing/traces/TraceLines.tsx';
import { timeText } from '../../format/figures.ts';
import { pilotPicture } from './askedTrace.ts';

export function PilotPlot({ picture }: { readonly picture: PilotPicture }) {
  const title = useId();
  const trace = pilotPicture(picture);
  const [first, second] = DIMENSIONS;
  const times = [
    { to: picture.highFor, y: first },
    { to: picture.period, y: second },
  ];
  return (
    <figure className="trace asked-trace">
      <figcaption className="lettering">{trace.title}</figcaption>
      <div className="plot">
        <svg viewBox={`0 0 ${PLOT.width} ${second + 10}`} role="img" aria-labelledby={title}>
          <title id={title}>
            {`The pilot is high for ${timeText(picture.highFor, 'ms', 3)} of each period of ${timeText(picture.period, 'ms', 3)}.`}
          </title>
          <TraceLines trace={trace} />
          {times.map(({ to, y }) => {
            const line = dimension(PLOT.left, xAt(trace, to), y);
            return (
              <g key={y}>
                {line.kind === 'path' ? <path className="dimension" d={line.d} /> : null}
                <text className="bold" x={xAt(trace, to) + 8} y={y + 4}>
                  {timeText(to, 'ms', 3)}
                </text>
              </g>
            );
          })}
        </svg>
      </div>
    </figure>
  );
}
