/** Words of a protective path between two terminals; `copper` writes the sum of its conductor out. */
import type { Values } from '../../verification/testAction.ts';
import type { LimitWords, LineWords } from '../actionWords.ts';
import { aboutOhms } from '../rangeWords.ts';
import { num, smallOhms } from '../values.ts';

type Copper = (values: Values) => string;

const greatest = (v: Values): number => num(v, 'sum') + num(v, 'allowance');

/** `way` completes "reads … ", and `what` names who would be without an earth. */
export const pathLines = (
  way: string,
  what: string,
  copper: Copper,
): Readonly<Record<string, LineWords>> => ({
  'near-sum': {
    text: (v) => `reads ${aboutOhms(num(v, 'sum'), num(v, 'least'), greatest(v))} ${way}`,
    why: (v) =>
      `Copper and contacts make no more: ${copper(v)}. A poor joint adds resistance, and ${what} then stands at a voltage while a fault flows.`,
    otherwise: (v) =>
      `a higher reading, often by 0.2 to 2 Ω, or over-range${num(v, 'least') > 0 ? '; a lower one comes through other metal' : ''}`,
  },
  open: {
    text: `reads open (100 Ω or more) ${way}`,
    why: `With this path open a fault current has no way back, and nothing trips. Whoever touches ${what} becomes the way back.`,
    otherwise: 'the tester over-range (>), as with its leads apart',
  },
});

export const pathLimit = (copper: Copper): LimitWords => ({
  text: 'greatest resistance of the protective conductor',
  sum: (v) =>
    `at most ${smallOhms(greatest(v))} Ω (${copper(v)}, and ${num(v, 'allowance')} Ω more for contacts)`,
});
