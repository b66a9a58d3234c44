/** Words of the test action `coding-in-use`. */
import { GREATEST_OFF_AFTER_PROXIMITY_LOSS } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { offWithin } from '../rangeWords.ts';
import { milliseconds, num } from '../values.ts';

const LOST = milliseconds(GREATEST_OFF_AFTER_PROXIMITY_LOSS);
const percent = (share: number): number => Math.round(1000 * share) / 10;

export const codingInUse: ActionWords = {
  purpose: 'See whether the unit goes on reading the cable’s coding while it supplies, and acts on it.',
  stops: {
    'stays-live': 'the socket-outlet stays live with its plug’s coding gone: isolate, and keep people away',
  },
  lines: {
    'lost-in-time': {
      text: (v) => `switches the outlet off within ${offWithin(v)} when the plug’s coding is lost`,
      why: 'When the unit no longer reads the coding resistor, the plug may be on its way out. Its contacts would part live in somebody’s hand.',
      otherwise: (v) => `an opening time above ${offWithin(v)}, or an outlet that never goes dead`,
    },
    'stays-live': {
      text: 'goes on supplying while the coding is missing and the vehicle still asks',
      why: 'Without a coding resistor the unit cannot know what the cable carries, or whether the plug is still home. It may not supply until it reads one again.',
      otherwise: 'about 230 V from a line to PE at the outlet a second after the coding was lost',
    },
    'over-code': {
      text: (v) =>
        `after ${num(v, 'seconds')} s, cuts off a vehicle that draws over ${percent(num(v, 'margin'))} % more than its cable is coded for`,
      why: 'Current above the coding overheats the cable, and the circuit’s breaker is too large to see it. How much and how long is on the unit’s sheet.',
      otherwise: 'voltage still at the outlet after that time, and the display at charging',
    },
    'each-size': {
      text: 'offers a smaller cable no more than it can carry',
      why: 'That is said by the pilot before anything is drawn, once for each size of cable. Here the coding goes, or the vehicle disobeys.',
    },
  },
  limits: {
    opening: {
      text: 'greatest time from the loss of the plug’s coding to a dead outlet',
      sum: `at most ${LOST} ms from the loss of proximity (PP), as for a lost pilot`,
    },
  },
};
