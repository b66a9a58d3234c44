/**
 * The names of the conductors, in the order in which they are always listed. Every floor takes the
 * words from here. Where a conductor runs and what its resistance is belongs to the site.
 */

/** Line conductors. Single-phase equipment uses L1. */
export const LINES = ['L1', 'L2', 'L3'] as const;
export type Line = (typeof LINES)[number];

/** Live conductors: the lines and the neutral. */
export const LIVES = [...LINES, 'N'] as const;
export type Live = (typeof LIVES)[number];

/**
 * All contacts of the Mode 3 interface: live conductors, protective conductor, control pilot (CP)
 * and proximity (PP). Source: IEC 61851-1:2017, 9.3 and 9.7.
 */
export const CONDUCTORS = [...LIVES, 'PE', 'CP', 'PP'] as const;
