/** Words of the test action `coding-sizes`. */
import { UNPLUGGED_ABOVE } from '../../laws/proximity.ts';
import type { ActionWords } from '../actionWords.ts';

export const codingSizes: ActionWords = {
  purpose: 'Show that the unit reads the cable’s coding and never offers more than the cable can carry.',
  stops: {
    'uncoded-voltage':
      'the socket-outlet supplies a plug with no coding resistor: isolate, and keep people away',
  },
  lines: {
    'too-much': {
      text: 'offers a cable more current than the lowest of cable rating, unit rating and set limit',
      why: 'The vehicle draws what the pilot offers. A 13 A cable that carries 32 A overheats, and the breaker does not trip.',
      otherwise: 'too high a duty for a small cable, such as 53.3 % (32 A) where 20 A needs 33.3 %',
    },
    'all-of-it': {
      text: 'offers each coded cable no less than the lowest of cable rating, unit rating and set limit',
      why: 'The plug’s resistor and one in the unit divide a small voltage, and the unit reads the size from it. If dirt or a drifted part shifts that voltage, a 32 A cable counts as a smaller one.',
      otherwise: 'a duty below 21.7 % for 13 A, 33.3 % for 20 A or 53.3 % for 32 A',
    },
    'uncoded-offer': {
      text: 'offers current to a plug with no coding resistor',
      why: `Above ${UNPLUGGED_ABOVE} Ω from proximity (PP) to PE, the unit takes the socket-outlet for empty. Nobody knows what such a cable can carry.`,
      otherwise: 'a pilot that oscillates with the uncoded plug in, instead of staying steady',
    },
    'uncoded-voltage': {
      text: 'puts voltage on a plug with no coding resistor when the vehicle asks',
      why: 'A damaged or home-made lead has no coding. The contactor would put 230 V on whatever hangs at its other end.',
      otherwise: 'about 230 V from a line to PE at the outlet after the request (C)',
    },
    'cable-itself': {
      text: 'gets the right coding from the customer’s own cable',
      why: 'The stand-in brings coding resistors of its own. The customer’s cable has another, and that one may be wrong.',
    },
  },
  figures: {
    'offer-13': {
      text: 'offers a 13 A cable, per line',
      why: 'The lowest of cable rating, unit rating and set limit counts.',
    },
    'offer-63': {
      text: 'offers a 63 A cable, per line',
      why: 'The cable can carry more than the unit gives, so the unit’s rating or a lower set limit counts.',
    },
  },
};
