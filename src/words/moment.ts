/** An opened moment in words: what the drawing letters on its parts. */
import type { Halves, Latch } from '../attempt/opened/moment.ts';
import type { Potential } from '../attempt/opened/potentials.ts';
import type { Damage } from '../bench/damages.ts';
import { PILOT_ALIKE } from '../bench/readings/pilot.ts';
import type { Commands } from '../unit/unitChart.ts';
import { mainsText, pilotText } from './quantities.ts';

/** Where a conductor stands against true earth. */
export const potentialText = ({ volts, hold, tiedTo }: Potential): string =>
  hold === 'firm'
    ? mainsText(volts)
    : tiedTo !== null
      ? `${mainsText(volts)}, floating`
      : hold === 'faint'
        ? `${mainsText(volts)}, faint`
        : 'floating';

/** Both halves, or the one level where they are the same. */
export const levelsText = ({ high, low }: Halves): string =>
  Math.abs(high - low) < PILOT_ALIKE ? pilotText(high) : `${pilotText(high)} / ${pilotText(low)}`;

export const DRIVE_WORDS: Readonly<Record<Commands['pilot'], string>> = {
  unpowered: 'no pilot',
  positive: 'pilot steady',
  oscillating: 'pilot oscillates',
  negative: 'pilot steady, negative',
};

/** Positions, and what is driven, as they are lettered on the drawing too. */
export const STANDING_WORDS = {
  none: 'none',
  open: 'open',
  closed: 'closed',
  tripped: 'tripped',
  out: 'out',
  free: 'free',
  held: 'held',
  driven: 'driven',
  'not-driven': 'not driven',
  connected: 'connected',
  'taken-off': 'taken off',
} as const satisfies Record<string, string>;

const LATCH_WORDS: Readonly<Record<Latch, string>> = {
  fault: 'fault latched',
  'residual tripped': 'residual trip latched',
  'direct tripped': 'd.c. trip latched',
  'not available': 'says not available',
  'earth opened': 'open-PEN measure locked out',
  stopped: 'stopped by hand',
};
export const latchText = (latches: readonly Latch[]): string =>
  latches.length === 0 ? 'nothing' : latches.map((latch) => LATCH_WORDS[latch]).join(', ');

const DAMAGE_WORDS: Readonly<Record<Damage, string>> = {
  pilot: 'pilot',
  electronics: 'electronics',
};
export const damageText = (damaged: readonly Damage[]): string =>
  damaged.map((one) => DAMAGE_WORDS[one]).join(', ');
