/** Words of the test action `dc-ramp`. */
import type { ActionWords } from '../actionWords.ts';

export const dcRamp: ActionWords = {
  title: 'Smooth d.c. rising, both polarities',
  purpose: 'Show that the d.c. detector acts before a device upstream would be blinded.',
  stops: {
    'trips-positive': 'the d.c. detector does not act as it must: leave off, lock off',
    'trips-negative': 'the d.c. detector does not act as it must: leave off, lock off',
  },
  lines: {
    'trips-positive': {
      text: 'trips above 3 mA and by 6 mA of positive smooth d.c.',
      why: 'Above 6 mA a type A device upstream may no longer act; below 3 mA it would be a nuisance.',
    },
    'trips-negative': {
      text: 'trips above 3 mA and by 6 mA of negative smooth d.c.',
      why: 'Above 6 mA a type A device upstream may no longer act; below 3 mA it would be a nuisance.',
    },
    upstream: {
      text: 'takes the residual device at its origin off',
      why: 'The detector acts at 6 mA so that the device upstream neither trips nor is blinded.',
    },
    early: {
      text: 'trips at less than 3 mA',
      why: 'Half the rated d.c. current is what it has to put up with.',
    },
    'step-time': {
      text: 'acts within 10 s when 6 mA come at once',
      why: 'The current rose slowly; a step is a test of its own.',
    },
  },
  limits: {
    'direct-current': { text: 'greatest d.c. tripping current', sum: 'rated d.c. current: 6 mA' },
  },
};
