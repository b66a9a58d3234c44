/** Words of the test action `energise`. */
import type { ActionWords } from '../actionWords.ts';
import { pilotAtRest } from '../pilotWords.ts';
import { below, unlessWithin } from '../rangeWords.ts';
import { num } from '../values.ts';

export const energise: ActionWords = {
  purpose: 'Show that the unit starts by itself, keeps the outlet dead and says when it is ready.',
  stops: {
    voltage: 'the outlet is live with nothing plugged in: isolate, and keep people away',
  },
  lines: {
    voltage: {
      text: 'puts voltage on the outlet while nothing is plugged in',
      why: 'Only a closed contactor brings voltage to the outlet, and no vehicle has asked for it. Anybody may hold the connector at this moment.',
      otherwise: 'voltage from a line to PE at the outlet, 230 V if a pole is closed',
    },
    contactor: {
      text: 'closes its contactor during start-up',
      why: 'No vehicle has asked, and this unit’s sheet names no self-test of the contactor. Each closing would make the outlet live for a moment.',
      otherwise: 'the contactor closing, with its click, though nothing is plugged in',
    },
    'offers-early': {
      text: 'makes its pilot oscillate while nothing is plugged in',
      why: 'An oscillating pilot offers current to a vehicle. With no vehicle there is nobody to offer it to, so the pilot is off or steady.',
      otherwise: 'a pilot reading with a frequency (1 kHz) and a duty, instead of one steady voltage',
    },
    trips: {
      text: 'trips a breaker or a residual device at switch-on',
      why: 'Filters and power supplies draw little, and only for an instant. A trip means that current leaks to earth or between conductors, or that the wrong device is fitted.',
      otherwise: 'a device that opens at switch-on, and a display that is dark or shows a fault',
    },
    ready: {
      text: (v) => `shows ready on its display once its start-up of ${num(v, 'startUp')} s is over`,
      why: 'Its sheet gives this time for the self-tests. A display that stays dark gets no supply, and one that shows a fault failed a self-test.',
      otherwise: 'a dark display, or a fault shown, when that time is over',
    },
    'twelve-volts': {
      text: (v) => `holds the pilot at ${pilotAtRest(v)} once it is ready`,
      why: 'With nothing plugged in, no current flows through the pilot’s 1 kΩ, so its full voltage stands at the outlet. A wrong voltage makes the unit mistake one state for another.',
      otherwise: (v) =>
        `another voltage, such as ${below(v, 'high', 0.6, 1)} V${unlessWithin(v, 'high', 9, ', about 9 V as with a vehicle')}, or about 0 V`,
    },
    poles: {
      text: 'has every pole of its contactor open',
      why: 'Neutral is near earth potential, so a closed neutral pole brings no voltage to the outlet. Only a continuity test across each pole finds it.',
    },
  },
};
