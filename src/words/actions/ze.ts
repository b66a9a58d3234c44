/** Words of the test action `ze`. */
import type { ActionWords } from '../actionWords.ts';
import { marginOhms } from '../rangeWords.ts';
import { num, str } from '../values.ts';

export const ze: ActionWords = {
  purpose: 'Measure the distributor’s earth by itself, before anything relies on it.',
  stops: {
    'no-earth':
      'the distributor’s earth is missing, so a fault would make metal cases live: do not energise, tell the distributor',
  },
  lines: {
    'as-design': {
      text: (v) =>
        `reads the Ze of its papers ${marginOhms(num(v, 'design'), num(v, 'least'), num(v, 'greatest'))} from line to the distributor’s earth`,
      why: 'The test current returns through the distributor’s earth alone, as a fault current would. With a higher loop less current flows, and a breaker may open too late.',
      otherwise: 'a higher reading, often by 1 Ω, or none at all',
    },
    'no-earth': {
      text: 'gives no reading to the distributor’s earth, as the test current has no way back',
      why: 'There is voltage but no path, so the distributor’s earth is open. A fault would make every metal case live, and no breaker would open.',
      otherwise: 'the tester refusing: no return for the test current',
    },
    'conductor-on': {
      text: 'has its earthing conductor well joined to the earthing terminal (MET)',
      why: 'The earthing conductor is off the terminal for this test. The joint between the two is not in the loop.',
    },
    'pen-sound': {
      text: 'has joints in its service cable that hold under a full fault current',
      why: 'The tester sends about 10 A for a moment, and a fault sends hundreds. A joint that is nearly through may read well now, and burn open then.',
    },
  },
  figures: {
    ze: {
      text: 'reads from line to the distributor’s earth about',
      why: 'The papers give this figure for the supply.',
    },
  },
  limits: {
    usual: {
      text: 'greatest Ze that distributors usually declare',
      sum: (v) => `at most ${num(v, 'usual').toFixed(2)} Ω for ${str(v, 'earthing')}`,
    },
  },
};
