/** Words of the test action `state-c`. */
import type { ActionWords } from '../actionWords.ts';
import { threeLines } from './threeLines.ts';

export const stateC: ActionWords = {
  title: 'Vehicle asks (C)',
  purpose: 'Show that supply comes in time, on every line, with the right polarity.',
  stops: {
    'line-to-earth': 'the protective conductor does not hold its potential: isolate',
    crossed: 'line and neutral are crossed: isolate',
  },
  lines: {
    'plug-held': {
      text: 'holds the plug',
      why: 'A plug may not come out live: it is held before the supply closes.',
    },
    ...threeLines(' at the outlet', 'The order at the origin is to be kept as far as the vehicle.'),
    supplies: {
      text: 'supplies every line within 3 s of being asked',
      why: 'Permission is given and any delay is over.',
    },
    pilot: {
      text: 'holds the halves of the pilot at 5.47 to 6.53 V and −12.6 to −11.4 V',
      why: 'The stand-in’s resistors against the unit’s 1 kΩ give the high half; its diode keeps them off the low one.',
    },
    'line-to-earth': {
      text: 'gives the same voltage from line to PE as from line to neutral',
      why: 'Neutral and PE are at one potential, near enough. Much less to PE means that PE is not there.',
    },
    crossed: {
      text: 'has full voltage between neutral and PE',
      why: 'That would be line and neutral crossed.',
    },
    charging: {
      text: 'says that it is charging',
      why: 'The unit’s sheet says so for its state while supplying.',
    },
    trips: { text: 'trips in time on a fault to earth', why: 'No test current has flowed yet.' },
  },
};
