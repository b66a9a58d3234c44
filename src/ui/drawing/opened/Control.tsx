/** The control and what hangs on it: rings' leads, the contactor's coil, the pilot behind its resistor, proximity. */
import type { Moment } from '../../../attempt/opened/moment.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { damageText, levelsText, STANDING_WORDS } from '../../../words/moment.ts';
import { INDICATOR_WORDS } from '../../../words/seen.ts';
import type { Layout } from './layout.ts';
import { WIDTH, X } from './layout.ts';
import { Label, Resistor } from './symbols.tsx';

interface Props {
  readonly papers: Papers;
  readonly layout: Layout;
  readonly moment: Moment;
}

export function Control({ papers, layout, moment }: Props) {
  const { rows, control, coil, lives } = layout;
  const { residual, outlet } = papers.sheet;
  const first = rows[lives[0] ?? 'N'] ?? 0;
  const last = rows.N ?? 0;
  const { CP = 0, PP = 0, PE = 0 } = rows;
  const left = X.controlLeft;
  const width = X.controlRight - left;
  const link = (X.hinge + X.fixed) / 2;
  const bottom = outlet === 'socket' ? PP + 10 : CP + 14;
  const [high = '', low] = levelsText(moment.pilot.atOutlet).split(' / ');
  const words = [
    DRIVE[moment.pilot.drive],
    INDICATOR_WORDS[moment.indicator],
    // In full it stands in the words beside the drawing.
    ...(moment.latches.length === 0 ? [] : ['latched']),
  ];
  return (
    <>
      {residual.type === null ? null : (
        <path className="leader" d={`M${X.residual} ${last + 15}V${control}`} />
      )}
      {residual.direct === null ? null : (
        <path className="leader" d={`M${X.direct} ${last + 15}V${control}`} />
      )}
      <path className="link" d={`M${link} ${first}V${coil}`} />
      <rect className="symbol" x={left} y={control} width={width} height={bottom - control} />
      <Label x={left + 5} y={control + 15} strong>
        control
      </Label>
      {words.map((word, i) => (
        <text key={word} x={left + 5} y={control + 30 + 14 * i}>
          {word}
        </text>
      ))}
      <path className="conductor" d={`M${X.controlRight} ${coil + 8}H${link - 11}`} />
      <rect className="symbol" x={link - 11} y={coil} width={22} height={16} />
      <Label x={link + 13} y={coil + 12}>
        {STANDING_WORDS[moment.coil]}
      </Label>
      <path
        className="conductor"
        d={`M${X.controlRight} ${CP}H${X.resistor}M${X.resistor + 22} ${CP}H${X.outlet}`}
      />
      <Resistor x={X.resistor} y={CP} name="1 kΩ" />
      <circle className="terminal" cx={X.outlet} cy={CP} r={4} />
      <Label x={X.outlet} y={CP - 8} anchor="middle" strong>
        CP
      </Label>
      <Label x={X.figure + 3} y={CP - 6} anchor="middle">
        {high}
      </Label>
      {low === undefined ? null : (
        <Label x={X.figure + 3} y={CP + 15} anchor="middle">
          {low}
        </Label>
      )}
      {outlet === 'socket' ? (
        <>
          <path
            className="conductor"
            d={`M${X.controlRight} ${PP}H${X.resistor}M${X.resistor + 22} ${PP}H${X.outlet}`}
          />
          <Resistor x={X.resistor} y={PP} name="" />
        </>
      ) : null}
      <circle className="terminal" cx={X.outlet} cy={PP} r={4} />
      <Label x={X.outlet} y={PP - 8} anchor="middle" strong>
        PP
      </Label>
      {outlet === 'tethered' || moment.plug !== 'out' ? (
        // The coding resistor of a connector or of a plug, from PP to PE.
        <>
          <path className="conductor" d={`M${X.outlet} ${PP + 4}V${PE - 4}`} />
          <rect className="symbol" x={X.outlet - 4} y={PP + 8} width={8} height={14} />
        </>
      ) : null}
      {moment.damaged.length === 0 ? null : (
        <Label x={WIDTH - 2} y={control + 12} anchor="end" strong>
          damaged: {damageText(moment.damaged)}
        </Label>
      )}
    </>
  );
}

/** Short enough for the control's box. */
const DRIVE: Readonly<Record<Moment['pilot']['drive'], string>> = {
  unpowered: 'no pilot',
  positive: 'steady',
  oscillating: 'oscillates',
  negative: 'negative',
};
