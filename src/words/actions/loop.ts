/** Words of the test action `loop`. */
import { LOW_TEST_CURRENT } from '../../bench/instruments/loopTester.ts';
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num, str } from '../values.ts';

const ohms = (v: Values, key: string): string => {
  const value = num(v, key);
  return value.toFixed(value < 10 ? 2 : 1);
};

const parts = (v: Values): string =>
  `${is(v, 'electrodes') ? 'both earths' : 'Ze'} ${ohms(v, 'external')} + circuit ${ohms(v, 'circuit')} + cable ${ohms(v, 'cable')}`;

export const loop: ActionWords = {
  title: 'Loop impedance at the outlet',
  purpose: 'Measure the path of a fault current, and compare it with what the protective device needs.',
  stops: {
    'no-return':
      'the protective conductor is open, so a fault would make metal live: isolate, and pass no further test current',
  },
  lines: {
    trips: {
      text: 'trips when the loop is measured by the low-current method',
      why: `The method sends ${milliamps(LOW_TEST_CURRENT)} mA down the protective conductor, under half of 30 mA. A device that opens on so little has drifted, or leakage was flowing already.`,
      otherwise: 'the outlet dead in the middle of the test, and a display that is dark or shows a fault',
    },
    'near-sum': {
      text: (v) =>
        is(v, 'electrodes')
          ? `reads ${ohms(v, 'least')} to ${ohms(v, 'greatest')} Ω from line to PE, give or take the tester’s uncertainty (${parts(v)})`
          : `reads about ${ohms(v, 'whole')} Ω from line to PE (${ohms(v, 'least')} to ${ohms(v, 'greatest')} Ω; ${parts(v)})`,
      why: 'The test current runs out through the line and back through PE, so every poor joint adds to the reading. Coils of a residual device add up to 0.1 Ω by the low-current method.',
      otherwise:
        'a higher reading, often 1 or 2 Ω more, or none with PE open; a lower one comes through other metal',
    },
    'neutral-near-sum': {
      text: (v) => `reads about ${ohms(v, 'sum')} Ω from line to neutral (at most ${ohms(v, 'greatest')} Ω)`,
      why: 'This current runs out through the line and back through the neutral, in supply, circuit and cable. A poor joint in either one heats under charging current.',
      otherwise: 'a higher reading, often 1 Ω more, on one line or on all',
    },
    'no-return': {
      text: 'gives no reading from line to PE, for want of a return',
      why: 'The tester has voltage, but its current finds no way back: PE is open somewhere. A fault would make the case live, and nothing would trip.',
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
      why: (v) => `${parts(v)} = ${ohms(v, 'whole')} Ω.`,
    },
  },
  limits: {
    loop: {
      text: 'greatest loop impedance from line to PE',
      sum: (v) =>
        is(v, 'electrode')
          ? `at most ${num(v, 'limit').toFixed(0)} Ω (${num(v, 'touchVoltage')} V ÷ ${milliamps(num(v, 'rated'))} mA)`
          : `at most ${num(v, 'limit').toFixed(2)} Ω (0.8 × the table’s ${num(v, 'table').toFixed(2)} Ω for ${str(v, 'type')}${num(v, 'rating')})`,
    },
  },
};
