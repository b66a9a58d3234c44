/**
 * What a person may set by a figure, with its unit: typed text is a figure inside its range or none. The ranges are what
 * makes sense at a bench; the operations themselves may allow more.
 */
import { typedNumber } from './figures.ts';

export interface FigureRange {
  readonly least: number;
  readonly greatest: number;
  readonly unit: string;
}

export const RANGES = {
  wait: { least: 0.01, greatest: 3600, unit: 's' },
  /** Up to what a unit may be rated. */
  load: { least: 0, greatest: 80, unit: 'A' },
  leakageAc: { least: 0, greatest: 300, unit: 'mA' },
  /** Either polarity. */
  leakageDc: { least: -100, greatest: 100, unit: 'mA' },
  supplyVolts: { least: 180, greatest: 280, unit: 'V' },
  /** A transformer's worth on one line. */
  neighbours: { least: 0, greatest: 100, unit: 'kW' },
  siteLoad: { least: 0, greatest: 100, unit: 'A' },
  /** Up to what a unit may be rated. */
  nextPoint: { least: 0, greatest: 80, unit: 'A' },
  loadLimit: { least: 0, greatest: 80, unit: 'A' },
} as const satisfies Record<string, FigureRange>;

/** The figure, or null where it is none or outside the range. */
export function figureWithin(text: string, { least, greatest }: FigureRange): number | null {
  const typed = typedNumber(text);
  return typed === null || typed < least || typed > greatest ? null : typed;
}

export const rangeText = ({ least, greatest, unit }: FigureRange): string =>
  `${least} to ${greatest} ${unit} is expected.`.replace('-', '−');
