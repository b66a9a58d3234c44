/** Words of the test action `unplug`. */
import { GREATEST_OFF_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { pilotAtRest } from '../pilotWords.ts';
import { below, LIVE_LINE, offWithin, perhaps, unlessWithin } from '../rangeWords.ts';
import { milliseconds } from '../values.ts';

const OFF = `${milliseconds(GREATEST_OFF_AFTER_UNPLUGGING)} ms`;

export const unplug: ActionWords = {
  purpose: 'Time how soon the outlet is dead when the vehicle goes, and show that the session ends.',
  stops: {
    voltage: 'the outlet is live after the vehicle has gone: isolate and keep people away',
  },
  lines: {
    'off-in-time': {
      text: (v) => `switches the outlet off within ${offWithin(v)} of the vehicle’s going`,
      why: 'As a connector is pulled, its pilot contact parts before the power contacts. If the contactor opens in that time, they part dead and without an arc.',
      otherwise: (v) =>
        `an opening time above ${offWithin(v)}, ${perhaps(v)}, or an outlet that never goes dead`,
    },
    voltage: {
      text: 'leaves voltage on the outlet after the vehicle has gone',
      why: 'Nothing loads the pilot any more, so the contactor has to open. The contacts of the connector now lie open to fingers.',
      otherwise: `${LIVE_LINE}, with no vehicle there`,
    },
    'twelve-volts': {
      text: (v) => `brings the pilot back to ${pilotAtRest(v)} after the vehicle has gone`,
      why: 'No current flows through the pilot’s 1 kΩ any more, so its full voltage is back. That is its positive peak, as it may go on oscillating for a while.',
      otherwise: (v) =>
        `another voltage, such as ${below(v, 'high', 0.6, 1)} V${unlessWithin(v, 'high', 9, ', or about 9 V as if a vehicle were still there')}`,
    },
    'session-ends': {
      text: 'shows ready for the next vehicle on its display',
      why: 'By its sheet the session ends when the pilot’s load goes. Otherwise the next driver would charge on this driver’s permission.',
      otherwise: 'a display still at charging or waiting, or a fault shown',
    },
    'earth-lost': {
      text: 'switches off when a connected vehicle loses PE alone',
      why: 'Pulling the connector parts line, neutral, PE and pilot together. PE alone may also break while the rest stays joined, and another test tries that.',
    },
  },
  limits: {
    opening: {
      text: 'greatest time from the vehicle’s going to a dead outlet',
      sum: `at most ${OFF}, from C2 to A`,
    },
  },
};
