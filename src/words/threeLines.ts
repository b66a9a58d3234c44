/** Words of what three lines show, at the origin and at the outlet alike. */
import type { LineWords } from './actionWords.ts';
import { above, unlessWithin } from './rangeWords.ts';
import { range } from './values.ts';

/** `where` ends a text, as in "reads … at the outlet". */
export const threeLines = (where: string, whyInOrder: string): Readonly<Record<string, LineWords>> => ({
  'line-to-line': {
    text: (v) => `reads about 400 V between lines ${where} (${range(v, 'line-to-line', 'V')})`,
    why: 'The lines are a third of a turn apart, so two of them stand 1.73 × 230 V apart. A line that is missing or used twice gives another voltage.',
    otherwise: (v) =>
      `a pair outside that range, such as ${above(v, 'line-to-line', 10)} V${unlessWithin(v, 'line-to-line', 230, ', 230 V')} or 0 V`,
  },
  rotation: {
    text: `shows the lines in the order L1, L2, L3 ${where}`,
    why: whyInOrder,
    otherwise: 'the reverse order, or none where a line is missing',
  },
});
