/** Words of the test action `c-to-b`. */
import type { ActionWords } from '../actionWords.ts';

export const cToB: ActionWords = {
  title: 'Vehicle stops asking (C to B)',
  purpose: 'Time how soon the outlet is dead, and show that supply returns when asked again.',
  stops: {
    voltage: 'the outlet stays live after the request ended: isolate and keep people away',
  },
  lines: {
    'off-in-time': {
      text: 'is dead on every pole within 100 ms',
      why: 'A vehicle that takes its request back may be unplugged at once.',
    },
    voltage: { text: 'leaves voltage on the outlet in B', why: 'The connector would come out live.' },
    'same-offer': {
      text: 'goes on offering the same current',
      why: 'The session is not over: the vehicle may ask again.',
    },
    'supplies-again': {
      text: 'supplies again when asked again, with no new permission',
      why: 'Going back to B does not end the permission.',
    },
    unplugged: { text: 'switches off when the connector is pulled', why: 'It stayed plugged in throughout.' },
  },
  limits: {
    opening: {
      text: 'time from the end of the request to a dead outlet',
      sum: 'C2 to B2: supply off within 100 ms',
    },
  },
};
