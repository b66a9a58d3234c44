/** Words of the test action `state-a`. */
import type { ActionWords } from '../actionWords.ts';
import { pilotAtRest } from '../pilotWords.ts';
import { below, LIVE_LINE, unlessWithin } from '../rangeWords.ts';

export const stateA: ActionWords = {
  purpose: 'Show that the outlet is dead and the pilot rests at 12 V while nothing is connected.',
  stops: {
    voltage: 'the outlet is live with nothing connected: isolate and keep people away',
  },
  lines: {
    voltage: {
      text: 'has voltage on its outlet with no vehicle there (A)',
      why: 'No vehicle asks, so the contactor holds every line open. Anybody may touch the contacts of an outlet that is not in use.',
      otherwise: `${LIVE_LINE}, and often little to neutral`,
    },
    high: {
      text: (v) => `holds the pilot at ${pilotAtRest(v)} with no vehicle there`,
      why: 'No current flows through the pilot’s 1 kΩ, so its full voltage stands at the outlet. From a wrong voltage the unit mistakes one state for another.',
      otherwise: (v) =>
        `another voltage, such as ${below(v, 'high', 0.6, 1)} V${unlessWithin(v, 'high', 9, ', about 9 V as with a vehicle')}, or about 0 V`,
    },
    ready: {
      text: 'shows ready on its display',
      why: 'Its start-up is over, and its self-tests found nothing wrong. A fault shown here means that one is latched, such as a welded pole.',
      otherwise: 'a dark display, or a fault shown',
    },
    'neutral-open': {
      text: 'has its neutral pole open',
      why: 'Neutral is near earth potential, so a closed neutral pole brings no voltage to the outlet. Only a dead test across the pole finds it.',
    },
  },
};
