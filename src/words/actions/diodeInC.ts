/** Words of the test action `diode-in-c`. */
import type { ActionWords } from '../actionWords.ts';

export const diodeInC: ActionWords = {
  title: 'Vehicle’s diode shorts while supplying, then asks again',
  purpose:
    'See what the unit does with a diode that fails in service, and that it looks afresh at every request.',
  stops: {
    'supplies-again': 'the unit supplies without a vehicle’s diode: isolate',
  },
  lines: {
    opens: {
      text: 'takes the voltage away within 3 s',
      why: 'The unit’s sheet says that it looks at the low half all the time.',
    },
    'low-half': {
      text: 'lets the low half of the pilot rise to about −5.6 V',
      why: 'With no diode the vehicle’s resistors divide the low half too. The unit’s sheet says that it goes on.',
    },
    'supplies-again': {
      text: 'supplies when asked again with the diode still shorted',
      why: 'The low half is checked at least once before every closing.',
    },
    'other-parts': {
      text: 'notices any other part of the vehicle’s pilot circuit that fails',
      why: 'Only the diode was shorted.',
    },
  },
};
