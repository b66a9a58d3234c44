/**
 * What a piece of the installation is to the electrical network: a resistance between two named nodes,
 * perhaps behind a contact. The site, the unit and the vehicle stand-in each describe themselves as a list of
 * parts; a fault changes parts; the bench turns them into a topology. Which contacts are closed is not known here.
 */

import type { Amps, Ohms, Seconds, Siemens, Volts } from '../laws/quantities.ts';
import type { Phasor } from '../network/potentials.ts';

/** Insulation of an open contact or a broken conductor, Ω. A design choice: finite, so that nothing ever floats. */
export const OPEN: Ohms = 10e9;

export interface Part {
  readonly id: string;
  readonly a: string;
  readonly b: string;
  /** Resistance while the path is closed, Ω, at least 0.1 mΩ. */
  readonly resistance: Ohms;
  /** Capacitive susceptance at 50 Hz in parallel, S. */
  readonly susceptance?: Siemens;
  /** The contact that interrupts the path, by name; without one it is always closed. */
  readonly contact?: string;
  /**
   * Growth of the resistance with the square of the current that stands in it, Ω/A²: a joint that its own loss warms, at
   * the temperature that it settles to. A test of moments does not warm it.
   */
  readonly warms?: number;
  /** Water that dries from the moment the bench stands: `resistance` is what it begins with. */
  readonly dries?: Drying;
  /** Resistance across the open contact, Ω; OPEN unless something bleeds across it. */
  readonly openResistance?: Ohms;
}

/** A staircase: so many times the resistance after each `every` seconds, up to `to`, which is dry. */
export interface Drying {
  readonly every: Seconds;
  readonly times: number;
  readonly to: Ohms;
}

/** Resistance of a part of this much after so many steps of its drying, Ω. */
export function driedBy(wet: Ohms, { times, to }: Drying, steps: number): Ohms {
  let ohms = wet;
  for (let step = 0; step < steps && ohms < to; step++) ohms *= times;
  return Math.min(ohms, to);
}

/** A mains source in series with a part, driving current from its `a` to its `b`. */
export interface Source {
  readonly part: string;
  readonly mains: Phasor;
}

/** A part that conducts one way only, above a drop, in the d.c. planes. */
export interface OneWayPart {
  readonly id: string;
  readonly a: string;
  readonly b: string;
  readonly drop: Volts;
}

/** Where an inspection looks. */
export const INSPECTED = [
  'enclosure',
  'terminals',
  'protective devices',
  'outlet',
  'cable',
  'position',
  'labels',
] as const;

/** Something that an inspection shows, by an id; its words stand in src/words/seen.ts. */
export interface Found {
  readonly where: (typeof INSPECTED)[number];
  readonly what: Sight;
}
export type Sight =
  | {
      readonly id:
        | 'gland-turns'
        | 'plate-says-ip41'
        | 'shell-cracked'
        | 'lid-hangs-open'
        | 'tether-unclamped'
        | 'nothing-before-it'
        | 'bonded-tap-in-reach'
        | 'screw-turns'
        | 'not-in-schedule'
        | 'clamp-corroded'
        | 'unit-device-ac'
        | 'origin-device-ac'
        | 'origin-device-lines-only'
        | 'bonding-off'
        | 'terminal-browned';
    }
  /** Rated so, where the papers have another rating, A. */
  | { readonly id: 'breaker-rated'; readonly type: string; readonly rated: Amps; readonly meant: Amps }
  | {
      readonly id: 'residual-rated';
      readonly where: 'unit' | 'origin';
      readonly rated: Amps;
      readonly meant: Amps;
    }
  /** Marked with this type, where the papers have another. */
  | { readonly id: 'breaker-marked'; readonly type: string; readonly meant: string; readonly rating: Amps };

export const sameSight = (a: Sight, b: Sight): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Every pair of the named conductors once, in the order given. */
export const pairsOf = <T>(items: readonly T[]): readonly (readonly [T, T])[] =>
  items.flatMap((a, i) => items.slice(i + 1).map((b): readonly [T, T] => [a, b]));

/**
 * Insulation between every pair of conductors at one place, each as its own part so that a fault can lower one; with the
 * capacitive susceptance between the two, S at 50 Hz, where that counts.
 */
export const insulationAt = (
  id: string,
  place: string,
  conductors: readonly string[],
  resistance: Ohms,
  susceptance?: Siemens,
): readonly Part[] =>
  pairsOf(conductors).map(([x, y]) => ({
    id: `insulation.${id}.${x}-${y}`,
    a: `${place}.${x}`,
    b: `${place}.${y}`,
    resistance,
    ...(susceptance === undefined ? {} : { susceptance }),
  }));
