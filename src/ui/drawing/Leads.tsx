/** The trainee's leads as they were put last: wider than any conductor, ending in filled discs, and named. */
import type { Measurement } from '../../bench/operation.ts';
import type { Terminal } from '../../bench/terminals.ts';
import { terminalsIn } from '../../bench/terminals.ts';
import type { Bench } from '../flow/bench.ts';
import { betweenText, INSTRUMENTS } from '../words/trade.ts';
import type { Layout } from './layout.ts';

const SYMBOLS: Readonly<Record<Measurement['quantity'], string>> = {
  continuity: 'Ω',
  insulation: 'MΩ',
  voltage: 'V',
  pilot: '⎍',
  coding: 'Ω',
  loop: 'Z',
  residual: 'IΔ',
  'opening-time': 't',
  electrode: 'RA',
  'phase-sequence': '3~',
};

/** The terminals that a measurement's two leads are on. */
function endsOf(m: Measurement): readonly [readonly Terminal[], readonly Terminal[]] {
  if ('between' in m) return [terminalsIn(m.between[0]), terminalsIn(m.between[1])];
  switch (m.quantity) {
    case 'residual':
      return [[`${m.at}.${m.line}`], [`${m.at}.PE`]];
    case 'coding':
      return [['outlet.PP'], ['outlet.PE']];
    case 'pilot':
      return [['outlet.CP'], ['outlet.PE']];
    default:
      return [['outlet.L1'], ['outlet.PE']];
  }
}

export function Leads({ bench, layout }: { readonly bench: Bench; readonly layout: Layout }) {
  const last = bench.happened.findLast(({ operation }) => operation.op === 'measure')?.operation;
  if (last?.op !== 'measure') return null;
  const [first, second] = endsOf(last);
  const points = [...first, ...second].flatMap((terminal) => layout.terminals[terminal] ?? []);
  const y = layout.height - 26;
  const middle = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const x = Math.min(540, Math.max(300, middle - 60));
  return (
    <g>
      {points.map((point, i) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: two leads may end at the same place
          key={i}
          className="lead"
          d={`M${x} ${y - 14}C${x} ${(y + point.y) / 2} ${point.x - 22} ${point.y + 40} ${point.x} ${point.y}`}
        />
      ))}
      {points.map((point, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two leads may end at the same place
        <circle key={i} className="lead-disc" cx={point.x} cy={point.y} r={5.5} />
      ))}
      <circle className="symbol filled" cx={x} cy={y} r={15} />
      <text className="bold" x={x} y={y + 4} textAnchor="middle">
        {SYMBOLS[last.quantity]}
      </text>
      <text x={x + 24} y={y - 2}>
        your leads, as last applied: {INSTRUMENTS[last.quantity]}
      </text>
      <text className="lead-words" x={x + 24} y={y + 14}>
        {betweenText([...first], [...second])}
      </text>
    </g>
  );
}
