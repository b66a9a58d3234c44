/**
 * One view of the installation on the screen: conductors and boxes, the trainee's leads over them, the lettering on
 * top. It only draws what the plan says; what can be pressed lies over it.
 */

import type { CSSProperties, ReactNode } from 'react';
import { memo, useId } from 'react';
import type { InstrumentChoice } from '../flow/measurement.ts';
import type { Figure, Label, Shape } from './figure.ts';
import type { Shown } from './layout.ts';
import type { LeadLines } from './leadLines.ts';
import { INSTRUMENT_RADIUS } from './leadLines.ts';
import { LETTERS } from './letters.ts';

interface Props {
  readonly layout: Shown;
  readonly plan: Figure;
  readonly lines: LeadLines;
  readonly instrument: InstrumentChoice | '';
  readonly instrumentWords: string;
  /** What the leads are called. */
  readonly whose?: string;
  /** What the instrument shows and through which terminals; it stands in place of the words beside its circle. */
  readonly reading?: readonly Label[] | null;
  /** Terminals that no lead can be put on now. */
  readonly shut: (terminal: string) => boolean;
  readonly children?: ReactNode;
}

export function Drawing(props: Props) {
  const { layout, plan, lines, instrument, instrumentWords, whose = 'your leads', shut, children } = props;
  const { reading = null } = props;
  const title = useId();
  const { view, width, height, terminals } = layout;
  return (
    <div
      className={`plan ${view === 'origin' || view === 'unit' || view === 'outlet' ? 'part' : view}`}
      style={{ '--wide': width / height } as CSSProperties}
    >
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={title}>
        <title id={title}>Drawing of the installation; the words beside it say the same</title>
        <Shapes shapes={plan.shapes} />
        <Spots terminals={terminals} shut={shut} />
        <LeadsDrawn
          lines={lines}
          instrument={instrument}
          words={instrumentWords}
          whose={whose}
          view={view}
          reading={reading}
        />
        <Labels labels={plan.labels} />
        <Labels labels={lines.labels} />
      </svg>
      {children}
    </div>
  );
}

// Most of what is drawn stays as it is from one press to the next.
const Shapes = memo(({ shapes }: Pick<Figure, 'shapes'>) =>
  shapes.map((shape, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a shape has no other name than its place
    <Drawn key={i} shape={shape} />
  )),
);

const Spots = memo(({ terminals, shut }: Pick<Shown, 'terminals'> & Pick<Props, 'shut'>) =>
  [...terminals].map(([terminal, { x, y }]) => (
    <circle key={terminal} className={shut(terminal) ? 'terminal shut' : 'terminal'} cx={x} cy={y} r={4.5} />
  )),
);

const Labels = memo(({ labels }: Pick<Figure, 'labels'>) =>
  labels.map((label) => <Written key={`${label.x} ${label.y} ${label.text}`} label={label} />),
);

function Drawn({ shape }: { readonly shape: Shape }) {
  const look = shape.changed === true ? `${shape.look} changed` : shape.look;
  switch (shape.kind) {
    case 'path':
      return <path className={look} d={shape.d} />;
    case 'circle':
      return <circle className={look} cx={shape.x} cy={shape.y} r={shape.r} />;
    case 'rect':
      return <rect className={look} x={shape.x} y={shape.y} width={shape.width} height={shape.height} />;
  }
}

const Written = ({ label: { x, y, anchor, bold, size, text, state } }: { readonly label: Label }) => (
  <text x={x} y={y} textAnchor={anchor} className={bold ? 'bold' : undefined} fontSize={size}>
    {text}
    {state === undefined ? null : <tspan className={state.acts ? 'bold acts' : 'bold'}>{state.text}</tspan>}
  </text>
);

interface LeadsProps {
  readonly lines: LeadLines;
  readonly instrument: InstrumentChoice | '';
  readonly words: string;
  readonly whose: string;
  readonly view: Shown['view'];
  readonly reading: readonly Label[] | null;
}

function LeadsDrawn({ lines, instrument, words, whose, view, reading }: LeadsProps) {
  const { instrument: at, paths, discs } = lines;
  if (at === null) return null;
  const { x, y } = at;
  const { anchor, ...wordsAt } = lines.words;
  return (
    <g>
      {(['lead-edge', 'lead'] as const).map((look) =>
        // biome-ignore lint/suspicious/noArrayIndexKey: two leads may end at the same place
        paths.map((d, i) => <path key={`${look} ${i}`} className={look} d={d} />),
      )}
      {discs.map((disc, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two leads may end at the same place
        <circle key={i} className="lead-disc" cx={disc.x} cy={disc.y} r={6} />
      ))}
      <circle className="instrument" cx={x} cy={y} r={INSTRUMENT_RADIUS} />
      {instrument === 'pilot' ? (
        <path className="symbol" d={`M${x - 9} ${y + 5}h5v-10h7v10h6`} />
      ) : (
        <text className="bold" x={x} y={y + 4} textAnchor="middle">
          {instrument === '' ? '?' : LETTERS[instrument]}
        </text>
      )}
      {reading === null ? (
        <>
          <text className="lead-words" {...wordsAt} textAnchor={anchor}>
            {whose}
          </text>
          {view === 'whole' ? (
            <text x={wordsAt.x} y={wordsAt.y + 15}>
              {words}
            </text>
          ) : null}
        </>
      ) : (
        <g className="reading">
          <Labels labels={reading} />
        </g>
      )}
    </g>
  );
}
