/** Words of the test action `electrode`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

/** Three digits that count. */
const ohms = (v: Values, key: string): string => `${Number(num(v, key).toPrecision(3))}`;

const sum = (v: Values): string =>
  `at most ${num(v, 'greatest').toFixed(0)} Ω (${num(v, 'touchVoltage')} V ÷ ${milliamps(num(v, 'rated'))} mA)`;

export const electrode: ActionWords = {
  purpose: 'Measure the electrode alone: every earth fault current of this installation flows through it.',
  stops: {
    'too-high':
      'a fault current through this electrode may be too small to trip anything: do not energise (BS 7671 643.1)',
  },
  lines: {
    'as-papers': {
      text: (v) => `reads ${ohms(v, 'least')} to ${ohms(v, 'greatest')} Ω (papers: ${ohms(v, 'declared')} Ω)`,
      why: 'Soil conducts better wet than dry, so the reading changes over the year. Far less means that the rod touches another earth; far more means a corroded clamp or dry ground.',
      otherwise: 'a reading outside that range, often several hundred ohms',
    },
    'too-high': {
      text: (v) => `reads over ${num(v, 'greatest').toFixed(0)} Ω for its electrode`,
      why: (v) =>
        `A fault current just too small for the residual device would flow on, and hold the case above ${num(v, 'touchVoltage')} V (${sum(v)}).`,
      otherwise: (v) => `more than ${num(v, 'greatest').toFixed(0)} Ω, or a reading that is over range`,
    },
    'stays-so': {
      text: 'has an electrode that reads the same in a dry summer',
      why: (v) =>
        `Soil dries and the reading rises. Above ${num(v, 'stable')} Ω an electrode may not be stable: write that down and advise another rod.`,
    },
    joined: {
      text: 'has its electrode back on the main earthing terminal (MET)',
      why: 'The electrode is taken off the terminal to be measured alone. Its own resistance is the same on or off.',
    },
  },
  figures: {
    electrode: {
      text: 'reads, for the electrode alone, about',
      why: 'The papers give this figure. Wet or dry soil changes it by up to half.',
    },
  },
  limits: {
    electrode: { text: 'greatest resistance of the electrode', sum },
  },
  advice: {
    unstable: (v) =>
      `The electrode reads over ${num(v, 'stable')} Ω and may not be stable: no limit is broken, but another rod is advised.`,
  },
};
