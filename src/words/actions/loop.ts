/** Words of the test action `loop`. */
import { LOW_TEST_CURRENT } from '../../bench/instruments/loopTester.ts';
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, milliseconds, num, str } from '../values.ts';

const ohms = (v: Values, key: string): string => {
  const value = num(v, key);
  return value.toFixed(value < 10 ? 2 : 1);
};

const outside = (v: Values): string => (is(v, 'electrodes') ? 'both earth electrodes' : 'Ze');

const sum = (v: Values): string =>
  `${outside(v)} ${ohms(v, 'external')} + circuit ${ohms(v, 'circuit')} + cable ${ohms(v, 'cable')} = ${ohms(v, 'whole')} Ω`;

/** The whole is asked of the trainee as a figure: a line that is answered beside it gives only how far off it may be. */
const margin = (v: Values): string => {
  const [least, whole, greatest] = [num(v, 'least'), num(v, 'whole'), num(v, 'greatest')];
  const range = `${(whole - least).toFixed(2)} Ω less to ${(greatest - whole).toFixed(2)} Ω more`;
  return `(${range}${is(v, 'electrodes') ? ', give or take the tester’s uncertainty' : ''})`;
};

/** How the limit comes about, by what opens on a fault. */
function limitSum(v: Values): string {
  const limit = num(v, 'limit');
  const by = str(v, 'by');
  if (by === 'breaker')
    return `at most ${limit.toFixed(2)} Ω (0.8 × the table’s ${num(v, 'table').toFixed(2)} Ω for ${str(v, 'type')}${num(v, 'rating')})`;
  const ratio = `${num(v, 'touchVoltage')} V ÷ ${milliamps(num(v, 'rated'))} mA`;
  if (by === 'electrode') return `at most ${limit.toFixed(0)} Ω (${ratio})`;
  const delayed =
    by === 'delayed device'
      ? `; delayed, the device still opens within ${milliseconds(num(v, 'time'))} ms there`
      : '';
  return `at most ${limit.toFixed(0)} Ω (${ratio} of the residual device at the origin${delayed})`;
}

export const loop: ActionWords = {
  purpose: 'Measure the path of a fault current, and compare it with what the protective device needs.',
  stops: {
    'no-return':
      'the protective conductor is open, so a fault would make metal live: isolate, and pass no further test current',
  },
  lines: {
    trips: {
      text: 'trips when the loop is measured by the low-current method',
      why: `The method sends ${milliamps(LOW_TEST_CURRENT)} mA down the protective conductor, under the 15 mA that a 30 mA device has to bear. A device that opens on so little has drifted, or leakage was flowing already.`,
      otherwise: 'the outlet dead in the middle of the test, and a display that is dark or shows a fault',
    },
    'near-sum': {
      text: (v) => `reads the sum of ${outside(v)}, circuit and cable from line to PE ${margin(v)}`,
      why: (v) =>
        `By the papers ${sum(v)}. The test current returns through PE, so every poor joint adds to that; residual coils add up to 0.1 Ω by the low-current method.`,
      otherwise: (v) =>
        `well over ${ohms(v, 'whole')} Ω, often 1 or 2 Ω more, or no reading with PE open; far less comes through other metal`,
    },
    'neutral-near-sum': {
      text: (v) =>
        `reads the sum of supply, circuit and cable from line to neutral (at most ${(num(v, 'greatest') - num(v, 'sum')).toFixed(2)} Ω more)`,
      why: (v) =>
        `By the papers ${ohms(v, 'sum')} Ω, out through the line and back through the neutral. A poor joint in either one adds to that, and heats under the charging current.`,
      otherwise: (v) => `well over ${ohms(v, 'sum')} Ω, often 1 Ω more, on one line or on all`,
    },
    'no-return': {
      text: 'gives no reading from line to PE, as the test current has no way back',
      why: 'The tester has voltage but no current flows, as PE is open somewhere. A fault would make the case live, and nothing would trip.',
      otherwise: 'the tester refusing from line to PE, though it reads from line to neutral',
    },
    'device-acts': {
      text: 'disconnects a fault within the time allowed',
      why: 'The loop impedance tells how large the fault current would be. Whether the device then opens in time is another matter: it may be seized.',
    },
  },
  figures: {
    sum: {
      text: 'reads from line to PE about',
      why: (v) => `${sum(v)}.`,
    },
  },
  limits: {
    loop: {
      text: 'greatest loop impedance from line to PE',
      sum: limitSum,
    },
  },
};
