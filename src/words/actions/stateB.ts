/** Words of the test action `state-b`. */
import type { ActionWords } from '../actionWords.ts';
import { above, below, LIVE_LINE, unlessWithin } from '../rangeWords.ts';
import { range } from '../values.ts';

export const stateB: ActionWords = {
  purpose: 'Show that the unit finds the vehicle, offers the right current and supplies nothing yet.',
  stops: {
    voltage: 'the outlet is live though no vehicle asks: isolate and keep people away',
  },
  lines: {
    'plug-held': {
      text: 'holds the plug as soon as a vehicle is connected (B)',
      why: 'By its sheet this unit locks at once. A plug that is not locked could later be pulled out live.',
      otherwise: 'a plug that is not held, with no sound from the lock',
    },
    voltage: {
      text: 'has voltage on its outlet while the vehicle is connected and does not ask (B)',
      why: 'Until the vehicle asks, its driver may pull the connector at any moment. Its contacts would come out live.',
      otherwise: `${LIVE_LINE}, though the vehicle has not asked`,
    },
    high: {
      text: (v) => `brings the pilot’s positive peak to about 9 V (${range(v, 'high', 'V')})`,
      why: 'The vehicle’s 2.74 kΩ and the unit’s own 1 kΩ divide the 12 V of the pilot. At a wrong voltage the unit mistakes one state for another.',
      otherwise: (v) =>
        `a peak outside that range, such as ${below(v, 'high', 0.37, 1)} or ${above(v, 'high', 0.41, 1)} V${unlessWithin(v, 'high', 12, ', or 12 V as with no vehicle')}`,
    },
    offers: {
      text: (v) =>
        `offers a current: the pilot oscillates at about 1 kHz (${range(v, 'frequency', 'Hz')}), its negative peak at about −12 V (${range(v, 'low', 'V')})`,
      why: 'An oscillating pilot tells the vehicle how much it may draw; at a wrong frequency the vehicle refuses. The vehicle’s diode blocks the negative half, so that half keeps its −12 V.',
      otherwise: (v) =>
        `a steady pilot, a frequency such as ${below(v, 'frequency', 30)} Hz, or a negative peak such as ${above(v, 'low', 1.4)} V`,
    },
    'too-much': {
      text: 'offers more current than the lowest of unit rating, cable rating and set limit',
      why: 'A vehicle may draw all that it is offered. The weakest part of unit, cable and circuit then overheats, or a fuse blows.',
      otherwise: 'a duty above the one due, often by 10 points, such as 63 % instead of 53 %',
    },
    diode: {
      text: 'refuses a vehicle whose diode is shorted',
      why: 'The stand-in’s diode is sound in this test. A unit that never looks at the negative half would behave just the same.',
    },
  },
  figures: {
    offer: {
      text: 'offers for each line',
      why: 'The lowest of unit rating, cable rating and set limit. The pilot’s duty stands for the current in each line, not for their sum.',
    },
  },
};
