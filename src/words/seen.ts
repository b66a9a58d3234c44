/** What is seen, heard and found at the bench, in words. */
import type { Happening } from '../bench/world.ts';
import type { Found, Sight } from '../site/part.ts';
import type { Indicator } from '../unit/unitChart.ts';

/** What the unit indicates, as it would be said aloud. */
export const INDICATOR_WORDS: Readonly<Record<Indicator, string>> = {
  dark: 'dark',
  starting: 'starting',
  ready: 'ready',
  connected: 'connected',
  waiting: 'waiting',
  preparing: 'preparing',
  charging: 'charging',
  stopped: 'stopped',
  tripped: 'tripped',
  fault: 'fault',
};

export const HAPPENING_WORDS: Readonly<Record<Happening['what'], string>> = {
  'contactor closed': 'contactor closed',
  'contactor opened': 'contactor opened',
  'plug locked': 'plug locked',
  'plug released': 'plug released',
  'unit breaker tripped': 'unit breaker tripped',
  'upstream device tripped': 'upstream device tripped',
  'circuit breaker tripped': 'circuit breaker tripped',
  'instrument fuse opened': 'instrument fuse opened',
  'detector dark': 'detector dark on its proving unit',
};

export const INSPECTED_WORDS: Readonly<Record<Found['where'], string>> = {
  enclosure: 'enclosure',
  terminals: 'terminals',
  'protective devices': 'protective devices',
  outlet: 'outlet',
  cable: 'cable',
  position: 'position',
  labels: 'labels',
};

type PlainSight = Exclude<Sight['id'], 'breaker-marked' | 'breaker-rated' | 'residual-rated'>;

const SIGHT_WORDS: Readonly<Record<PlainSight, string>> = {
  'gland-turns': 'the gland turns by hand, and there is a water mark below it',
  'plate-says-ip41': 'the plate says IP41, and it hangs in the rain',
  'shell-cracked': 'the connector’s shell is cracked through, and a contact is burnt',
  'lid-hangs-open': 'the lid hangs open by itself',
  'tether-unclamped': 'the tether has no clamp and can be pulled out some way',
  'bonded-tap-in-reach':
    'a tap on a metal pipe that is bonded to the house’s earth, an arm’s length from the unit and its vehicle',
  'nothing-before-it': 'it stands at bumper height in line with the bay, with no post before it',
  'screw-turns': 'the line screw turns half round by hand, and the sleeve is browned',
  'not-in-schedule': 'the circuit is not in the schedule, and the six-monthly test notice is missing',
  'clamp-corroded': 'green corrosion on the electrode’s clamp',
  'unit-device-ac': 'the unit’s residual current device bears the mark of type AC',
  'origin-device-ac': 'the residual current device at the origin bears the mark of type AC',
  'terminal-browned': 'the line terminal’s plastic is browned and smells burnt, though its screw is tight',
  'bonding-off': 'the bonding conductor has been cut off at the water pipe',
  'origin-device-lines-only':
    'by the diagram on it, the residual current device at the origin opens the lines and leaves the neutral',
};

/** Whole milliamperes: ratings are no other. */
const milliamps = (amps: number): string => `${Math.round(1000 * amps)} mA`;

export function sightText(sight: Sight): string {
  switch (sight.id) {
    case 'breaker-marked':
      return `the breaker is marked ${sight.type}${sight.rating}, not ${sight.meant}${sight.rating}`;
    case 'breaker-rated':
      return `the breaker is marked ${sight.type}${sight.rated}, not ${sight.type}${sight.meant}`;
    case 'residual-rated': {
      const device =
        sight.where === 'unit'
          ? 'the unit’s residual current device'
          : 'the residual current device at the origin';
      return `${device} is marked ${milliamps(sight.rated)}, not ${milliamps(sight.meant)}`;
    }
    default:
      return SIGHT_WORDS[sight.id];
  }
}
