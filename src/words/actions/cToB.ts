/** Words of the test action `c-to-b`. */
import { GREATEST_OFF_AFTER_NOT_READY, GREATEST_ON_AFTER_READY } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { offWithin, perhaps } from '../rangeWords.ts';
import { milliseconds } from '../values.ts';

const OFF = `${milliseconds(GREATEST_OFF_AFTER_NOT_READY)} ms`;
const ON = `${GREATEST_ON_AFTER_READY} s`;

export const cToB: ActionWords = {
  purpose: 'Time how soon the outlet is dead, and show that supply returns when the vehicle asks again.',
  stops: {
    voltage: 'the outlet stays live after the vehicle stopped asking: isolate, and keep people away',
  },
  lines: {
    'off-in-time': {
      text: (v) => `switches the outlet off within ${offWithin(v)} of the end of the request`,
      why: 'A driver may pull the connector as soon as the vehicle stops asking. If the contactor is still closed, the contacts part live and draw an arc.',
      otherwise: (v) =>
        `an opening time above ${offWithin(v)}, ${perhaps(v)}, or an outlet that never goes dead`,
    },
    voltage: {
      text: 'leaves voltage on the outlet when the vehicle is back at connected (B)',
      why: 'In connected (B) the driver may pull the connector out. Its contacts would come out live.',
      otherwise: 'about 230 V from a line to PE at the outlet, though the vehicle asks for nothing',
    },
    'same-offer': {
      text: 'goes on offering the current that is due after the vehicle has stopped asking',
      why: 'The session goes on, so the pilot keeps oscillating. Its duty tells the vehicle what it may draw when it asks again.',
      otherwise: 'a steady pilot at about 9 V, or a duty that stands for another current',
    },
    'supplies-again': {
      text: `supplies within ${ON} when the vehicle asks again, with no new permission`,
      why: 'Permission lasts for the session, and the session lasts until the connector is pulled. A vehicle may pause many times, for example to cool its battery.',
      otherwise: `no voltage from line to neutral at the outlet ${ON} after the second request`,
    },
    unplugged: {
      text: `switches the outlet off within ${OFF} when the connector is pulled while charging`,
      why: 'In this test the vehicle stays connected and the pilot goes to 9 V. Pulling the connector breaks the pilot instead, and another test times that.',
    },
  },
  limits: {
    opening: {
      text: 'greatest time from the end of the request to a dead outlet',
      sum: `at most ${OFF}, from C2 to B2`,
    },
  },
};
