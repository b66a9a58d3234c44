/**
 * The terminals that leads can be put on, by the names that people use, and the network nodes they stand for now:
 * `outlet` is the tether's connector, or the socket's contacts, or the far end of a plugged customer's cable.
 */
import { CONDUCTORS } from '../laws/conductors.ts';
import type { Site } from '../site/site.ts';
import { livesOf } from '../site/site.ts';
import type { World } from './world.ts';

export const PLACES = ['origin', 'supply', 'outlet'] as const;
export type Place = (typeof PLACES)[number];
export type Terminal = string;
/** One terminal, or several joined. */
export type Probe = Terminal | readonly Terminal[];

const SINGLE = { met: 'met', earth: 'rod', case: 'case' } as const;

/** Every terminal of this site, in the order of the installation. */
export function terminalsOf(site: Site): readonly Terminal[] {
  const conductors = [...livesOf(site), 'PE'];
  return [
    'earth',
    'met',
    ...conductors.map((x) => `origin.${x}`),
    ...conductors.map((x) => `supply.${x}`),
    'case',
    ...CONDUCTORS.filter((x) => conductors.includes(x) || x === 'CP' || x === 'PP').map((x) => `outlet.${x}`),
  ];
}

export const terminalsIn = (probe: Probe): readonly Terminal[] =>
  typeof probe === 'string' ? [probe] : probe;

export const labelOf = (probe: Probe): string => terminalsIn(probe).join(' + ');

export const isAt = (terminal: Terminal, place: Place): boolean => terminal.startsWith(`${place}.`);

/** The network node that a terminal stands for. The terminal must be one of terminalsOf(site). */
export function nodeOf(world: World, terminal: Terminal): string {
  if (terminal in SINGLE) return SINGLE[terminal as keyof typeof SINGLE];
  const [place, conductor] = terminal.split('.');
  if (place !== 'outlet') return terminal;
  const socketBare = world.installation.design.sheet.outlet === 'socket' && !world.plant.standIn.plugged;
  return `${socketBare ? 'socket' : 'end'}.${conductor}`;
}
