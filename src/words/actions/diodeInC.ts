/** Words of the test action `diode-in-c`. */
import { GREATEST_OFF_AFTER_FAULT } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { loweredHalf } from '../pilotWords.ts';

const OFF = `${GREATEST_OFF_AFTER_FAULT} s`;

export const diodeInC: ActionWords = {
  purpose: 'See what the unit does when a diode fails in service, and that it checks afresh at each request.',
  stops: {
    'supplies-again':
      'the unit supplies without a vehicle’s diode, so water on the pilot could call for voltage: isolate',
  },
  lines: {
    opens: {
      text: `switches the outlet off within ${OFF} of the diode shorting`,
      why: 'This unit’s sheet says that it checks the pilot’s negative peak all the time. The peak rises from −12 V to about −5.6 V, so the unit can no longer be sure of a vehicle.',
      otherwise: `230 V still at the outlet ${OFF} after the diode shorted, and the display at charging`,
    },
    'low-half': {
      text: (v) => `brings the pilot’s negative peak to ${loweredHalf(v)} while charging (C) goes on`,
      why: 'With the diode shorted, the vehicle’s two resistors pull the negative half down too. This unit’s sheet says that it checks only before closing, so it charges on.',
      otherwise: 'a negative peak outside that range, such as −4.8 V',
    },
    'supplies-again': {
      text: 'supplies when asked again with the diode still shorted',
      why: 'The unit has to check the negative peak before every closing. With the diode shorted, water could be asking instead of a vehicle.',
      otherwise: 'about 230 V from a line to PE at the outlet after the second request',
    },
    'other-parts': {
      text: 'notices a fault in any other part of the vehicle’s pilot circuit',
      why: 'A shorted diode changes the negative half of the pilot alone. A short or a break in the pilot moves the positive peak, which the unit checks by another rule.',
    },
  },
};
