/** Words of the test action `pilot-short`. */
import { GREATEST_OFF_AFTER_PILOT_SHORT } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { LIVE_LINE } from '../rangeWords.ts';
import { num } from '../values.ts';

const OFF = `${GREATEST_OFF_AFTER_PILOT_SHORT} s`;

export const pilotShort: ActionWords = {
  purpose: 'Show that the unit switches off when a shorted pilot hides the vehicle and its earth.',
  stops: {
    voltage: 'the unit supplies without seeing the vehicle or its earth: isolate',
  },
  lines: {
    'off-in-time': {
      text: (v) =>
        `switches the outlet off within ${num(v, 'opening-greatest')} s when the pilot is shorted to PE`,
      why: 'The short sends the pilot’s current back before it reaches the vehicle. The unit can no longer see whether the vehicle is there and has its earth.',
      otherwise: (v) =>
        `an opening time above ${num(v, 'opening-greatest')} s, or an outlet that never goes dead`,
    },
    voltage: {
      text: 'leaves voltage on the outlet while the pilot is shorted',
      why: 'Behind the short the vehicle could lose its earth, or be unplugged, and the unit would not see it. Its body or a bare contact could then be live.',
      otherwise: `${LIVE_LINE}, though the pilot is at 0 V`,
    },
    'near-zero': {
      text: 'brings the pilot to about 0 V (−1 to +1 V) while it is shorted',
      why: 'The short joins the pilot to PE, so the source’s 12 V drop across its own 1 kΩ and about 12 mA flow. The pilot then stands near 0 V, whatever the vehicle does.',
      otherwise: 'some volts left on the pilot, steady or oscillating',
    },
    fault: {
      text: 'shows a fault on its display while the pilot is shorted',
      why: 'The unit’s sheet says so. Without a message the driver sees a dead outlet and does not know why.',
      otherwise: 'a display still at charging, or at ready or waiting',
    },
    'pe-lost': {
      text: 'switches off when the vehicle loses its PE',
      why: 'PE stayed connected in this test. A lost PE brings the pilot to 12 V and not to 0 V, and the unit may treat the two differently.',
    },
  },
  limits: {
    opening: {
      text: 'greatest time from the short to a dead outlet',
      sum: `at most ${OFF} after the pilot is shorted to PE`,
    },
  },
};
