/** The leads of one step where they were, on one side's opened drawing, with the figure that the instrument showed. */

import type { Moment } from '../../../attempt/opened/moment.ts';
import type { Operation } from '../../../bench/operation.ts';
import type { Reading } from '../../../bench/reading.ts';
import { terminalsIn } from '../../../bench/terminals.ts';
import { shownText } from '../../format/figures.ts';
import { LETTERS } from '../letters.ts';
import type { Layout, Point } from './layout.ts';
import { terminalAt, WIDTH, X } from './layout.ts';

interface Props {
  readonly layout: Layout;
  readonly moment: Moment;
  readonly operation: Operation | null;
}

/** Every terminal that a lead is on. */
export function terminalsOf(operation: Operation, layout: Layout): readonly string[] {
  if (operation.op === 'prove-dead')
    return [...layout.lives, 'PE'].map((conductor) => `${operation.at}.${conductor}`);
  if (operation.op !== 'measure') return [];
  switch (operation.quantity) {
    case 'pilot':
      return ['outlet.CP', 'outlet.PE'];
    case 'coding':
      return ['outlet.PP', 'outlet.PE'];
    case 'residual':
      return [`outlet.${operation.line}`, 'outlet.PE'];
    case 'electrode':
      return ['met'];
    case 'phase-sequence':
      return layout.lives.filter((live) => live !== 'N').map((line) => `${operation.at}.${line}`);
    case 'opening-time':
      return [];
    default:
      return operation.between.flatMap((probe) => [...terminalsIn(probe)]);
  }
}

/** The reading that stands beside the leads: of many pairs the greatest. */
export function readingShown({ met }: Moment): Reading | undefined {
  return met
    .map(({ reading }) => reading)
    .toSorted((x, y) => (y.value ?? 0) - (x.value ?? 0))
    .at(0);
}

export function OpenedLeads({ layout, moment, operation }: Props) {
  const reading = readingShown(moment);
  if (operation === null || reading === undefined) return null;
  const points = terminalsOf(operation, layout).flatMap((terminal) => terminalAt(layout, terminal) ?? []);
  const atOutlet = points.length === 2 && points.every(({ x }) => x === X.outlet);
  const many = moment.met.length > 1;
  return atOutlet ? (
    <Beside points={points as [Point, Point]} reading={reading} layout={layout} />
  ) : (
    <Below points={points} reading={reading} layout={layout} note={many ? 'greatest of all pairs' : ''} />
  );
}

interface BesideProps {
  readonly points: readonly [Point, Point];
  readonly reading: Reading;
  readonly layout: Layout;
}

/** Both leads at the outlet: the instrument stands beside it. */
function Beside({ points, reading, layout }: BesideProps) {
  const [a, b] = points[0].y < points[1].y ? points : [points[1], points[0]];
  const y = (a.y + b.y) / 2;
  const x = X.instrument;
  return (
    <>
      <path className="lead" d={`M${a.x} ${a.y}C${x} ${a.y} ${x} ${y - 30} ${x} ${y - 13}`} />
      <path className="lead" d={`M${b.x} ${b.y}C${x} ${b.y} ${x} ${y + 30} ${x} ${y + 13}`} />
      <Ends points={points} />
      <Instrument x={x} y={y} reading={reading} />
      <text
        className="lead-words edged"
        x={WIDTH - 2}
        y={b.y + (b.y === layout.rows.PE ? 36 : 21)}
        textAnchor="end"
      >
        {shownText(reading)}
      </text>
    </>
  );
}

interface BelowProps {
  readonly points: readonly Point[];
  readonly reading: Reading;
  readonly layout: Layout;
  /** What is said of the figure, below it. */
  readonly note: string;
}

/** How far to the right the instrument may stand, so that what is beside it ends on the drawing. */
const FARTHEST = { figure: 180, note: 140 } as const;

/** Leads elsewhere, or many: the instrument stands below the drawing. */
function Below({ points, reading, layout, note }: BelowProps) {
  const y = layout.height - 18;
  const mean = points.reduce((sum, point) => sum + point.x, 0) / Math.max(1, points.length);
  const x = Math.min(note === '' ? FARTHEST.figure : FARTHEST.note, Math.max(60, mean));
  return (
    <>
      {points.map((point) => (
        <path
          key={`${point.x} ${point.y}`}
          className="lead"
          d={`M${x} ${y - 13}C${x} ${y - 40} ${point.x - 14} ${point.y + 30} ${point.x} ${point.y}`}
        />
      ))}
      <Ends points={points} />
      <Instrument x={x} y={y} reading={reading} />
      <text className="lead-words edged" x={x + 20} y={note === '' ? y + 5 : y - 1}>
        {shownText(reading)}
      </text>
      <text className="lead-note edged" x={x + 20} y={y + 14}>
        {note}
      </text>
    </>
  );
}

function Ends({ points }: { readonly points: readonly Point[] }) {
  return points.map((point) => (
    <circle key={`${point.x} ${point.y}`} className="lead-disc" cx={point.x} cy={point.y} r={5} />
  ));
}

interface InstrumentProps {
  readonly x: number;
  readonly y: number;
  readonly reading: Reading;
}

function Instrument({ x, y, reading }: InstrumentProps) {
  return (
    <>
      <circle className="symbol" cx={x} cy={y} r={13} />
      {reading.quantity === 'pilot' ? (
        // Pilot against time: a pulse.
        <path className="conductor" d={`M${x - 8} ${y + 4}h4v-8h5v8h4v-8h3`} />
      ) : (
        <text className="bold" x={x} y={y + 4.5} textAnchor="middle">
          {LETTERS[reading.quantity]}
        </text>
      )}
    </>
  );
}
