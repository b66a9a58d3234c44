/** Words of the test action `electrode`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

/** Three digits that count. */
const ohms = (v: Values, key: string): string => `${Number(num(v, key).toPrecision(3))}`;

const sum = (v: Values): string => {
  const greatest = num(v, 'greatest');
  const stable = num(v, 'stable');
  const needed = `${num(v, 'touchVoltage')} V ÷ ${milliamps(num(v, 'rated'))} mA`;
  return greatest > stable
    ? `at most ${stable} Ω (${needed} = ${greatest.toFixed(0)} Ω, but above ${stable} Ω an electrode may not be stable)`
    : `at most ${greatest.toFixed(0)} Ω (${needed})`;
};

export const electrode: ActionWords = {
  title: 'Earth electrode',
  purpose: 'Measure the electrode alone: every earth fault current of this installation flows through it.',
  stops: {
    unstable:
      'a fault current through this electrode may be too small to trip anything: do not energise (BS 7671 643.1)',
  },
  lines: {
    'as-papers': {
      text: (v) => `reads ${ohms(v, 'least')} to ${ohms(v, 'greatest')} Ω (papers: ${ohms(v, 'declared')} Ω)`,
      why: 'Soil conducts better wet than dry, so the reading changes over the year. Far less means that the rod touches another earth, far more a corroded clamp or dry ground.',
      otherwise: 'a reading outside that range, often several hundred ohms',
    },
    unstable: {
      text: (v) => `reads over ${num(v, 'stable')} Ω`,
      why: 'A rod that reads so high hardly reaches moist ground, and dry weather raises its resistance further. The fault current may then be too small to trip the residual device.',
      otherwise: (v) => `more than ${num(v, 'stable')} Ω, such as 600 or 900 Ω`,
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
};
