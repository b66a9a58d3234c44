/** The vehicle stand-in drawn as its circuit, set as the trainee has set it. */
import type { Position } from '../flow/position.ts';
import { leakageText, loadText } from '../words/settings.ts';
import type { Layout } from './layout.ts';
import { X } from './layout.ts';
import { Name } from './Name.tsx';

interface Props {
  readonly position: Position;
  readonly layout: Layout;
}

export function StandIn({ position, layout }: Props) {
  const { rows, lives, top, bottom } = layout;
  const { state, plugged, pilot, diode, earth, load, leakage } = position;
  const y = rows.CP;
  const branch = y - 26;
  const node = X.standInLeft + 52;
  const rail = X.standInRight - 16;
  const isAsking = state === 'C' || state === 'D';
  const settings = [
    pilot === 'sound' ? '' : pilot === 'open' ? 'CP open' : 'CP shorted to PE',
    diode === 'sound' ? '' : 'diode shorted',
    earth === 'sound' ? '' : 'PE open',
    load === 0 ? '' : loadText(load),
    leakage === null ? '' : leakageText(leakage),
  ].filter((text) => text !== '');
  return (
    <g>
      <Name
        x={X.standInLeft}
        y={24}
        bold="stand-in"
        note={`${plugged ? 'plugged in' : 'unplugged'}, state ${state}`}
      />
      <rect
        className="box"
        x={X.standInLeft}
        y={top}
        width={X.standInRight - X.standInLeft}
        height={bottom - top}
      />
      {lives.map((name) => (
        <text key={name} x={X.standInLeft + 8} y={rows[name] + 4}>
          {name}
        </text>
      ))}
      <path className="conductor" d={`M${X.standInLeft} ${y}h20`} />
      <path
        className="symbol"
        d={`M${X.standInLeft + 20} ${y - 6}v12l12 -6zM${X.standInLeft + 32} ${y - 6}v12`}
      />
      <path className="conductor" d={`M${X.standInLeft + 32} ${y}H${node}V${y}`} />
      <Resistor from={node} to={rail} y={y} text="2.74 kΩ" below />
      <path
        className="conductor"
        d={`M${node} ${y}V${branch}h10M${node + 34} ${branch}h6M${node + 10} ${branch}${isAsking ? 'h24' : 'l22 -10'}`}
      />
      <text x={node + 14} y={branch + 14}>
        S2
      </text>
      <Resistor from={node + 40} to={rail} y={branch} text={state === 'D' ? '270 Ω' : '1.3 kΩ'} />
      <path className="conductor" d={`M${rail} ${branch}V${rows.PE}`} />
      <path className="conductor earth" d={`M${X.standInLeft} ${rows.PE}H${rail}`} />
      <circle className="joint" cx={node} cy={y} r={3} />
      <circle className="joint" cx={rail} cy={y} r={3} />
      <circle className="joint" cx={rail} cy={rows.PE} r={3} />
      {settings.length === 0 ? null : (
        <text className="bold" x={X.standInLeft} y={bottom + 16}>
          set: {settings.join(', ')}
        </text>
      )}
    </g>
  );
}

interface ResistorProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly text: string;
  readonly below?: boolean;
}

function Resistor({ from, to, y, text, below = false }: ResistorProps) {
  const middle = (from + to) / 2;
  return (
    <>
      <path className="conductor" d={`M${from} ${y}H${middle - 14}M${middle + 14} ${y}H${to}`} />
      <rect className="symbol" x={middle - 14} y={y - 5} width={28} height={10} />
      <text x={middle} y={below ? y + 19 : y - 9} textAnchor="middle">
        {text}
      </text>
    </>
  );
}
