/**
 * The installation as a drawing: what the papers say, what the trainee's own hand has set, and where the leads were
 * put last. The unit is a closed box with terminals; no contact inside is ever drawn.
 */
import { useId } from 'react';
import type { Bench } from '../flow/bench.ts';
import { SUPPLY_WORDS } from '../flow/known.ts';
import { Leads } from './Leads.tsx';
import type { Layout } from './layout.ts';
import { layoutOf, WIDTH, X } from './layout.ts';
import { Name } from './Name.tsx';
import { StandIn } from './StandIn.tsx';

interface Props {
  readonly bench: Bench;
}

export function Installation({ bench }: Props) {
  const title = useId();
  const { papers } = bench.run;
  const { position } = bench;
  const layout = layoutOf(papers, position.plugged);
  return (
    <svg className="drawing" viewBox={`0 0 ${WIDTH} ${layout.height}`} role="img" aria-labelledby={title}>
      <title id={title}>Drawing of the installation; the lists below say the same in words</title>
      <Supply bench={bench} layout={layout} />
      <Unit bench={bench} layout={layout} />
      <Cable bench={bench} layout={layout} />
      <StandIn position={position} layout={layout} />
      <Terminals layout={layout} />
      <Leads bench={bench} layout={layout} />
    </svg>
  );
}

interface PartProps {
  readonly bench: Bench;
  readonly layout: Layout;
}

/** Source, earthing, origin and the circuit as far as the unit. */
function Supply({ bench, layout }: PartProps) {
  const { site } = bench.run.papers;
  const { rows, lives } = layout;
  const { circuit, earthing } = site;
  const first = lives[0] === undefined ? 0 : rows[lives[0]];
  const { breaker, length, lineArea, protectiveArea } = circuit;
  const earthX = earthing === 'TT' ? X.met : X.star;
  const earthFrom = earthing === 'TT' ? rows.PE : first;
  return (
    <g>
      <Name x={8} y={24} bold="supply" note={earthing} />
      <Name x={X.originLeft} y={24} bold="origin" note={`${breaker.type}${breaker.rating}`} />
      <path className="conductor" d={`M${earthX} ${earthFrom}V${rows.PE + 20}`} />
      {earthing === 'TT' ? <path className="conductor" d={`M${X.star} ${first}V${rows.N}`} /> : null}
      <Earth x={earthX} y={rows.PE + 20} />
      {lives.map((name) => (
        <g key={name}>
          <path className="conductor" d={`M${X.star} ${rows[name]}H${X.unitLeft}`} />
          {name === 'N' ? null : (
            <>
              <circle className="symbol" cx={X.source} cy={rows[name]} r={8} />
              <path className="conductor" d={`M${X.source - 5} ${rows[name]}q2.5 -6 5 0t5 0`} />
            </>
          )}
          <text x={X.unitLeft - 8} y={rows[name] - 5} textAnchor="end">
            {name}
          </text>
        </g>
      ))}
      {earthing === 'TN-C-S' ? (
        <>
          <path className="conductor" d={`M${X.join} ${rows.N}V${rows.PE}`} />
          <circle className="joint" cx={X.join} cy={rows.N} r={3} />
          <circle className="joint" cx={X.star} cy={rows.N} r={3} />
        </>
      ) : null}
      <path
        className="conductor earth"
        d={`M${earthing === 'TN-S' ? X.star : earthing === 'TT' ? X.met : X.join} ${rows.PE}H${X.unitLeft}`}
      />
      <text x={X.unitLeft - 8} y={rows.PE - 5} textAnchor="end">
        PE
      </text>
      <text x={X.met} y={rows.PE - 10} textAnchor="middle">
        MET
      </text>
      <rect
        className="box"
        x={X.originLeft}
        y={first - 14}
        width={X.originRight - X.originLeft}
        height={rows.N - first + 28}
      />
      <text x={X.originLeft} y={rows.N + 30}>
        <tspan className="bold">{SUPPLY_WORDS[bench.position.supply]}</tspan>
      </text>
      <text x={X.originLeft} y={rows.N + 45}>
        your switch
      </text>
      <text x={X.originRight + 4} y={first - 20}>
        {length} m, {lineArea}/{protectiveArea} mm²
      </text>
    </g>
  );
}

function Unit({ bench, layout }: PartProps) {
  const { sheet } = bench.run.papers;
  const { top, bottom } = layout;
  const { position } = bench;
  const middle = (X.unitLeft + X.unitRight) / 2;
  const centre = (top + bottom) / 2;
  const words = [
    `${sheet.ratedCurrent} A`,
    sheet.outlet === 'tethered' ? 'tethered' : 'socket-outlet',
    ...(sheet.outlet === 'tethered' ? [] : ['type 2']),
    ...(position.unit === 'taken off' ? ['conductors off'] : []),
  ];
  return (
    <g>
      <Name x={X.unitLeft} y={24} bold="unit" note={`cover ${position.cover}`} />
      <rect
        className="enclosure"
        x={X.unitLeft}
        y={top}
        width={X.unitRight - X.unitLeft}
        height={bottom - top}
      />
      {words.map((word, i) => (
        <text key={word} x={middle} y={centre + 16 * i - 8 * (words.length - 1)} textAnchor="middle">
          {word}
        </text>
      ))}
    </g>
  );
}

/** Tether, or the customer's cable, which goes with the stand-in. */
function Cable({ bench, layout }: PartProps) {
  const { sheet } = bench.run.papers;
  const { rows, lives } = layout;
  const { plugged } = bench.position;
  const isTether = sheet.outlet === 'tethered';
  const from = isTether || plugged ? X.unitRight : X.cableStart;
  const to = !isTether || plugged ? X.standInLeft : X.cableEnd;
  return (
    <g>
      <Name x={X.unitRight + 10} y={24} bold={isTether ? 'tether' : 'customer’s cable'} note="" />
      <text x={X.unitRight + 10} y={39}>
        {sheet.cable.length} m, {sheet.cable.area} mm²
      </text>
      {[...lives, 'CP' as const, 'PE' as const].map((name) => (
        <g key={name}>
          <path
            className={name === 'PE' ? 'conductor earth' : 'conductor'}
            d={`M${from} ${rows[name]}H${to}`}
          />
          <text x={X.cableStart + 6} y={rows[name] - 5}>
            {name}
          </text>
        </g>
      ))}
      {isTether || plugged ? (
        <path className="conductor" d={`M${layout.outletX - 16} ${rows.PP}H${layout.outletX}`} />
      ) : null}
      <text x={isTether || plugged ? layout.outletX - 36 : layout.outletX + 8} y={rows.PP + 4}>
        PP
      </text>
    </g>
  );
}

function Terminals({ layout }: { readonly layout: Layout }) {
  const ends = Object.entries(layout.terminals);
  return (
    <g>
      {ends.map(([terminal, { x, y }]) => (
        <circle key={terminal} className="terminal" cx={x} cy={y} r={4.5} />
      ))}
      {ends
        .filter(([terminal]) => terminal === 'case' || terminal === 'earth')
        .map(([terminal, { x, y }]) => (
          <text key={terminal} x={x + 10} y={y + (terminal === 'case' ? 14 : 4)}>
            {terminal === 'case' ? 'exposed metal' : 'remote rod'}
          </text>
        ))}
    </g>
  );
}

function Earth({ x, y }: { readonly x: number; readonly y: number }) {
  return <path className="conductor" d={`M${x - 12} ${y}h24M${x - 8} ${y + 5}h16M${x - 4} ${y + 10}h8`} />;
}
