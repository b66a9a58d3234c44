/** A figure inside its range, kept as soon as it fits; what is half typed stays as it is typed. */
import { useEffect, useState } from 'react';
import type { FigureRange } from '../../format/ranges.ts';
import { figureWithin } from '../../format/ranges.ts';
import { FigureField } from '../../parts/FigureField.tsx';

interface Props {
  readonly label: string;
  readonly className?: string | undefined;
  readonly range: FigureRange;
  readonly value: number | undefined;
  readonly onChange: (figure: number) => void;
}

export function SizedFigure({ label, className, range, value, onChange }: Props) {
  const { least, greatest, unit } = range;
  const [typed, setTyped] = useState(value === undefined ? '' : String(value));
  useEffect(() => {
    setTyped((now) =>
      value === undefined || figureWithin(now, { least, greatest, unit }) === value ? now : String(value),
    );
  }, [value, least, greatest, unit]);
  return (
    <FigureField
      label={label}
      className={className}
      range={range}
      value={typed}
      onChange={(text) => {
        setTyped(text);
        const figure = figureWithin(text, range);
        if (figure !== null) onChange(figure);
      }}
    />
  );
}
