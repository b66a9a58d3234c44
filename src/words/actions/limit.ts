/** Words of the test action `limit`. */
import { OFFER_RANGE } from '../../laws/pilotDuty.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const FOLLOW = `${GREATEST_DUTY_CHANGE} s`;
const LEAST = `${OFFER_RANGE.least} A`;

export const limit: ActionWords = {
  purpose: `Show that the unit offers less when the site leaves less, and makes no offer under ${LEAST}.`,
  lines: {
    'too-much': {
      text: `still offers more than the new limit ${FOLLOW} after the site’s limit went down`,
      why: 'The vehicle goes on drawing the old current on top of the site’s other loads. The main fuse carries the sum, heats and blows.',
      otherwise: `the old duty ${FOLLOW} after the change, such as 53.3 % (32 A) with 10 A left`,
    },
    follows: {
      text: `offers the current that the site leaves, by its duty, as long as that is ${LEAST} or more`,
      why: 'The unit changes the duty, and the vehicle changes its current to match. An offer too low makes the charge slow, one too high overloads the service.',
      otherwise: 'a duty more than half a point off, such as 53.3 % where 10 A needs 16.7 %',
    },
    'under-six': {
      text: `goes to a steady pilot, or to 10 % (${LEAST}), when less than ${LEAST} is left`,
      why: `The scale of duties begins at 10 % for ${LEAST}, so no duty stands for less. A steady pilot stops the charge until more is left.`,
      otherwise: 'a pilot that goes on oscillating at another duty than 10 %',
    },
    digital: {
      text: 'sends a duty of 3 to 7 %',
      why: 'Such a duty tells the vehicle to wait for a digital link. This unit has none, so the vehicle would wait and never charge.',
      otherwise: 'a duty near 5 % in the pilot reading',
    },
    sensor: {
      text: 'gets its limit from a current sensor that is fitted the right way round',
      why: 'This limit was set by hand, so no sensor had a part in it. Only a known load, switched on beside the unit, shows whether a sensor counts it the right way round.',
    },
    vehicle: {
      text: 'makes the vehicle draw no more than the pilot offers',
      why: 'The stand-in draws no charging current, whatever the pilot offers. Keeping to the offer is the work of a real vehicle.',
    },
  },
  figures: {
    lowered: {
      text: (v) => `offers with ${num(v, 'amps')} A left, per line`,
      why: 'The lowest of unit rating, cable rating and limits counts.',
    },
  },
};
