/** Words of the test action `insulation-circuit`. */
import type { ActionWords } from '../actionWords.ts';
import { megohms, num } from '../values.ts';

export const insulationCircuit: ActionWords = {
  purpose: 'Measure the insulation of the cable alone, between every pair of conductors, at 500 V d.c.',
  stops: {
    'lives-to-earth':
      'insulation to earth is too low, a risk of shock and fire: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'between-lives':
      'insulation between live conductors is too low, a risk of fire: do not energise (BS 7671 643.1)',
  },
  lines: {
    'lives-to-earth': {
      text: 'reads under 1.0 MΩ from any live conductor to PE',
      why: 'Through damaged or damp insulation, current leaks into PE. It heats the bad spot and trips residual devices, and with PE lost it reaches whoever touches the unit.',
      otherwise: 'a reading such as 0.30 MΩ on one pair, or 0.00 MΩ where two conductors touch',
    },
    'between-lives': {
      text: 'reads at least 1.0 MΩ between its live conductors',
      why: 'With the unit taken off, only the cable’s insulation lies between them. A leak from line to neutral heats the cable, and no residual device feels it.',
      otherwise: 'a lower reading, such as 0.15 MΩ',
    },
    'inside-unit': {
      text: 'has good insulation inside its own case',
      why: 'The unit is taken off while its cable is tested at 500 V, which could harm its electronics. No test voltage reaches its inside.',
    },
  },
  limits: {
    insulation: {
      text: 'least insulation resistance',
      sum: (v) =>
        `at least ${megohms(num(v, 'minimum'))} MΩ at ${num(v, 'testVoltage')} V d.c. (circuit up to 500 V)`,
    },
  },
};
