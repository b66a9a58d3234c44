/** Where a conductor stands against true earth, lettered on it: the figure above the line, how it is held below. */

import type { Potential as Standing } from '../../../attempt/opened/potentials.ts';
import { mainsText } from '../../../words/quantities.ts';
import { Label } from './symbols.tsx';

interface Props {
  readonly x: number;
  readonly y: number;
  readonly of: Standing | undefined;
  readonly large?: boolean;
}

export function Potential({ x, y, of, large = false }: Props) {
  if (of === undefined) return null;
  const { volts, hold, tiedTo } = of;
  const hasFigure = hold !== 'none' || tiedTo !== null;
  if (!large)
    return hasFigure ? (
      <Label x={x} y={y - 6} anchor="middle">
        {mainsText(volts)}
      </Label>
    ) : null;
  return (
    <>
      {hasFigure ? (
        <text className="bold edged potential" x={x} y={y - 6} textAnchor="middle">
          {mainsText(volts)}
        </text>
      ) : null}
      {hold === 'firm' ? null : (
        <Label x={x} y={y + 15} anchor="middle">
          {hold === 'faint' && tiedTo === null ? 'faint' : 'floating'}
        </Label>
      )}
    </>
  );
}
