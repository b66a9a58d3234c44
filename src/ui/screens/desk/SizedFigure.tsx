/** A figure inside its range, kept as soon as it fits; what is half typed stays as it is typed. */
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import type { FigureRange } from '../../format/ranges.ts';
import { figureWithin, rangeText } from '../../format/ranges.ts';
import { TextField } from '../../parts/TextField.tsx';

interface Props {
  readonly label: ReactNode;
  readonly className?: string | undefined;
  readonly range: FigureRange;
  readonly isWhole?: boolean | undefined;
  /** Left empty, it says undefined. */
  readonly mayBeEmpty?: boolean;
  readonly value: number | undefined;
  readonly onChange: (figure: number | undefined) => void;
}

export function SizedFigure({
  label,
  className,
  range,
  isWhole = false,
  mayBeEmpty = false,
  value,
  onChange,
}: Props) {
  const { least, greatest, unit } = range;
  const [typed, setTyped] = useState(value === undefined ? '' : String(value));
  /** Null: it cannot be taken. */
  const meant = (text: string): number | undefined | null => {
    if (mayBeEmpty && text.trim() === '') return undefined;
    const figure = figureWithin(text, { least, greatest, unit });
    return figure === null || (isWhole && !Number.isInteger(figure)) ? null : figure;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is typed gives way to another value, and to nothing else
  useEffect(() => {
    const isAsTyped = value === undefined && !mayBeEmpty;
    setTyped((now) => (isAsTyped || meant(now) === value ? now : value === undefined ? '' : String(value)));
  }, [value, least, greatest, unit]);
  const stands = value === undefined ? '' : ` Until then ${`${value} ${unit}`.trim()} stands.`;
  return (
    <TextField
      label={label}
      className={className}
      numeric
      value={typed}
      error={
        meant(typed) === null ? `${isWhole ? 'A whole number, ' : ''}${rangeText(range)}${stands}` : null
      }
      onChange={(text) => {
        setTyped(text);
        const figure = meant(text);
        if (figure !== null) onChange(figure);
      }}
    />
  );
}
