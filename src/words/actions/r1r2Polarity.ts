/** Words of the test action `r1r2-polarity`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { marginOhms } from '../rangeWords.ts';
import { num, smallOhms } from '../values.ts';

const whole = (v: Values): number => num(v, 'line') + num(v, 'protective');

const sum = (v: Values): string => {
  const length = num(v, 'length');
  const milliohms = (ohms: number) => ((1000 * ohms) / length).toFixed(2);
  return `${length} m × (${milliohms(num(v, 'line'))} + ${milliohms(num(v, 'protective'))}) mΩ/m = ${smallOhms(whole(v))} Ω`;
};

export const r1r2Polarity: ActionWords = {
  purpose:
    'Show that every line arrives at its own terminal, and measure line and protective conductor together.',
  stops: {
    'near-sum':
      'a line or the protective conductor is crossed, broken or poorly joined: do not energise (BS 7671 643.1)',
    'other-conductor':
      'conductors are crossed or touching, so neutral or PE may become live: do not energise (BS 7671 643.1)',
    'link-off':
      'a line is joined to PE, a short circuit at the first switch-on: do not energise (BS 7671 643.1)',
  },
  lines: {
    'near-sum': {
      text: (v) =>
        `reads R1 + R2 ${marginOhms(whole(v), num(v, 'least'), whole(v) + num(v, 'allowance'))} from each line to PE at the unit, with the two linked at the origin`,
      why: (v) =>
        `The test current runs along the line to the link at the origin, and back along PE: ${sum(v)}. A poor joint adds to it, and an open reading means a crossed or broken conductor.`,
      otherwise: 'a higher reading, often by 0.2 to 2 Ω, or over-range on one line or on all',
    },
    'other-conductor': {
      text: (v) => `reads less than ${num(v, 'open')} Ω to PE from a conductor that is not linked`,
      why: 'The link joins one line to PE, so every other conductor should read open. A reading on another one means that conductors are crossed or touch, and a neutral may be live.',
      otherwise: 'a low reading, such as 0.1 Ω, from the neutral or from another line',
    },
    'link-off': {
      text: 'reads open again from each line to PE once its link is off',
      why: 'Without its link a line has no path to PE. A line that still reads to PE is a short circuit at the first switch-on.',
      otherwise: 'a low reading from a line to PE with no link in',
    },
    'to-outlet': {
      text: 'has line and neutral the right way round at its outlet',
      why: 'The contactor is open between the supply terminals and the outlet. The test current does not get past it.',
    },
    'neutral-arrives': {
      text: 'has a neutral that is whole from the origin to the unit',
      why: 'Only lines are linked to PE, so a whole neutral reads open. A broken neutral reads open as well.',
    },
  },
  figures: {
    sum: {
      text: 'reads from a linked line to PE about',
      why: (v) => `${sum(v)}, for copper of both areas at 20 °C.`,
    },
  },
};
