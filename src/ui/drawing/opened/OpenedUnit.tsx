/**
 * The unit with its cover off at one moment: every contact, coil and level as it truly was, the leads where they were,
 * and the place of one difference ringed. The same is said in words beside it.
 */
import { useId } from 'react';
import type { Difference } from '../../../attempt/opened/differences.ts';
import type { Moment } from '../../../attempt/opened/moment.ts';
import type { Operation } from '../../../bench/operation.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { STANDING_WORDS } from '../../../words/moment.ts';
import { Control } from './Control.tsx';
import type { Layout } from './layout.ts';
import { openedLayout, spotOf, WIDTH, X } from './layout.ts';
import { OpenedLeads } from './OpenedLeads.tsx';
import { Potential } from './Potential.tsx';
import { Protective } from './Protective.tsx';
import { Contact, Label, Ring } from './symbols.tsx';

interface Props {
  readonly name: string;
  readonly papers: Papers;
  readonly moment: Moment;
  readonly operation: Operation | null;
  /** The difference that is ringed now, and its number; on the unit's own drawing alone it carries the number. */
  readonly ringed: { readonly difference: Pick<Difference, 'place'>; readonly number: number | null } | null;
}

export function OpenedUnit({ name, papers, moment, operation, ringed }: Props) {
  const title = useId();
  const layout = openedLayout(papers);
  return (
    <svg className="opened" viewBox={`0 0 ${WIDTH} ${layout.height}`} role="img" aria-labelledby={title}>
      <title id={title}>{name}: drawing of the unit with its cover off; “In words” says the same</title>
      <Inside papers={papers} layout={layout} moment={moment} />
      <OpenedLeads layout={layout} moment={moment} operation={operation} />
      {ringed === null ? null : (
        <Ringed layout={layout} place={ringed.difference.place} number={ringed.number} />
      )}
    </svg>
  );
}

/** Everything that is in it, leads and ring apart. */
export function Inside(parts: PartProps) {
  return (
    <>
      <Frame {...parts} />
      <Lives {...parts} />
      <Control {...parts} />
      <Protective {...parts} />
    </>
  );
}

interface PartProps {
  readonly papers: Papers;
  readonly layout: Layout;
  readonly moment: Moment;
  /** Where only a part of it is shown: from where to where across, so that no word at its edge is cut. */
  readonly across?: { readonly from: number; readonly to: number };
}

function Frame({ papers, layout, moment, across = { from: 0, to: WIDTH } }: PartProps) {
  const { top, bottom } = layout;
  const { outlet } = papers.sheet;
  const off = moment.unit === 'taken-off';
  return (
    <>
      <rect className="cover" x={X.supply} y={top} width={X.edge - X.supply} height={bottom - top} />
      {across.from > X.line ? null : (
        <Label x={X.line} y={14}>
          origin
        </Label>
      )}
      <Label x={X.supply + 4} y={14}>
        {off ? 'unit, conductors off' : 'unit, cover off'}
      </Label>
      {across.to < WIDTH ? null : (
        <>
          <Label x={WIDTH - 2} y={14} anchor="end">
            {outlet === 'tethered' ? 'connector' : moment.plug === 'out' ? 'socket-outlet' : 'cable’s end'}
          </Label>
          <Label x={WIDTH - 2} y={29} anchor="end">
            {outlet === 'tethered'
              ? moment.plug === 'out'
                ? 'unplugged'
                : 'plugged in'
              : `plug ${STANDING_WORDS[moment.plug]}`}
          </Label>
        </>
      )}
    </>
  );
}

/** Origin, own breaker, rings and poles of the live conductors. */
function Lives({ papers, layout, moment }: PartProps) {
  const { rows, lives } = layout;
  const { sheet, site } = papers;
  const { residual } = sheet;
  const first = rows[lives[0] ?? 'N'] ?? 0;
  const last = rows.N ?? 0;
  const joined = moment.unit === 'connected';
  return (
    <>
      {/* Below the lettering, which keeps its paper edge there. */}
      {site.circuit.residualDevice === null ? null : (
        <ellipse
          className="conductor"
          cx={X.originRing}
          cy={(first + last) / 2}
          rx={5}
          ry={(last - first) / 2 + 12}
        />
      )}
      {lives.map((live) => {
        const y = rows[live] ?? 0;
        const own = moment.unitBreaker !== null;
        return (
          <g key={live}>
            <Label x={X.name} y={y + 4} strong>
              {live}
            </Label>
            <path
              className="conductor"
              d={`M${X.line} ${y}H${X.originHinge}M${X.originFixed} ${y}H${X.supply}`}
            />
            <Contact
              hinge={X.originHinge}
              fixed={X.originFixed}
              y={y}
              closed={moment.origin[live] === 'closed'}
              kind="breaker"
            />
            <path
              className="conductor"
              d={
                own
                  ? `M${X.supply + (joined ? 0 : 12)} ${y}H${X.breakerHinge}M${X.breakerFixed} ${y}H${X.hinge}`
                  : `M${X.supply + (joined ? 0 : 12)} ${y}H${X.hinge}`
              }
            />
            {own ? (
              <Contact
                hinge={X.breakerHinge}
                fixed={X.breakerFixed}
                y={y}
                closed={moment.unitBreaker === 'closed'}
                kind="breaker"
              />
            ) : null}
            <Contact
              hinge={X.hinge}
              fixed={X.fixed}
              y={y}
              closed={moment.poles[live] === 'closed'}
              kind="contactor"
            />
            <path className="conductor" d={`M${X.fixed} ${y}H${X.outlet}`} />
            <circle className="terminal" cx={X.supply} cy={y} r={4} />
            <circle className="terminal" cx={X.outlet} cy={y} r={4} />
            <Label x={X.outlet} y={y - 8} anchor="middle" strong>
              {live}
            </Label>
            <Potential x={X.figure} y={y} of={moment.volts[`outlet.${live}`]} large />
            <Potential x={X.supply - 20} y={y} of={moment.volts[`supply.${live}`]} />
          </g>
        );
      })}
      {residual.type === null ? null : <Ring x={X.residual} from={first} to={last} name="a.c." />}
      {residual.direct === null ? null : <Ring x={X.direct} from={first} to={last} name="d.c." />}
    </>
  );
}

interface RingedProps {
  readonly layout: Layout;
  readonly place: string;
  readonly number: number | null;
}

export function Ringed({ layout, place, number }: RingedProps) {
  const spot = spotOf(layout, place);
  if (spot === null) return null;
  const { x, y } = spot;
  // At the outlet the figures stand to the left, and the name above; at the left edge there is no room.
  const beside = x >= X.outlet || x < 30 ? x + 22 : x - 17;
  return (
    <>
      <circle className="ringed" cx={x} cy={y} r={20} />
      {number === null ? null : (
        <>
          <circle className="ring-number" cx={beside} cy={y - 17} r={9} />
          <text className="ring-number-text" x={beside} y={y - 12.5} textAnchor="middle">
            {number}
          </text>
        </>
      )}
    </>
  );
}
