/** How an instrument's display gives a reading: in which unit, and with how many digits after the point. */
import type { Reading } from '../../bench/reading.ts';
import type { TypedUnit } from './attempt.ts';

export interface Display {
  readonly unit: TypedUnit;
  readonly decimals: number;
}

/** At a fixed test current the instrument shows the time in which it tripped; the current is its setting. */
export const showsTripTime = ({ quantity, mode }: Reading): boolean =>
  quantity === 'residual' && mode === 'fixed';

export function displayOf(reading: Reading): Display {
  const { quantity, value, limit } = reading;
  const size = Math.abs(value ?? limit ?? 0);
  switch (quantity) {
    case 'insulation':
      return { unit: 'MΩ', decimals: size < 2e6 ? 2 : size < 20e6 ? 1 : 0 };
    case 'electrode':
    case 'continuity':
    case 'loop':
      return { unit: 'Ω', decimals: size < 20 ? 2 : size < 200 ? 1 : 0 };
    case 'coding':
      return size < 2000
        ? { unit: 'Ω', decimals: size < 20 ? 2 : size < 200 ? 1 : 0 }
        : { unit: 'kΩ', decimals: 2 };
    case 'voltage':
      return { unit: 'V', decimals: 0 };
    case 'pilot':
      return { unit: 'V', decimals: 2 };
    case 'residual':
      return showsTripTime(reading) ? { unit: 'ms', decimals: 0 } : { unit: 'mA', decimals: 1 };
    case 'opening-time':
      return { unit: 'ms', decimals: 0 };
    case 'phase-sequence':
      return { unit: '', decimals: 0 };
  }
}
