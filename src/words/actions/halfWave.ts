/** Words of the test action `half-wave`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num } from '../values.ts';

const STOP = 'the residual device does not act on half-waves, so a vehicle’s fault may go on: lock off';
const current = (v: Values, key: string): string => `${milliamps(num(v, key))} mA r.m.s.`;
const noTrip = (v: Values): string => `no trip at ${current(v, 'amps')}, or one later than 300 ms`;

export const halfWave: ActionWords = {
  purpose: 'Show that the residual device acts on the pulsating d.c. of a faulty rectifier.',
  stops: {
    'answers-positive': STOP,
    'answers-negative': STOP,
  },
  lines: {
    'answers-positive': {
      text: (v) => `trips within 300 ms at ${current(v, 'amps')} of positive half-waves`,
      why: (v) =>
        `A fault behind a vehicle’s rectifier leaks in half-waves, and a type AC device may not feel them. Types A, F and B trip at ${num(v, 'multiple')} times the rating.`,
      otherwise: noTrip,
    },
    'answers-negative': {
      text: (v) => `trips within 300 ms at ${current(v, 'amps')} of negative half-waves`,
      why: 'A rectifier can fail either way round, and its half-waves magnetise the sensor’s core one way or the other. A device has to feel both.',
      otherwise: noTrip,
    },
    early: {
      text: (v) => `trips below ${current(v, 'least')} of half-waves`,
      why: (v) =>
        is(v, 'detector')
          ? `A d.c. detector feels the mean of a half-wave, 0.64 of its r.m.s. value. Below 3 mA in the mean even the detector stays closed, so that healthy leakage ends no charge.`
          : 'A residual device has to stay closed up to 0.35 of its rating. Healthy chargers leak that much, and would be cut off for no reason.',
      otherwise: (v) => `a tripping current below ${current(v, 'least')}, in the first steps`,
    },
    'which-sensor': {
      text: (v) =>
        is(v, 'detector')
          ? 'trips because its a.c. device opens, and not its d.c. detector'
          : 'trips because its sensor for a.c. acts, and not its sensor for d.c.',
      why: (v) =>
        is(v, 'detector')
          ? 'Either one feels a half-wave, and either one opens the outlet. The tester shows only that its current has stopped.'
          : 'A type B device has a sensor for each, and either one feels a half-wave. The tester shows only that its current has stopped.',
    },
  },
  figures: {
    sudden: {
      text: 'has to trip on half-waves (r.m.s.) of',
      why: (v) => `${num(v, 'multiple')} × ${milliamps(num(v, 'rated'))} mA.`,
    },
  },
};
