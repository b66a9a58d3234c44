/** What instruments can be set to, and what they tell of by name. */
import type { Amps } from '../../laws/quantities.ts';
import { PLACES } from '../terminals.ts';

/** BS 7671 Table 64 and lower ones that a maker may allow, V. */
export const TEST_VOLTAGES = [50, 100, 250, 500, 1000] as const;

export const VOLTAGE_TOOLS = ['two-pole', 'meter'] as const;
export type VoltageTool = (typeof VOLTAGE_TOOLS)[number];

export const LOOP_CURRENTS = ['low', 'full'] as const;
export type LoopCurrent = (typeof LOOP_CURRENTS)[number];

export const WAVEFORMS = [
  'sinusoidal',
  'half-wave-positive',
  'half-wave-negative',
  'smooth-dc-positive',
  'smooth-dc-negative',
] as const;
export type Waveform = (typeof WAVEFORMS)[number];

export const MODES = ['fixed', 'ramp'] as const;
export type ResidualMode = (typeof MODES)[number];

export const TRIPPED_WHAT = ['unit', 'upstream', 'both', 'breaker', 'none'] as const;
export type TrippedWhat = (typeof TRIPPED_WHAT)[number];

/** Five times the greatest residual rating of a scenario, 0.5 A. */
export const GREATEST_TEST_CURRENT: Amps = 2.5;

export const OPENINGS = [
  'C-to-B',
  'C-to-A',
  'unplug',
  'pilot-short',
  'pilot-open',
  'earth-open',
  'proximity-lost',
] as const;
export type Opening = (typeof OPENINGS)[number];

/** Places whose lines an instrument may be put on as they are; `incoming` is the live side of the origin. */
export const LINE_PLACES = ['incoming', ...PLACES] as const;
export type LinePlace = (typeof LINE_PLACES)[number];
