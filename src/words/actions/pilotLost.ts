/** Words of what losing the pilot and losing PE at the vehicle have in common. */
import { GREATEST_OFF_AFTER_EARTH_LOSS } from '../../laws/timing.ts';
import type { LimitWords, LineWords } from '../actionWords.ts';
import { pilotAtRest } from '../pilotWords.ts';
import { below, LIVE_LINE, offWithin, perhaps, unlessWithin } from '../rangeWords.ts';
import { milliseconds } from '../values.ts';

/** The same time for both. */
const OFF = `${milliseconds(GREATEST_OFF_AFTER_EARTH_LOSS)} ms`;

interface Lost {
  /** What parts, as in "when … opens". */
  readonly what: string;
  readonly whyOff: string;
  readonly whyDead: string;
}

export const lossLines = ({ what, whyOff, whyDead }: Lost): Readonly<Record<string, LineWords>> => ({
  'off-in-time': {
    text: (v) => `switches the outlet off within ${offWithin(v)} when ${what} opens`,
    why: whyOff,
    otherwise: (v) =>
      `an opening time above ${offWithin(v)}, ${perhaps(v)}, or an outlet that never goes dead`,
  },
  voltage: {
    text: `leaves voltage on the outlet while ${what} is open`,
    why: whyDead,
    otherwise: `${LIVE_LINE}, though ${what} is open`,
  },
  'as-unplugged': {
    text: (v) => `brings the pilot to ${pilotAtRest(v)} while ${what} is open`,
    why: 'No current flows through the pilot’s 1 kΩ, so no voltage drops there. To the unit this looks like an unplugging, so it need not show a fault.',
    otherwise: (v) =>
      `another voltage, such as ${below(v, 'high', 0.6, 1)} V${unlessWithin(v, 'high', 9, ', or about 9 V as if a vehicle were still there')}`,
  },
  'offers-again': {
    text: `offers a current again once ${what} is whole again`,
    why: 'To the unit the vehicle had only gone, so there is nothing to clear. The mended vehicle looks like a new one, and is offered a current once it has permission.',
    otherwise: 'a steady pilot at about 9 V, or a fault still shown',
  },
});

export const lossLimit = (text: string): LimitWords => ({
  text,
  sum: `at most ${OFF} once the pilot’s loop is open`,
});
