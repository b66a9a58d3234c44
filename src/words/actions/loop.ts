/** Words of the test action `loop`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { milliamps, milliseconds, num, str } from '../values.ts';

const sum = (v: Values): string =>
  `${num(v, 'external').toFixed(2)} + ${num(v, 'circuit').toFixed(2)} + ${num(v, 'cable').toFixed(2)} = ${num(v, 'whole').toFixed(2)} Ω`;

/** How the limit comes about, by what opens on a fault. */
function limitSum(v: Values): string {
  const limit = num(v, 'limit');
  const by = str(v, 'by');
  if (by === 'breaker')
    return `0.8 × the table’s value for ${str(v, 'type')}${num(v, 'rating')}: ${limit.toFixed(2)} Ω`;
  const ratio = `${num(v, 'touchVoltage')} V ÷ ${milliamps(num(v, 'rated'))} mA = ${limit.toFixed(0)} Ω`;
  if (by === 'electrode') return ratio;
  const delayed =
    by === 'delayed device'
      ? `; delayed, it still opens within ${milliseconds(num(v, 'time'))} ms there`
      : '';
  return `residual device at the origin: ${ratio}${delayed}`;
}

export const loop: ActionWords = {
  title: 'Loop impedance at the outlet',
  purpose: 'Measure the path that a fault current would take, and hold it against what the device needs.',
  stops: {
    'no-return': 'the protective conductor is open: isolate; no further test puts current into it',
  },
  lines: {
    trips: {
      text: 'trips on the low-current method',
      why: 'The test current is under half the rating of a 30 mA device.',
    },
    'near-sum': {
      text: 'reads within 0.15 Ω of Ze, circuit and cable added up',
      why: (v) =>
        `By the papers ${sum(v)}; coils of a residual device may add some hundredths by the low-current method.`,
    },
    'neutral-near-sum': {
      text: 'reads within 0.15 Ω of its own sum from line to neutral',
      why: (v) =>
        `By the papers ${num(v, 'sum').toFixed(2)} Ω: supply, both ways along the circuit, both ways along the cable.`,
    },
    'no-return': {
      text: 'leaves the test current without a return through PE',
      why: 'Then the protective conductor is open somewhere along the loop.',
    },
    'device-acts': {
      text: 'disconnects a fault within the time allowed',
      why: 'The loop says that the current would be enough, not that the device acts.',
    },
  },
  figures: {
    sum: { text: 'reads from line to PE about', why: (v) => `Ze, circuit, cable: ${sum(v)}.` },
  },
  limits: {
    loop: {
      text: 'greatest measured loop impedance',
      sum: limitSum,
    },
  },
};
