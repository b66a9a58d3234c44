/**
 * The terminals that leads can be put on, by the names that people use. Which network node each stands for is
 * port.ts's business.
 */
import { CONDUCTORS } from '../laws/conductors.ts';
import type { Site } from '../site/site.ts';
import { livesOf } from '../site/site.ts';

export const PLACES = ['origin', 'supply', 'outlet'] as const;
export type Place = (typeof PLACES)[number];
export type Terminal = string;
/** One terminal, or several joined. */
export type Probe = Terminal | readonly Terminal[];

/**
 * Every terminal of this site, in the order of the installation. `incoming.X` is the live side of the origin, which stays
 * live when the circuit is isolated; `house` is the earthing terminal of a house that is earthed otherwise than the
 * circuit; `earthing` is the distributor's earth, as it is with the earthing conductor off.
 */
export function terminalsOf(site: Pick<Site, 'phases' | 'earthing' | 'house'>): readonly Terminal[] {
  const conductors = [...livesOf(site), 'PE'];
  return [
    'earth',
    'met',
    ...(site.house === undefined ? [] : ['house']),
    ...(site.earthing === 'TT' ? [] : ['earthing']),
    ...livesOf(site).map((x) => `incoming.${x}`),
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

type Between = readonly [Probe, Probe];

/** Every terminal that the leads of a measurement are on. */
export const terminalsBetween = (between: Between): readonly Terminal[] =>
  between.flatMap((probe) => [...terminalsIn(probe)]);

/** Whether a lead is on a contact of the electronics' own circuits. */
export const onPilot = (between: Between): boolean =>
  terminalsBetween(between).some((t) => t.endsWith('.CP') || t.endsWith('.PP'));

/** Whether a lead is on the protective conductor or what is joined to it. */
export const onEarth = (between: Between): boolean => terminalsBetween(between).some(isEarth);

export const isEarth = (terminal: Terminal): boolean =>
  terminal.endsWith('.PE') || terminal === 'met' || terminal === 'case';
