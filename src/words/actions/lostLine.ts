/** Words of the test action `lost-line`. */
import type { ActionWords } from '../actionWords.ts';
import { str } from '../values.ts';

export const lostLine: ActionWords = {
  title: 'A line of the supply lost',
  purpose:
    'See what the unit does when a line goes, and that nothing stays live when its electronics have no supply.',
  stops: {
    voltage: 'the outlet stays live without control: isolate and keep people away',
  },
  lines: {
    stops: {
      text: (v) => `takes the voltage away from every line when another than ${str(v, 'line')} is lost`,
      why: 'The unit’s sheet says that it stops.',
    },
    'goes-on': {
      text: (v) => `goes on supplying the lines that are left when another than ${str(v, 'line')} is lost`,
      why: 'The unit’s sheet says that it goes on; no standard asks it to stop.',
    },
    'lost-line-live': {
      text: 'has voltage from the lost line to PE at the outlet',
      why: 'Nothing feeds it.',
    },
    dark: {
      text: (v) => `goes dark without ${str(v, 'line')}`,
      why: (v) => `${str(v, 'line')} feeds its electronics.`,
    },
    'pilot-dead': {
      text: 'has no voltage on the pilot then',
      why: 'State E: nothing feeds the pilot’s source.',
    },
    voltage: {
      text: 'leaves any line of the outlet live then',
      why: 'With no electronics nothing watches the vehicle: the contactor has to fall out.',
    },
    recovers: {
      text: 'is ready again when the line is back and the vehicle has gone',
      why: 'Its start-up is over and no fault is latched.',
    },
    neutral: {
      text: 'stands a lost neutral',
      why: 'Only lines were taken away; without its neutral single-phase loads see up to the voltage between lines.',
    },
  },
};
