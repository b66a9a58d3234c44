/**
 * A trace with two cursors, a and b: moved by tap on the plot, by buttons, or by arrow keys on their letters. It gives
 * times and levels at the cursors and what lies between them; what follows from those is left to work out.
 */
import type { MouseEvent } from 'react';
import { useId, useState } from 'react';
import type { Seconds } from '../../../laws/quantities.ts';
import { timeText } from '../../format/figures.ts';
import { Keys } from '../../parts/Keys.tsx';
import { dimension } from '../symbols.ts';
import { Cursor } from './Cursor.tsx';
import { DIMENSIONS, PLOT, timeAtX, xAt } from './plot.ts';
import { TraceLines } from './TraceLines.tsx';
import { TraceTable } from './TraceTable.tsx';
import type { Trace } from './trace.ts';
import { edgeFrom, edgesOf, levelAt, resolutionOf } from './trace.ts';

const NAMES = ['a', 'b'] as const;
type Name = (typeof NAMES)[number];
type Cursors = Readonly<Record<Name, Seconds>>;

/** A tap this near to an edge means the edge, in drawing units. */
const NEAR = 10;

export function TraceView({ trace }: { readonly trace: Trace }) {
  const [cursors, setCursors] = useState<Cursors>({ a: trace.cursors[0], b: trace.cursors[1] });
  const [moving, setMoving] = useState<Name>('b');
  const place = (name: Name, at: Seconds) => {
    const { from, to } = trace.time;
    setCursors({ ...cursors, [name]: Math.min(to, Math.max(from, at)) });
    setMoving(name);
  };
  const tap = (event: MouseEvent<HTMLElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * PLOT.width;
    const edge = edgesOf(trace).find((at) => Math.abs(xAt(trace, at) - x) < NEAR);
    const step = resolutionOf(trace);
    place(moving, edge ?? Math.round(timeAtX(trace, x) / step) * step);
  };
  const isFirst = cursors.a <= cursors.b ? 'a' : 'b';
  return (
    <figure className="trace">
      <figcaption className="lettering">{trace.title}</figcaption>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the letters and the buttons do the same by key */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a tap here is a shortcut */}
      <div className="plot" onClick={tap}>
        <Plot trace={trace} cursors={cursors} />
        {NAMES.map((name) => (
          <Cursor
            key={name}
            name={name}
            trace={trace}
            at={cursors[name]}
            isLeft={name === isFirst}
            onMove={(at) => place(name, at)}
          />
        ))}
      </div>
      <div className="trace-acts not-printed">
        <Keys legend="cursor" options={NAMES} value={moving} onChange={setMoving} />
        <button type="button" onClick={() => place(moving, edgeFrom(trace, cursors[moving], 'before'))}>
          edge before
        </button>
        <button type="button" onClick={() => place(moving, edgeFrom(trace, cursors[moving], 'next'))}>
          edge after
        </button>
      </div>
      <Figures trace={trace} cursors={cursors} />
      <TraceTable trace={trace} />
    </figure>
  );
}

interface PartProps {
  readonly trace: Trace;
  readonly cursors: Cursors;
}

function Plot({ trace, cursors }: PartProps) {
  const title = useId();
  const { time } = trace;
  const [between, whole] = DIMENSIONS;
  const [left, right] = [cursors.a, cursors.b].map((at) => xAt(trace, at)).toSorted((x, y) => x - y) as [
    number,
    number,
  ];
  return (
    <svg
      viewBox={`0 0 ${PLOT.width} ${trace.dimension === null ? between + 10 : whole + 10}`}
      role="img"
      aria-labelledby={title}
    >
      <title id={title}>{trace.title}; the table below says the same</title>
      <TraceLines trace={trace} />
      {NAMES.map((name) => (
        <path
          key={name}
          className="cursor-line"
          d={`M${xAt(trace, cursors[name])} ${PLOT.top - 4}V${between + 4}`}
        />
      ))}
      <Dimension
        shape="cursor-dimension"
        left={left}
        right={right}
        y={between}
        text={betweenText(trace, cursors)}
      />
      {trace.dimension === null ? null : (
        <Dimension
          shape="dimension"
          left={xAt(trace, trace.dimension.from)}
          right={xAt(trace, trace.dimension.to)}
          y={whole}
          text={timeText(trace.dimension.to - trace.dimension.from, time.unit, time.decimals)}
        />
      )}
    </svg>
  );
}

interface DimensionProps {
  readonly shape: string;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly text: string;
}

/** Room that a figure takes beside a dimension line. */
const BESIDE = 70;

/** With its figure behind it, before it where there is no room behind, else on it. */
function Dimension({ shape, left, right, y, text }: DimensionProps) {
  const line = dimension(left, right, y);
  const place =
    right + BESIDE < PLOT.width
      ? ({ x: right + 8, y: y + 4, textAnchor: 'start' } as const)
      : left - BESIDE > 0
        ? ({ x: left - 8, y: y + 4, textAnchor: 'end' } as const)
        : ({ x: (left + right) / 2, y: y + 4, textAnchor: 'middle' } as const);
  return (
    <>
      {line.kind === 'path' ? <path className={shape} d={line.d} /> : null}
      <text className={shape === 'dimension' ? 'bold' : 'lead-words'} {...place}>
        {text}
      </text>
    </>
  );
}

/** The time between the cursors, never less than nothing. */
const betweenText = ({ time }: Trace, { a, b }: Cursors): string =>
  timeText(Math.abs(b - a), time.unit, time.decimals);

function Figures({ trace, cursors }: PartProps) {
  const { time, dimension: other } = trace;
  const levels = { a: levelAt(trace, cursors.a), b: levelAt(trace, cursors.b) };
  const step = trace.stepText(levels.b - levels.a);
  return (
    <dl className="cursor-figures">
      {NAMES.map((name) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            {timeText(cursors[name], time.unit, time.decimals)} · {trace.levelText(levels[name])}
          </dd>
        </div>
      ))}
      <div>
        <dt>a to b</dt>
        <dd>
          <strong>{betweenText(trace, cursors)}</strong>
          {step === null ? '' : ` · ${step}`}
        </dd>
      </div>
      {other === null ? null : (
        <div>
          <dt>{other.name}</dt>
          <dd>{timeText(other.to - other.from, time.unit, time.decimals)}</dd>
        </div>
      )}
      <div className="plain">
        <dt className="unseen">uncertainty</dt>
        <dd className="note">{trace.uncertainty}</dd>
      </div>
    </dl>
  );
}
