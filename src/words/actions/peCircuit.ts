/** Words of the test action `pe-circuit`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { marginOhms } from '../rangeWords.ts';
import { num, smallOhms } from '../values.ts';
import { pathLimit, pathLines } from './protectivePath.ts';

const copper = (v: Values): string => {
  const [length, sum] = [num(v, 'length'), num(v, 'sum')];
  return `${length} m × ${((1000 * sum) / length).toFixed(2)} mΩ/m = ${smallOhms(sum)} Ω`;
};

export const peCircuit: ActionWords = {
  purpose:
    'Show that the circuit’s own protective conductor is whole as far as the unit, before anything is live.',
  stops: {
    'near-sum':
      'the unit’s path to earth is not as designed, so a fault may not clear: do not energise (BS 7671 643.1, EAWR reg. 4)',
    open: 'the unit has no path to earth, so a fault would make its case live: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
  lines: {
    ...pathLines({
      reads: (v) =>
        `length × mΩ/m of its copper ${marginOhms(num(v, 'sum'), num(v, 'least'), num(v, 'sum') + num(v, 'allowance'))}`,
      way: 'from the earthing terminal (MET) to the unit’s PE terminal',
      what: 'the unit’s case',
      made: (v) => `The copper alone makes ${copper(v)}, and contacts a little more.`,
    }),
    'beside-another': {
      text: 'reads below its own length × mΩ/m',
      why: (v) =>
        `The conductor alone is ${smallOhms(num(v, 'sum'))} Ω; a lower reading means that metal in parallel carries part of the current. Free its far end and repeat.`,
      otherwise: 'a reading below the copper’s own sum: armour, steel or a pipe shares the current',
    },
    'own-whole': {
      text: 'has a protective conductor of its own that is whole',
      why: 'Armour or steel lies in parallel, and current takes that way round a break. Free the conductor’s far end and repeat.',
    },
    'to-outlet': {
      text: 'has an unbroken protective conductor all the way to the outlet',
      why: 'The leads are on the earthing terminal and on the unit’s PE terminal. The stretch from there to the outlet is not between them.',
    },
  },
  figures: {
    sum: {
      text: 'reads from the earthing terminal (MET) to the unit about',
      why: (v) => `${copper(v)}, for copper of its area at 20 °C.`,
    },
  },
  limits: {
    sum: pathLimit((v) => `${copper(v)}, and ${num(v, 'allowance')} Ω more for contacts`),
  },
};
