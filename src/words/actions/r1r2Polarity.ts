/** Words of the test action `r1r2-polarity`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { num, smallOhms } from '../values.ts';

const sum = (v: Values): string => {
  const [length, line, protective] = [num(v, 'length'), num(v, 'line'), num(v, 'protective')];
  const milliohms = (ohms: number) => ((1000 * ohms) / length).toFixed(2);
  return `${length} m × (${milliohms(line)} + ${milliohms(protective)}) mΩ/m = ${smallOhms(line + protective)} Ω`;
};

export const r1r2Polarity: ActionWords = {
  title: 'R1 + R2 and polarity at the supply terminals',
  purpose:
    'Show that every line arrives where it belongs, and what line and protective conductor come to together.',
  stops: {
    'near-sum': 'R1 + R2 or polarity failed: do not energise (BS 7671 643.1)',
    'other-conductor': 'polarity failed: do not energise (BS 7671 643.1)',
    'link-off': 'a line is joined to PE: do not energise (BS 7671 643.1)',
  },
  lines: {
    'near-sum': {
      text: (v) => `reads within ${num(v, 'allowance')} Ω of R1 + R2 from each line that is linked`,
      why: (v) => `By the papers ${sum(v)}; open means that another conductor is there, or none.`,
    },
    'other-conductor': {
      text: 'reads to PE from any conductor that is not linked',
      why: 'Line at line, neutral at neutral: the link is found on its own conductor alone.',
    },
    'link-off': {
      text: 'reads open again from each line once its link is off',
      why: 'A link that is left in is a dead short at the first switch-on.',
    },
    'to-outlet': {
      text: 'has line and neutral the right way round at its outlet',
      why: 'The open contactor stands between; that is read with the outlet supplied.',
    },
    'neutral-arrives': {
      text: 'has a neutral that arrives at the unit',
      why: 'Line and PE alone are linked: a neutral that reads open may be broken or merely not linked.',
    },
  },
  figures: {
    sum: {
      text: 'reads from a linked line to PE about',
      why: (v) => `Length × mΩ/m for both areas, at 20 °C: ${sum(v)}.`,
    },
  },
};
