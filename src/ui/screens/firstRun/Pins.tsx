/** The unit with its lead unplugged: its face, the pins in a column, and the tester's leads with what it shows. */
import { useId } from 'react';
import type { Pair, Pin } from './minute.ts';
import { PINS, pairText } from './minute.ts';

const WIDTH = 336;
const HEIGHT = 372;
/** A conductor's row, and the pins in theirs. */
const ROWS = { L1: 100, N: 156, CP: 212, PP: 268, PE: 324 } as const;
const PIN = 188;

interface Props {
  /** What the unit says; null: nothing yet. */
  readonly says: string | null;
  readonly pair: Pair | null;
  readonly reading: string;
  /** Null while no lead is on. */
  readonly onPin: ((pin: Pin) => void) | null;
}

export function Pins({ says, pair, reading, onPin }: Props) {
  const title = useId();
  return (
    <div className="pins">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={title}>
        <title id={title}>The unit, its cover closed, and the pins of its unplugged lead</title>
        <rect className="enclosure" x={2} y={2} width={104} height={368} />
        <path className="conductor" d="M2 292H106" />
        <circle className="conductor" cx={18} cy={310} r={5} />
        <circle className="conductor" cx={90} cy={310} r={5} />
        <path className="conductor" d="M14.5 313.5l7 -7M86.5 313.5l7 -7" />
        <text x={54} y={340} textAnchor="middle">
          cover closed
        </text>
        {says === null ? null : (
          <>
            <text x={16} y={30}>
              says
            </text>
            <text className="says" x={16} y={54}>
              “{says}”
            </text>
          </>
        )}
        <text x={118} y={30}>
          lead, plug out
        </text>
        <rect className="conductor" x={PIN - 16} y={62} width={32} height={298} />
        {Object.entries(ROWS).map(([name, y]) => (
          <g key={name}>
            {name === 'PP' ? (
              // The coding resistor, in the plug.
              <>
                <path className="conductor" d={`M${PIN} ${y}H162V281M162 307V324`} />
                <rect className="symbol" x={156} y={281} width={12} height={26} />
                <circle className="joint" cx={162} cy={324} r={3} />
              </>
            ) : (
              <path className={name === 'PE' ? 'conductor earth' : 'conductor'} d={`M106 ${y}H${PIN}`} />
            )}
            <text className="bold" x={name === 'PP' ? 138 : 118} y={name === 'PP' ? y + 5 : y - 9}>
              {name === 'L1' ? 'L' : name}
            </text>
            <circle className="pin" cx={PIN} cy={y} r={11} />
          </g>
        ))}
        {pair === null ? null : <Leads pair={pair} reading={reading} />}
      </svg>
      {onPin === null
        ? null
        : (Object.keys(PINS) as Pin[]).map((pin) => (
            <button
              key={pin}
              type="button"
              className="terminal-button"
              style={{ left: `${(100 * PIN) / WIDTH}%`, top: `${(100 * ROWS[pin]) / HEIGHT}%` }}
              aria-label={`${PINS[pin]} pin, ${pair?.includes(pin) ? 'a lead is on it' : 'move a lead here'}`}
              onClick={() => onPin(pin)}
            />
          ))}
    </div>
  );
}

function Leads({ pair, reading }: { readonly pair: Pair; readonly reading: string }) {
  const [top, bottom] = pair.map((pin) => ROWS[pin]).toSorted((a, b) => a - b) as [number, number];
  const y = (top + bottom) / 2;
  const x = PIN + 40;
  const bend = Math.min(40, y - top);
  return (
    <>
      <path className="lead" d={`M${PIN} ${top}C${x} ${top} ${x} ${y - bend} ${x} ${y - 18}`} />
      <path className="lead" d={`M${PIN} ${bottom}C${x} ${bottom} ${x} ${y + bend} ${x} ${y + 18}`} />
      <circle className="lead-disc" cx={PIN} cy={top} r={11} />
      <circle className="lead-disc" cx={PIN} cy={bottom} r={11} />
      <circle className="symbol" cx={x} cy={y} r={18} />
      <text className="bold" x={x} y={y + 5} textAnchor="middle">
        V
      </text>
      <text className="lead-figure" x={x + 26} y={y + 2}>
        {reading}
      </text>
      <text className="lead-pair" x={x + 26} y={y + 20}>
        {pairText(pair, ' to ')}
      </text>
    </>
  );
}
