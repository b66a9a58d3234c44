/** Quantities of an opened moment in words and figures, as the drawing and its table show them. */
import type { Resistance } from '../attempt/opened/value.ts';
import type { Amps, Ohms, Seconds, Volts } from '../laws/quantities.ts';

/** Narrow no-break space, between a figure and its unit. */
const THIN = '\u202f';
const withUnit = (digits: string, unit: string): string => `${digits.replace('-', '−')}${THIN}${unit}`;
/** Three digits, without trailing noughts. */
const three = (value: number): string => String(Number(value.toPrecision(3)));

/** Mains: whole volts. */
export const mainsText = (volts: Volts): string => withUnit(volts.toFixed(0), 'V');

/** A pilot level, signed. */
export const pilotText = (volts: Volts): string =>
  withUnit(`${volts > 0.05 ? '+' : ''}${(Math.abs(volts) < 0.05 ? 0 : volts).toFixed(1)}`, 'V');

/** A level or threshold of the design. */
export const voltsText = (volts: Volts): string => withUnit(three(volts), 'V');

const ohmsText = (ohms: Ohms): string =>
  ohms >= 1e6
    ? withUnit(three(ohms / 1e6), 'MΩ')
    : ohms >= 1e3
      ? withUnit(three(ohms / 1e3), 'kΩ')
      : withUnit(three(ohms), 'Ω');

export const resistanceText = (resistance: Resistance): string =>
  resistance.id === 'ohms'
    ? ohmsText(resistance.ohms)
    : resistance.id === 'open'
      ? 'open'
      : `over ${withUnit('1', 'GΩ')}`;

export const ampsText = (amps: Amps): string =>
  amps === Infinity ? 'never' : amps < 1 ? withUnit(three(1000 * amps), 'mA') : withUnit(three(amps), 'A');

export const secondsText = (seconds: Seconds): string =>
  seconds === Infinity
    ? 'never'
    : seconds < 1
      ? withUnit(three(1000 * seconds), 'ms')
      : withUnit(three(seconds), 's');

export const shareText = (share: number): string => withUnit(three(100 * share), '%');
