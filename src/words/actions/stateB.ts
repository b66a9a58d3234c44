/** Words of the test action `state-b`. */
import type { ActionWords } from '../actionWords.ts';

export const stateB: ActionWords = {
  title: 'Vehicle connected (B)',
  purpose: 'Show that the unit finds the vehicle, offers the right current and supplies nothing yet.',
  stops: {
    voltage: 'the outlet is live with no request: isolate and keep people away',
  },
  lines: {
    'plug-held': {
      text: 'holds the plug',
      why: 'The unit’s sheet says that it holds the plug as soon as a vehicle is connected.',
    },
    voltage: { text: 'puts voltage on the outlet', why: 'The vehicle is connected but has not asked.' },
    high: {
      text: 'takes the high half of the pilot to 8.37 to 9.59 V',
      why: 'The stand-in’s resistors against the unit’s 1 kΩ give that, at the corners of their tolerances.',
    },
    offers: {
      text: 'offers a current by a pilot of 980 to 1020 Hz, its low half at −12.6 to −11.4 V',
      why: 'With permission given and any delay over nothing keeps it from offering. A vehicle takes another frequency for a fault, and its diode keeps the low half as it is.',
    },
    'too-much': {
      text: 'offers more than the least of unit, cable and setting',
      why: 'The vehicle would take it, and the weakest part would carry it.',
    },
    diode: {
      text: 'refuses a vehicle whose diode is shorted',
      why: 'The stand-in’s diode is sound in this set-up.',
    },
  },
  figures: {
    offer: {
      text: 'offers, per line',
      why: 'The least of unit, cable and setting; the duty says it for each line.',
    },
  },
};
