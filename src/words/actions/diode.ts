/** Words of the test action `diode`. */
import type { ActionWords } from '../actionWords.ts';
import { loweredHalf } from '../pilotWords.ts';

export const diode: ActionWords = {
  purpose: 'Show that the unit refuses a plain resistance on its pilot, which is no vehicle.',
  stops: {
    voltage:
      'the unit supplies without a vehicle’s diode, so water on the pilot could call for voltage: isolate',
  },
  lines: {
    'low-half': {
      text: (v) => `brings the pilot’s negative peak to ${loweredHalf(v)} in connected (B)`,
      why: 'A sound diode blocks the negative half, which stays at −12 V. A shorted one lets the vehicle’s 2.74 kΩ pull that half down too.',
      otherwise: 'a negative peak outside that range, such as −7.5 V',
    },
    voltage: {
      text: 'supplies the outlet when asked (C) with the diode shorted',
      why: 'Water or a finger across the pilot can load it as a vehicle does, but conducts both ways. Only a diode keeps the negative peak near −12 V, so the unit checks that peak before closing.',
      otherwise: 'about 230 V from a line to PE at the outlet, and the display at charging',
    },
    fault: {
      text: 'shows a fault on its display after the request',
      why: 'The unit’s sheet says so. Without a message the driver sees a dead outlet and looks for the fault elsewhere.',
      otherwise: 'a display at charging, or one that goes on waiting as if nothing were wrong',
    },
    'while-charging': {
      text: 'notices a diode that fails while it is charging',
      why: 'A diode that is shorted before the request is found when the unit is about to close. Some sound units check at that moment only, and never while they supply.',
    },
  },
};
