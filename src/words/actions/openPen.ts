/** Words of the test action `open-pen`. */
import { OPEN_PEN_IGNORED, OPEN_PEN_TIME, OPEN_PEN_WINDOW, TOUCH_LIMIT } from '../../laws/supplyLimits.ts';
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { is } from '../values.ts';

const WITHIN = `${OPEN_PEN_TIME} s`;
const WINDOW = `${OPEN_PEN_WINDOW.least} to ${OPEN_PEN_WINDOW.greatest} V`;
const TOUCH = `${TOUCH_LIMIT} V`;

/** What hangs on PE beyond the pole. */
const beyond = (v: Values): string => (is(v, 'outlet') ? 'the outlet’s PE' : 'the case');

export const openPen: ActionWords = {
  purpose: 'Show that the unit parts the vehicle from a broken PEN conductor, PE included, and stays parted.',
  stops: {
    opens: 'the open-PEN measure does not open, so a broken PEN makes the vehicle’s body live: isolate',
    'opens-earth':
      'the open-PEN measure leaves PE closed, so the vehicle’s body stays on a broken earth: isolate',
    'onto-hazard': 'the unit closes while the disturbance lasts, so the vehicle’s body may be live: isolate',
  },
  lines: {
    'opens-earth': {
      text: 'opens the protective conductor (PE) as well',
      why: 'The vehicle’s body is joined to PE. When the PEN breaks, PE itself can become live, and opening line and neutral alone does not help.',
      otherwise: (v) =>
        is(v, 'window')
          ? `a meter at about 0 V from earthing terminal to ${beyond(v)}, as the two are still joined`
          : `more than ${TOUCH} from ${beyond(v)} to true earth, as on the earthing terminal`,
    },
    'rides-out': {
      text: 'supplies again by itself after a disturbance of 3 s',
      why: `The unit’s sheet says so. A measure may ignore up to ${OPEN_PEN_IGNORED} s, so that a motor that starts nearby does not end a charge; no rule asks it to.`,
      otherwise: 'no voltage at the outlet and a fault shown after the 3 s, until somebody resets the unit',
    },
    opens: {
      text: `keeps the outlet dead from ${WITHIN} after the disturbance began`,
      why: (v) =>
        is(v, 'window')
          ? `With the PEN broken, load current shifts the neutral, and line to neutral leaves ${WINDOW}. PE is joined to that neutral, so the vehicle’s body shifts with it.`
          : `With the PEN broken, load current lifts the earthing terminal. Above ${TOUCH} to true earth, whoever touches the vehicle can get a dangerous shock.`,
      otherwise: `voltage still at the outlet ${WITHIN} after the start, and the display at charging`,
    },
    'in-time': {
      text: `opens its contactor within ${WITHIN} of the start of the disturbance`,
      why: `If the PEN breaks, the vehicle’s body can become live, so everything must open within ${WITHIN}. Time it from the break to the contactor’s sound.`,
      otherwise: 'the contactor opening later, such as after 9 s, or not at all',
    },
    'says-so': {
      text: 'shows a fault on its display while the disturbance lasts',
      why: 'The unit’s sheet says so. Without a message the next driver tries again and again, on a supply that may be dangerous.',
      otherwise: 'a display at ready, waiting or charging, as if the supply were sound',
    },
    'onto-hazard': {
      text: 'closes again while the disturbance lasts, even after a reset',
      why: 'Closing would join the vehicle’s body to the shifted earth again. So the measure looks at the supply first, whoever pressed the reset.',
      otherwise: 'voltage back at the outlet after the reset, with the disturbance still on',
    },
    'earth-back': {
      text: 'closes PE again once the supply is sound and the unit is cleared as its sheet says',
      why: (v) =>
        `The next vehicle needs its earth before it is supplied. With PE closed, a meter shows no voltage from earthing terminal to ${beyond(v)}.`,
      otherwise: (v) => `about half the mains voltage on a meter from earthing terminal to ${beyond(v)}`,
    },
    'other-way': {
      text: (v) =>
        is(v, 'window')
          ? `notices a broken PEN while line to neutral stays inside ${WINDOW}`
          : `notices a broken PEN while the earthing terminal stays under ${TOUCH}`,
      why: (v) =>
        is(v, 'window')
          ? 'A window looks at line to neutral alone. Loads on other lines can pull the neutral sideways, and line to neutral then looks normal while PE is live.'
          : 'With little load and a good electrode, the earthing terminal stays near true earth. The measure then has nothing to see, and nobody is in danger yet.',
    },
  },
};
