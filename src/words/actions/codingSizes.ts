/** Words of the test action `coding-sizes`. */
import type { ActionWords } from '../actionWords.ts';

export const codingSizes: ActionWords = {
  title: 'What each size of cable is offered',
  purpose: 'Show that the unit reads the coding of the cable and never offers more than the cable carries.',
  stops: {
    'uncoded-voltage': 'the socket supplies a plug that is not coded: isolate',
  },
  lines: {
    'too-much': {
      text: 'offers more than the cable carries',
      why: 'The vehicle would take it, and the cable would overheat.',
    },
    'all-of-it': {
      text: 'offers every coded size the least of cable, unit and setting, per line',
      why: '13 A is a duty of 21.7 %, 20 A of 33.3 %, 32 A of 53.3 %; a larger cable does not raise the unit’s own limit.',
    },
    'uncoded-offer': {
      text: 'offers anything to a plug that is not coded',
      why: 'Above 4500 Ω nothing counts as plugged in.',
    },
    'uncoded-voltage': { text: 'supplies a plug that is not coded', why: 'Above 4500 Ω no power is given.' },
    'cable-itself': {
      text: 'is used with a cable whose own coding is right',
      why: 'The stand-in’s resistors were read here, not those of the customer’s cable.',
    },
  },
  figures: {
    'offer-13': {
      text: 'offers with a 13 A cable, per line',
      why: 'The least of unit, setting, limit and cable.',
    },
    'offer-63': {
      text: 'offers with a 63 A cable, per line',
      why: 'The least of unit, setting, limit and cable.',
    },
  },
};
