/** The unit that belongs to a typed figure as a key beside it, prefix and all; none is pressed beforehand. */
import type { TypedUnit } from '../../bench/readings/display.ts';
import { Keys } from './Keys.tsx';

interface Props {
  readonly units: readonly TypedUnit[];
  readonly value: TypedUnit | '';
  readonly onChange: (unit: TypedUnit) => void;
}

export function UnitKeys({ units, value, onChange }: Props) {
  return units.length < 2 ? null : (
    <Keys
      legend="unit"
      options={units}
      value={units.find((unit) => unit === value) ?? null}
      onChange={onChange}
    />
  );
}
