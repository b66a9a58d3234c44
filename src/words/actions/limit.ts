/** Words of the test action `limit`. */
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const limit: ActionWords = {
  title: 'The site’s limit goes down',
  purpose: 'Show that the unit offers less when the site leaves less, and nothing below 6 A.',
  lines: {
    'too-much': {
      text: 'offers more than the site’s limit 10 s after it changed',
      why: 'The service would be overloaded.',
    },
    follows: {
      text: 'offers what the site leaves, when that is 6 A or more',
      why: 'The limit is followed within 10 s, down and up.',
    },
    'under-six': {
      text: 'goes steady, or to 10 %, when less than 6 A is left',
      why: 'No duty offers less than 6 A.',
    },
    digital: {
      text: 'shows a duty of 3 to 7 %',
      why: 'That asks for a digital link, which this unit does not have.',
    },
    sensor: {
      text: 'learns the limit from a sensor on the right conductor, the right way round',
      why: 'The limit was set by hand: a sensor is proved with a known load.',
    },
    vehicle: {
      text: 'keeps the vehicle to what it offers',
      why: 'The stand-in draws nothing, and would not follow the pilot if it did.',
    },
  },
  figures: {
    lowered: {
      text: (v) => `offers with ${num(v, 'amps')} A left, per line`,
      why: 'The least of everything that limits it.',
    },
  },
};
