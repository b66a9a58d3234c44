/** Words of a protective path between two terminals; `conductor` writes its sum out. */
import type { Values } from '../../verification/testAction.ts';
import type { LimitWords, LineWords } from '../actionWords.ts';
import { num, smallOhms } from '../values.ts';

type Conductor = (values: Values) => string;

export const pathLines = (conductor: Conductor): Readonly<Record<string, LineWords>> => ({
  'near-sum': {
    text: (v) => `reads within ${num(v, 'allowance')} Ω of its length × mΩ/m`,
    why: (v) => `The conductor alone is ${conductor(v)}; more is a joint, less is a path in parallel.`,
  },
  open: {
    text: 'reads open',
    why: 'An open protective conductor leaves everything beyond it unearthed.',
  },
});

export const pathLimit = (conductor: Conductor): LimitWords => ({
  text: 'length × mΩ/m and what contacts may add',
  sum: (v) =>
    `${conductor(v)} + ${num(v, 'allowance')} Ω = ${smallOhms(num(v, 'sum') + num(v, 'allowance'))} Ω`,
});
