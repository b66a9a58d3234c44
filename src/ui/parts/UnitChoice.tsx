/** The unit that belongs to a typed figure, prefix and all, from a list; none until somebody chooses. */
import type { TypedUnit } from '../../attempt/attempt.ts';
import { TYPED_UNITS } from '../../attempt/attempt.ts';
import { Choice } from './Choice.tsx';

const UNITS = Object.keys(TYPED_UNITS) as TypedUnit[];

interface Props {
  readonly value: TypedUnit | '';
  readonly onChange: (unit: TypedUnit | '') => void;
  readonly above?: boolean;
}

export function UnitChoice({ value, onChange, above }: Props) {
  return (
    <Choice
      {...(above === undefined ? {} : { above })}
      label="unit"
      none="–"
      options={UNITS.map((unit): [string, string] => [unit, unit])}
      value={value}
      onChange={(text) => onChange(UNITS.find((unit) => unit === text) ?? '')}
    />
  );
}
