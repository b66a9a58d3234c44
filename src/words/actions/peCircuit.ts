/** Words of the test action `pe-circuit`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { num, smallOhms } from '../values.ts';
import { pathLimit, pathLines } from './protectivePath.ts';

const conductor = (v: Values): string => {
  const [length, sum] = [num(v, 'length'), num(v, 'sum')];
  return `${length} m × ${((1000 * sum) / length).toFixed(2)} mΩ/m = ${smallOhms(sum)} Ω`;
};

export const peCircuit: ActionWords = {
  title: 'Protective conductor, earthing terminal to unit',
  purpose: 'Show that the circuit’s own protective conductor is there and sound as far as the unit.',
  stops: {
    'near-sum': 'the circuit’s protective conductor failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    open: 'the circuit’s protective conductor is open: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
  lines: {
    ...pathLines(conductor),
    'to-outlet': {
      text: 'is continuous as far as the outlet',
      why: 'The leads end at the unit’s terminal; the unit and its outlet come beyond.',
    },
  },
  figures: {
    sum: { text: 'reads about', why: 'Length × mΩ/m for its area, at 20 °C.' },
  },
  limits: {
    sum: pathLimit(conductor),
  },
};
