/** Words of what three lines show, at the origin and at the outlet alike. */
import type { LineWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const threeLines = (where: string, whyInOrder: string): Readonly<Record<string, LineWords>> => ({
  'line-to-line': {
    text: (v) => `reads ${num(v, 'least')} to ${num(v, 'greatest')} V between lines${where}`,
    why: 'Three lines a third of a turn apart, each within its limits.',
  },
  rotation: { text: `rotates L1, L2, L3 as marked${where}`, why: whyInOrder },
});
