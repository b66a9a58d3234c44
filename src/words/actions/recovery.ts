/** Words of the test action `recovery`. */
import type { ActionWords } from '../actionWords.ts';

export const recovery: ActionWords = {
  purpose: 'Show that the unit recovers as its sheet says, and never by itself after a residual trip.',
  lines: {
    'after-short': {
      text: 'offers a current again after a shorted pilot, cleared as its sheet says',
      why: 'The short is gone, so what the sheet says has to be enough. A unit that needs more leaves the next driver without a charge.',
      otherwise: 'a pilot that stays steady, or a fault still shown, once the short is gone',
    },
    'after-trip': {
      text: 'supplies again after a residual trip, reset as its sheet says',
      why: 'The test current is gone, so the device can close and stay closed. Another trip means that current still leaks to earth.',
      otherwise: 'no voltage from a line to neutral after the reset, or another trip',
    },
    'by-itself': {
      text: 'closes by itself after a residual trip, with nothing reset',
      why: 'The leak may still be there, perhaps through a person. Closing would start the shock again, so somebody has to look first.',
      otherwise: '230 V at the outlet within some 10 s of the trip, with nothing reset',
    },
    'after-return': {
      text: 'closes again when the supply goes and comes back after a trip',
      why: 'The unit’s sheet asks for the reset button. If a return of supply were enough, the fault would get its voltage back with nobody looking.',
      otherwise:
        '230 V at the outlet once the supply is back and the start-up is over, with no button pressed',
    },
    ready: {
      text: 'shows ready on its display at the end, with nothing plugged in',
      why: 'Every fault has been taken away and cleared. A unit that does not show ready has kept one latched, or gets no supply.',
      otherwise: 'a dark display, or a fault still shown',
    },
    'every-cause': {
      text: 'clears every other fault on its sheet as the sheet says',
      why: 'Only a shorted pilot and a residual trip were tried. Other faults, such as a d.c. trip, have a line of their own on the sheet.',
    },
  },
};
