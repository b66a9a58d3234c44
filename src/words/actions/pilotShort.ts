/** Words of the test action `pilot-short`. */
import type { ActionWords } from '../actionWords.ts';

export const pilotShort: ActionWords = {
  title: 'Pilot shorted to PE while supplying',
  purpose: 'Show that supply goes when the unit can no longer prove the protective conductor.',
  stops: {
    voltage: 'the unit supplies without a sound pilot: isolate',
  },
  lines: {
    'off-in-time': {
      text: 'takes the voltage away within 3 s',
      why: 'With CP at PE nothing shows any more that PE is there.',
    },
    voltage: {
      text: 'supplies while the short remains',
      why: 'It may not close again before the pilot is sound.',
    },
    'near-zero': {
      text: 'leaves the pilot near 0 V',
      why: 'The short holds it at PE; the unit’s 1 kΩ limits the current.',
    },
    fault: { text: 'shows a fault', why: 'The unit’s sheet says so.' },
    'pe-lost': {
      text: 'switches off when the vehicle loses PE',
      why: 'PE stayed connected: that is another set-up.',
    },
  },
  limits: {
    opening: {
      text: 'time from the short to a dead outlet',
      sum: 'pilot shorted to PE: supply off within 3 s',
    },
  },
};
