/** The unit that belongs to a typed figure as a key beside it, prefix and all; none is pressed beforehand. */
import type { TypedUnit } from '../../attempt/record/attempt.ts';
import type { Reading } from '../../bench/reading.ts';
import { Keys } from './Keys.tsx';

/** Those that the quantity might be written in; which of them the instrument shows is to be read. */
const UNITS: Readonly<Record<Reading['quantity'], readonly TypedUnit[]>> = {
  voltage: ['V', 'mV'],
  pilot: ['V', 'mV'],
  continuity: ['Ω', 'kΩ'],
  electrode: ['Ω', 'kΩ'],
  loop: ['Ω', 'kΩ'],
  coding: ['Ω', 'kΩ'],
  insulation: ['kΩ', 'MΩ'],
  residual: ['mA', 'A'],
  'opening-time': ['ms', 's'],
  'phase-sequence': [''],
};

export const unitsOf = ({ quantity }: Reading): readonly TypedUnit[] => UNITS[quantity];

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
