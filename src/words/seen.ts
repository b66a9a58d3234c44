/** What is seen, heard and found at the bench, in words. */
import type { Happening } from '../bench/world.ts';
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
};
