/** Figures in the units in which the trade says them. */

/** Narrow no-break space, between a figure and its unit. */
export const THIN = '\u202f';
/** Three digits, without trailing noughts. */
export const three = (value: number): string => String(Number(value.toPrecision(3))).replace('-', '−');

/** A figure in the unit in which the trade says it. */
export function amountText(value: number, unit: string): string {
  const size = Math.abs(value);
  if (!Number.isFinite(value)) return 'none';
  if (unit === 'Ω' && size >= 1e9) return `over 1${THIN}GΩ`;
  if (unit === 'Ω' && size >= 1e6) return `${three(value / 1e6)}${THIN}MΩ`;
  if (unit === 'Ω' && size >= 1e4) return `${three(value / 1e3)}${THIN}kΩ`;
  if (unit === 's' && size < 1) return `${three(1000 * value)}${THIN}ms`;
  if (unit === 'A' && size < 1 && size > 0) return `${three(1000 * value)}${THIN}mA`;
  return `${three(value)}${unit === '' ? '' : THIN}${unit}`;
}
