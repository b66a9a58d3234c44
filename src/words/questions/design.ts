/** Words of the questions on the design in the papers. */
import type { QuestionWords } from '../questionWords.ts';
import { num } from '../values.ts';

export const design: Readonly<Record<string, QuestionWords>> = {
  'carried-current': {
    stem: (v) =>
      `A cable is tabled at ${num(v, 'tabled')} A. The factor for the temperature of the air (Ca) is ${num(v, 'ambient')}, that for circuits beside it (Cg) ${num(v, 'grouped')}. How much current does it carry as it is laid?`,
    mistakes: {
      'factors-forgotten': 'That is the tabled figure, for 30 °C and a cable by itself.',
      'grouping-forgotten': 'That leaves out the circuits beside it, which warm it.',
      'air-forgotten': 'That leaves out the temperature of the air.',
      'over-not-times': 'That divides by the factors. What makes it harder to lose heat takes amperes away.',
    },
    working: (v, answer) => [
      `Iz = ${num(v, 'tabled')} A × ${num(v, 'ambient')} × ${num(v, 'grouped')} = ${answer}`,
    ],
    why: 'A cable carries what it can lose as heat without its insulation going above 70 °C. Warm air and warm neighbours leave less to lose.',
  },
  'breaker-fits': {
    stem: (v) =>
      `A charge point draws ${num(v, 'load')} A for hours. Its cable carries ${num(v, 'carries')} A as it is laid. Which breaker fits?`,
    choices: Object.fromEntries(
      [6, 10, 13, 16, 20, 25, 32, 40, 50, 63].map((rating) => [rating, `${rating} A`]),
    ),
    working: (v, answer) => [
      `Load ${num(v, 'load')} A ≤ breaker ≤ cable ${num(v, 'carries')} A.`,
      `Of these only ${answer} lies between.`,
    ],
    why: 'A smaller breaker trips while the car charges. A larger one lets the cable carry more than it can for hours, and its insulation cooks before anything trips.',
  },
  'design-wrong': {
    stem: (v) =>
      `Papers: breaker B${num(v, 'rating')} (6 kA), cable carries ${num(v, 'carries')} A as laid, ${num(v, 'length')} m long, ${num(v, 'drop')} V dropped at 32 A (at most ${num(v, 'most')} V), loop at the unit ${num(v, 'loop').toFixed(2)} Ω (at most ${num(v, 'limit').toFixed(2)} Ω), loop at the board ${num(v, 'origin').toFixed(2)} Ω. Which sum is not right?`,
    choices: {
      cable: 'what the cable carries',
      drop: 'the volt drop',
      clears: 'the loop at the unit',
      breaks: 'the breaking capacity',
      none: 'every sum is right',
    },
    mistakes: {
      cable: 'The cable carries at least what the breaker lets through for good.',
      drop: 'The volts lost are under what is allowed.',
      clears: 'The loop is under its limit, so the breaker opens at once.',
      breaks: 'The short-circuit current at the board is under what the breaker interrupts.',
      none: 'One of the sums is beyond its limit.',
    },
    working: (v) => [
      `Breaker ${num(v, 'rating')} A, cable ${num(v, 'carries')} A. Drop ${num(v, 'drop')} V, at most ${num(v, 'most')} V.`,
      `Loop ${num(v, 'loop').toFixed(2)} Ω, at most ${num(v, 'limit').toFixed(2)} Ω. 230 V ÷ ${num(v, 'origin').toFixed(2)} Ω = ${num(v, 'prospective')} A, at most 6000 A.`,
    ],
    why: 'Each sum guards against another harm: a cable that cooks, a car that starves, a fault that stands, a breaker that bursts. One that is wrong makes the design wrong, whatever is measured later.',
  },
};
