/** The protective conductor of an opened unit: earthing terminal, circuit, PE pole, bar, exposed metal, outlet. */
import type { Moment } from '../../../attempt/opened/moment.ts';
import type { Papers } from '../../../verification/testAction.ts';
import type { Layout } from './layout.ts';
import { X } from './layout.ts';
import { Potential } from './Potential.tsx';
import { Contact, EarthSign, Label } from './symbols.tsx';

interface Props {
  readonly papers: Papers;
  readonly layout: Layout;
  readonly moment: Moment;
}

export function Protective({ papers, layout, moment }: Props) {
  const y = layout.rows.PE ?? 0;
  const { bottom } = layout;
  const hasPole = moment.earthPole !== null;
  const { surgeArrester } = papers.sheet;
  return (
    <>
      <Label x={X.name} y={y - 8} strong>
        MET
      </Label>
      <path className="conductor" d={`M${X.met} ${y}V${y + 22}`} />
      <EarthSign x={X.met} y={y + 22} />
      <path
        className="conductor earth"
        d={
          hasPole
            ? `M${X.met} ${y}H${X.breakerHinge}M${X.breakerFixed} ${y}H${X.outlet}`
            : `M${X.met} ${y}H${X.outlet}`
        }
      />
      {hasPole ? (
        <Contact
          hinge={X.breakerHinge}
          fixed={X.breakerFixed}
          y={y}
          closed={moment.earthPole === 'closed'}
          kind="plain"
        />
      ) : null}
      <path className="conductor earth" d={`M${X.bar} ${y}V${bottom}`} />
      <circle className="joint" cx={X.bar} cy={y} r={3} />
      {surgeArrester ? (
        <>
          <path className="conductor" d={`M${X.bar + 24} ${y}V${y - 20}`} />
          <rect className="symbol" x={X.bar + 19} y={y - 16} width={10} height={12} />
        </>
      ) : null}
      <circle className="terminal" cx={X.met} cy={y} r={4} />
      <circle className="terminal" cx={X.supply} cy={y} r={4} />
      <circle className="terminal" cx={X.outlet} cy={y} r={4} />
      <circle className="terminal" cx={X.bar} cy={bottom} r={4} />
      <Label x={X.outlet} y={y + 17} anchor="middle" strong>
        PE
      </Label>
      <Potential x={X.supply - 24} y={y} of={moment.volts['supply.PE']} />
      <Potential x={X.figure} y={y} of={moment.volts['outlet.PE']} large />
      <Label x={X.bar + 9} y={bottom + 14}>
        exposed metal
      </Label>
      <CaseFigure layout={layout} moment={moment} />
    </>
  );
}

function CaseFigure({ layout, moment }: { readonly layout: Layout; readonly moment: Moment }) {
  return <Potential x={X.bar + 24} y={layout.bottom + 1} of={moment.volts.case} />;
}
