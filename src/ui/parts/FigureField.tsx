/** A line for a figure inside a range: its label says the unit, and what does not fit is said beside it. */
import type { FigureRange } from '../format/ranges.ts';
import { figureWithin, rangeText } from '../format/ranges.ts';
import { TextField } from './TextField.tsx';

interface Props {
  readonly label: string;
  readonly className?: string | undefined;
  readonly range: FigureRange;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

export function FigureField({ label, className, range, value, onChange }: Props) {
  return (
    <TextField
      label={label}
      className={className}
      numeric
      value={value}
      error={figureWithin(value, range) === null ? rangeText(range) : null}
      onChange={onChange}
    />
  );
}
