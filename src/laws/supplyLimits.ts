/**
 * What a public low-voltage supply in Great Britain is to be like at the origin, and when it counts
 * as dangerous: voltage, frequency, declared loops, fault levels, the window for a broken PEN
 * conductor. Leaves what a site's supply really does to the site.
 */

import type { Hertz, Range, Seconds, Volts } from './quantities.ts';

/**
 * Line to neutral, 230 V +10 % -6 %. Source: Electricity Safety, Quality and Continuity Regulations
 * 2002, regulation 27; first SI 1994/3021.
 */
export const SUPPLY_VOLTAGE = {
  least: 216.2,
  nominal: 230,
  greatest: 253,
} as const satisfies Range & { nominal: Volts };

/** Line to line, 400 V +10 % -6 %. Source as SUPPLY_VOLTAGE. */
export const LINE_TO_LINE = {
  least: 376,
  nominal: 400,
  greatest: 440,
} as const satisfies Range & { nominal: Volts };

/** 50 Hz ±1 %. Source: the same regulations, regulation 27; from memory. */
export const SUPPLY_FREQUENCY = {
  least: 49.5,
  nominal: 50,
  greatest: 50.5,
} as const satisfies Range & { nominal: Hertz };

/**
 * Window of the device that finds a broken PEN conductor by the line-neutral voltage, r.m.s. It is
 * for single-phase installations only and opens above or below.
 * Source: BS 7671:2018+A1:2020, 722.411.4.1(iv); the figures from memory.
 */
export const OPEN_PEN_WINDOW = { least: 207, greatest: 253 } as const satisfies Range;

/**
 * Greatest time for a device against a broken PEN conductor to open live conductors and protective
 * conductor. Source: BS 7671:2018+A1:2020, 722.411.4.1(iii); the same in (iv) from memory.
 */
export const OPEN_PEN_TIME: Seconds = 5;

/** Time such a device may ignore. Source: 722.411.4.1(iii), from memory. */
export const OPEN_PEN_IGNORED: Seconds = 4;

/**
 * Voltage between the protective conductor and true earth that must not last, r.m.s.
 * Source: BS 7671:2018+A1:2020, 722.411.4.1(i) to (iii).
 */
export const TOUCH_LIMIT: Volts = 70;

/**
 * Voltage drop from the origin, as a share of nominal voltage, from a public supply.
 * Source: BS 7671:2018+A2:2022, Appendix 4 (3 % lighting, 5 % other uses), from memory.
 */
export const VOLTAGE_DROP_SHARE = { lighting: 0.03, other: 0.05 } as const;
