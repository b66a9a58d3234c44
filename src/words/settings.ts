/**
 * What is set at the stand-in and what disturbs the supply, in the trade's words: for the log, the strip of what is known
 * and the drawing alike.
 */
import type { Leakage } from '../bench/standIn.ts';
import type { Load } from '../site/site.ts';

/** A current as it is typed and said, in milliamperes. */
const milliamps = (amps: number): string => `${Number((1000 * amps).toPrecision(6))} mA`.replace('-', '−');

export const loadText = (amps: number): string => (amps === 0 ? 'no load' : `load ${amps} A a line`);
export function leakageText(leakage: Leakage | null): string {
  if (leakage === null || (leakage.ac === 0 && leakage.dc === 0)) return 'no leakage';
  const kinds = [
    leakage.ac === 0 ? '' : `${milliamps(leakage.ac)} a.c.`,
    leakage.dc === 0 ? '' : `${milliamps(leakage.dc)} d.c.`,
  ].filter((text) => text !== '');
  return `leakage ${kinds.join(' and ')} from ${leakage.line}`;
}

export const VEHICLE_WORDS: Readonly<Record<string, (value: unknown) => string>> = {
  plugged: (value) => (value === true ? 'plugged in' : 'unplugged'),
  state: (value) => `state ${String(value)}`,
  coding: (value) => (value === null ? 'no coding' : `coding ${String(value)} A`),
  pilot: (value) =>
    value === 'sound' ? 'pilot sound' : value === 'open' ? 'pilot open' : 'pilot shorted to earth',
  diode: (value) => (value === 'sound' ? 'diode sound' : 'diode shorted'),
  earth: (value) => (value === 'sound' ? 'PE sound' : 'PE open'),
  load: (value) => loadText(value as number),
  leakage: (value) => leakageText(value as Leakage | null),
};

function neighboursText(loads: readonly Load[]): string {
  if (loads.length === 0) return 'neighbours without load';
  const lines = [...new Set(loads.map(({ line }) => line))].sort();
  const power = (line: string) =>
    loads.reduce((sum, load) => sum + (load.line === line ? load.power : 0), 0) / 1000;
  return `neighbours’ load ${lines.map((line) => `${power(line)} kW on ${line}`).join(', ')}`;
}

/** What the tutor, or the maker's own test function, does to the supply. */
export const DISTURBANCE_WORDS: Readonly<Record<string, (value: unknown) => string>> = {
  pen: (value) => (value === 'open' ? 'PEN open' : 'PEN sound'),
  voltage: (value) => (value === null ? 'voltage as it was' : `supply at ${String(value)} V`),
  missing: (value) => (value === null ? 'every conductor back' : `${String(value)} lost`),
  neighbours: (value) =>
    value === null ? 'neighbours as they were' : neighboursText(value as readonly Load[]),
  siteLoad: (value) => (value === 0 ? 'no known load' : `known load of ${String(value)} A a line`),
  nextPoint: (value) => (value === 0 ? 'next point idle' : `next point draws ${String(value)} A a line`),
  loadLimit: (value) => (value === null ? 'no load limit' : `load limit ${String(value)} A`),
};
