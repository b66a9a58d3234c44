/** Words of the test action `pe-outlet`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { is, num, smallOhms } from '../values.ts';
import { pathLimit, pathLines } from './protectivePath.ts';

const conductor = (v: Values): string =>
  is(v, 'tethered')
    ? `${num(v, 'length')} m of ${num(v, 'area')} mm² = ${smallOhms(num(v, 'sum'))} Ω`
    : 'contacts alone, 0 Ω';

export const peOutlet: ActionWords = {
  title: 'Protective conductor, unit to outlet',
  purpose: 'Show that the unit carries the protective conductor on to the outlet and to its exposed metal.',
  stops: {
    'near-sum': 'the protective conductor to the outlet failed: do not energise (BS 7671 643.1)',
    open: 'the protective conductor to the outlet is open: do not energise (BS 7671 643.1)',
    case: 'exposed metal is not earthed: do not energise (BS 7671 643.1)',
  },
  lines: {
    ...pathLines(conductor),
    jumps: {
      text: 'jumps or opens while its cable is bent',
      why: 'A core that has parted inside still touches while the cable lies still.',
    },
    case: {
      text: 'joins its exposed metal to the protective conductor',
      why: 'A fault to the case is cleared only through that joint.',
    },
    'to-met': {
      text: 'is joined to the main earthing terminal',
      why: 'Both leads are at the unit: this is its own half of the path only.',
    },
  },
  limits: {
    sum: pathLimit(conductor),
  },
};
