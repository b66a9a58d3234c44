/** Words of the test action `next-point`. */
import { OFFER_RANGE } from '../../laws/pilotDuty.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const FOLLOW = `${GREATEST_DUTY_CHANGE} s`;
const LEAST = `${OFFER_RANGE.least} A`;
const amps = (v: Parameters<typeof num>[0], key: string): string => `${Number(num(v, key).toFixed(1))} A`;

export const nextPoint: ActionWords = {
  purpose: 'Show that the unit offers less while the next point charges, and more again once it is idle.',
  lines: {
    'beside-idle': {
      text: 'offers, while the next point is idle, the lowest of its set current, its cable and what the house leaves of the service',
      why: (v) =>
        `An idle point draws nothing, so only the house’s loads (${amps(v, 'house')}) count against the limit of ${amps(v, 'limit')}. An offer that stays low makes the charge slow for no reason.`,
      otherwise: 'a duty that stays as low as beside a point that charges, or one above the set current',
    },
    'over-service': {
      text: (v) =>
        `offers so much, ${FOLLOW} after the next point begins to draw ${amps(v, 'next')}, that everything together is above ${amps(v, 'limit')} a line`,
      why: (v) =>
        `House ${amps(v, 'house')} + next point ${amps(v, 'next')} leave ${amps(v, 'left')} of ${amps(v, 'limit')}. A vehicle draws all that it is offered, so the service carries the sum for hours: its fuse heats and blows.`,
      otherwise: 'the duty of the idle point still, or one lowered by too little',
    },
    'keeps-offering': {
      text: `goes on offering what is left while the next point charges, as long as that is ${LEAST} or more`,
      why: 'The unit lowers the duty and the vehicle charges more slowly. An offer far below what is left, or a steady pilot, leaves the second car without charge all evening.',
      otherwise: 'a steady pilot, or a duty well below what is left',
    },
    'next-gives-way': {
      text: 'makes the next point offer less while this unit charges',
      why: 'Nothing was read at the next point, and its papers say that it does not give way. Only a test of that point shows what it offers.',
    },
    'intake-fuse': {
      text: 'has a fuse at its intake of the rating in its papers',
      why: 'The duty follows the current and the unit’s setting, and the fuse has no part in that. Its carrier shows the rating, and it belongs to the distributor.',
    },
  },
  figures: {
    left: {
      text: (v) => `offers while the next point draws ${amps(v, 'next')}, per line`,
      why: 'Take the house’s loads and the next point from the limit of the service. The lowest of that, unit rating and set current counts.',
    },
  },
};
