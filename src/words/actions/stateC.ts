/** Words of the test action `state-c`. */
import { GREATEST_ON_AFTER_READY } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { above, below } from '../rangeWords.ts';
import { threeLines } from '../threeLines.ts';
import { num, range } from '../values.ts';

const ON = `${GREATEST_ON_AFTER_READY} s`;

export const stateC: ActionWords = {
  purpose: 'Show that supply comes in time, on every line, with the right polarity.',
  stops: {
    'line-to-earth': 'PE may be open, so a fault would make case and vehicle live: isolate',
    crossed: 'a conductor taken for neutral or PE is live, so case and vehicle may be: isolate',
  },
  lines: {
    'plug-held': {
      text: 'holds the plug while the vehicle asks (C)',
      why: 'A plug pulled out live draws an arc at the driver’s hand. So the lock goes home before the contactor closes.',
      otherwise: 'a plug that comes out, or that is shown as not held',
    },
    ...threeLines(
      'at the outlet',
      'Two lines that are crossed on the way reverse the order. A motor runs backwards, and load sharing counts current on the wrong line.',
    ),
    supplies: {
      text: `supplies every line within ${ON} when the vehicle asks (C)`,
      why: 'The vehicle’s added resistor pulls the pilot down to 6 V, and the unit closes its contactor. A vehicle that gets no supply gives up.',
      otherwise: `no voltage from a line to neutral at the outlet ${ON} after the request`,
    },
    pilot: {
      text: (v) =>
        `makes the pilot oscillate between about 6 V (${range(v, 'high', 'V')}) and about −12 V (${range(v, 'low', 'V')})`,
      why: 'The vehicle adds 1.3 kΩ to its 2.74 kΩ, which pulls the positive peak from 9 V to 6 V. Its diode blocks the negative half, which keeps its −12 V.',
      otherwise: (v) =>
        `a peak outside its range, such as ${below(v, 'high', 0.57, 1)}, ${above(v, 'high', 0.17, 1)} or ${above(v, 'low', 1.4)} V, or a steady pilot`,
    },
    'line-to-earth': {
      text: (v) =>
        `reads the same from line to PE as from line to neutral at the outlet (within ${num(v, 'few')} V)`,
      why: 'Neutral is earthed at the source, so neutral and PE are at nearly one potential. A much lower voltage to PE means that PE floats, or that conductors are crossed.',
      otherwise: 'a voltage to PE far from the one to neutral, such as half of it or about 0 V',
    },
    crossed: {
      text: 'reads mains voltage from neutral to PE at the outlet',
      why: 'Neutral is earthed at the source, so it stands within a few volts of PE. Mains voltage between them means that line and neutral are swapped, or that PE is live.',
      otherwise: 'about 230 V from neutral to PE, and little from line to PE if the two are swapped',
    },
    charging: {
      text: 'shows charging on its display',
      why: 'By its sheet it shows this while the contactor is closed. A display that says anything else hides a live outlet from whoever reaches for the plug.',
      otherwise: 'a display at ready or waiting, a fault shown, or a dark display',
    },
    trips: {
      text: 'trips in time on a fault to earth',
      why: 'A residual device feels only current that leaks to earth. No such current flowed in this test.',
    },
  },
};
