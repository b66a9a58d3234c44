/** Words of a protective path between two terminals. */
import type { Values } from '../../verification/testAction.ts';
import type { LimitWords, LineWords } from '../actionWords.ts';
import { limitOhms } from '../rangeWords.ts';
import { num } from '../values.ts';

type Said = (values: Values) => string;

const greatest = (v: Values): number => num(v, 'sum') + num(v, 'allowance');

interface Path {
  readonly reads: Said;
  /** Ends "reads open …". */
  readonly way: string;
  /** What would be without an earth. */
  readonly what: string;
  /** A sentence: what the path is made of. */
  readonly made: Said;
}

export const pathLines = ({ reads, way, what, made }: Path): Readonly<Record<string, LineWords>> => ({
  'near-sum': {
    text: (v) => `reads ${reads(v)} ${way}`,
    why: (v) =>
      `${made(v)} A poor joint adds far more, and ${what} then stands at a voltage while a fault current flows.`,
    otherwise: (v) =>
      `a higher reading, often by 0.2 to 2 Ω, or over-range${num(v, 'least') > 0 ? '; a lower one comes through other metal' : ''}`,
  },
  open: {
    text: `reads open (100 Ω or more) ${way}`,
    why: `With this path open a fault current has no way back, and nothing trips. Whoever touches ${what} becomes the way back.`,
    otherwise: 'the tester over-range (>), as with its leads apart',
  },
});

export const pathLimit = (sum: Said): LimitWords => ({
  text: 'greatest resistance of the protective conductor',
  sum: (v) => `at most ${limitOhms(greatest(v))} Ω (${sum(v)})`,
});
