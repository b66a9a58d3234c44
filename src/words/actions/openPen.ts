/** Words of the test action `open-pen`. */
import type { ActionWords } from '../actionWords.ts';
import { is } from '../values.ts';

export const openPen: ActionWords = {
  title: 'Open-PEN measure',
  purpose: 'Show that the unit parts the vehicle from a broken PEN conductor, PE and all, and stays parted.',
  stops: {
    opens: 'the open-PEN measure does not open: isolate',
    'opens-earth': 'the open-PEN measure leaves the protective conductor closed: isolate',
    'onto-hazard': 'the unit closes onto the hazard: isolate',
  },
  lines: {
    'opens-earth': {
      text: 'opens the protective conductor as well',
      why: 'The vehicle’s body stands on that conductor: it must not stay on a broken earth.',
    },
    'rides-out': {
      text: 'is back to supplying, without a reset, after a disturbance of 3 s',
      why: 'It may ignore what is over within 4 s; a lock-out for every dip would be a nuisance.',
    },
    opens: {
      text: 'is dead at the outlet 5 s after the disturbance began',
      why: (v) =>
        is(v, 'window')
          ? 'Line to neutral outside 207 to 253 V may mean that the PEN conductor is open.'
          : 'The earthing terminal stands at more than 70 V to true earth.',
    },
    'in-time': { text: 'opens within 5 s', why: 'The contactor can be heard.' },
    'says-so': {
      text: 'says by a fault why it is off',
      why: 'Whoever comes to charge has to be told not to try.',
    },
    'onto-hazard': {
      text: 'closes again while the disturbance lasts, reset or not',
      why: 'Nothing may close onto the hazard.',
    },
    'earth-back': {
      text: 'closes the protective conductor again once the supply is sound and it was cleared as its sheet says',
      why: 'Nothing is supplied without PE.',
    },
    'other-way': {
      text: (v) =>
        is(v, 'window')
          ? 'notices a PEN conductor that opens while line to neutral stays inside the window'
          : 'notices a PEN conductor that is open while the earthing terminal stays under 70 V',
      why: (v) =>
        is(v, 'window')
          ? 'A window looks at line to neutral alone; neighbours can move the neutral sideways.'
          : 'With little current and a good electrode the voltage stays low, and so does the hazard.',
    },
  },
};
