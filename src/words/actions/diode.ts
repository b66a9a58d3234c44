/** Words of the test action `diode`. */
import type { ActionWords } from '../actionWords.ts';

export const diode: ActionWords = {
  title: 'Vehicle’s diode shorted, then asks',
  purpose: 'Show that the unit refuses what is no vehicle: something resistive across its pilot.',
  stops: {
    voltage: 'the unit supplies without a vehicle’s diode: isolate',
  },
  lines: {
    'low-half': {
      text: 'lets the low half of the pilot rise to about −8.8 V in B',
      why: 'With no diode the vehicle’s resistor divides the low half too.',
    },
    voltage: {
      text: 'supplies when asked',
      why: 'The low half is outside −13 to −11 V; it has to be checked at least once before closing.',
    },
    fault: { text: 'shows a fault', why: 'The unit’s sheet says so.' },
    'while-charging': {
      text: 'notices a diode that fails while charging',
      why: 'It was shorted before supply was asked for; some sound units check only then.',
    },
  },
};
