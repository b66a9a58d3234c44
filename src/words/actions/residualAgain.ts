/** Words of the test action `residual-again`. */
import type { ActionWords } from '../actionWords.ts';
import { inTime, timeLimit, whichTrips } from './residualFixed.ts';

export const residualAgain: ActionWords = {
  purpose: 'Show that the device still trips after the d.c. tests, and that its test button works.',
  stops: {
    'in-time': 'the residual device does not trip in time, so a shock would last: leave off, lock off',
  },
  lines: {
    ...inTime,
    ...whichTrips,
    button: {
      text: 'switches the outlet off when its test button is pressed',
      why: 'The button sends a current through the sensor one way only, as a leak to earth would. If nothing opens, nobody can check the device between inspections.',
      otherwise: 'voltage still at the outlet after the press',
    },
    'reset-restores': {
      text: 'shows ready again after a reset as its sheet says',
      why: 'The button’s current lasted for the press alone, so nothing should keep the unit off. One that stays off has latched a fault, or gets no supply.',
      otherwise: 'a dark display, or a fault still shown',
    },
    blinded: {
      text: 'fails to trip at its rated current after the d.c. tests',
      why: 'D.c. may leave the sensor’s iron core magnetised, and such a core feels a.c. less. A person would have no protection if the device stayed closed.',
      otherwise: 'no trip, whether or not the device tripped before the d.c. tests',
    },
    'button-time': {
      text: 'trips within the time allowed when its test button is pressed',
      why: 'Nothing times the trip after a press, and the button’s current is not measured. The press shows only that the mechanism moves.',
    },
  },
  limits: {
    'trip-time': timeLimit(1),
  },
};
