/** Words of the test action `half-wave`. */
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num } from '../values.ts';

export const halfWave: ActionWords = {
  title: 'Half-wave residual current, both polarities',
  purpose: 'Show that the residual device answers to the pulsating d.c. that a rectifier’s fault gives.',
  stops: {
    'answers-positive': 'the residual device does not answer to half-waves: leave off, lock off',
    'answers-negative': 'the residual device does not answer to half-waves: leave off, lock off',
  },
  lines: {
    'answers-positive': {
      text: (v) => `trips within 300 ms at ${milliamps(num(v, 'amps'))} mA r.m.s. of positive half-waves`,
      why: (v) =>
        `That is ${num(v, 'multiple')} times the rating; a device of type A, F or B answers to both polarities.`,
    },
    'answers-negative': {
      text: (v) => `trips within 300 ms at ${milliamps(num(v, 'amps'))} mA r.m.s. of negative half-waves`,
      why: (v) =>
        `That is ${num(v, 'multiple')} times the rating; a device of type A, F or B answers to both polarities.`,
    },
    early: {
      text: (v) => `trips below ${milliamps(num(v, 'least'))} mA r.m.s.`,
      why: (v) =>
        is(v, 'detector')
          ? 'Below that not even the d.c. detector, which feels the mean (0.637 of the r.m.s. value), may act.'
          : 'Less than 0.35 of the rating it has to put up with.',
    },
    'which-sensor': {
      text: 'tripped by its a.c. device and not by its d.c. detector',
      why: (v) =>
        is(v, 'detector')
          ? 'Both feel a half-wave, and both open the outlet.'
          : 'There is no d.c. detector here; a lamp or the sheet would tell.',
    },
  },
  figures: {
    sudden: {
      text: 'has to trip by, r.m.s.',
      why: (v) => `${num(v, 'multiple')} × ${milliamps(num(v, 'rated'))} mA.`,
    },
  },
};
