/** Terminals and probes in the trade's words. */
import type { Probe, Terminal } from '../bench/terminals.ts';
import { terminalsIn } from '../bench/terminals.ts';

export const PLACE_WORDS: Readonly<Record<string, string>> = {
  origin: 'origin',
  supply: 'unit’s supply terminals',
  outlet: 'outlet',
  incoming: 'live side of the origin',
};
export const SINGLE_WORDS: Readonly<Record<string, string>> = {
  met: 'main earthing terminal',
  house: 'house’s earthing terminal',
  earth: 'remote rod',
  earthing: 'distributor’s earth',
  case: 'exposed metal of the unit',
  leads: 'tester’s leads',
  'known-ohm': 'known resistor of 1 Ω',
};

export function terminalText(terminal: Terminal): string {
  const [place = '', conductor] = terminal.split('.');
  return conductor === undefined
    ? (SINGLE_WORDS[place] ?? terminal)
    : `${conductor} at the ${PLACE_WORDS[place] ?? place}`;
}

/** A terminal, or several that a probe joins, those at one place together. */
export const probeText = (probe: Probe): string => {
  const terminals = terminalsIn(probe);
  const place = placeOf(terminals);
  return place === null
    ? terminals.map(terminalText).join(' joined to ')
    : `${terminals.map(conductorOf).join(' + ')} at the ${PLACE_WORDS[place] ?? place}`;
};

export const conductorOf = (terminal: Terminal): string => terminal.split('.')[1] ?? terminal;

/** The place that all of them are at, or null. */
export function placeOf(terminals: readonly Terminal[]): string | null {
  const places = new Set(terminals.map((t) => (t.includes('.') ? t.split('.')[0] : t)));
  const [only] = places;
  return places.size === 1 && only !== undefined && only in PLACE_WORDS ? only : null;
}

/** From the label that a reading carries (joined terminals with ` + `). */
export const fromLabel = (label: string): Probe => label.split(' + ');

/** Short: `L1–PE at the outlet`, or both ends in full where they are at different places. */
export function betweenText(a: Probe, b: Probe): string {
  const place = placeOf([...terminalsIn(a), ...terminalsIn(b)]);
  const joined = (probe: Probe) => terminalsIn(probe).map(conductorOf).join(' + ');
  return place === null
    ? `${probeText(a)} – ${probeText(b)}`
    : `${joined(a)}–${joined(b)} at the ${PLACE_WORDS[place] ?? place}`;
}
