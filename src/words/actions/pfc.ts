/** Words of the test action `pfc`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const sum = (v: Values): string => {
  const multiple = num(v, 'multiple');
  const times = multiple === 1 ? '' : `${multiple} × `;
  const breaks = num(v, 'breakingCapacity') / 1000;
  return `${times}${num(v, 'voltage')} V ÷ ${breaks} kA = ${num(v, 'limit').toFixed(3)} Ω at least: the device breaks ${breaks} kA`;
};

export const pfc: ActionWords = {
  title: 'Prospective fault current at the origin',
  purpose: 'Show that the device can break the greatest current that the supply can drive there.',
  stops: {
    'no-return': 'a conductor of the supply is open: do not energise, tell the distributor',
  },
  lines: {
    joined: {
      text: 'reads from line to earth anything like what it reads to neutral',
      why: 'Two electrodes lie between: so low a loop means that neutral and earth are joined somewhere.',
    },
    'earth-way': {
      text: (v) => `reads from line to earth no more than the ${num(v, 'loop')} Ω of its papers and 0.05 Ω`,
      why: 'With everything connected there may be paths in parallel: less, never more.',
    },
    alike: {
      text: 'reads alike from line to neutral and from line to earth',
      why: 'One PEN conductor is both on the supply’s side.',
    },
    'neutral-way': {
      text: (v) => `reads from line to neutral within 0.05 Ω of the ${num(v, 'loop')} Ω in its papers`,
      why: 'The greatest current at the origin follows from it, and volt drop rests on it.',
    },
    'no-return': {
      text: 'leaves the test current without a return, to neutral or to earth',
      why: 'A conductor of the supply would be open.',
    },
    'at-outlet': {
      text: 'has devices at its outlet that break what flows there',
      why: 'The reading at the outlet is smaller, and a device has to stand what flows where it is fitted.',
    },
  },
  figures: {
    current: {
      text: 'could drive at its origin, from line to neutral',
      why: (v) => `${num(v, 'voltage')} V ÷ ${num(v, 'loop')} Ω; three lines at once: twice that.`,
    },
  },
  limits: {
    'capacity-neutral': { text: 'least loop from line to neutral for the device’s breaking capacity', sum },
    'capacity-earth': { text: 'least loop from line to earth for the device’s breaking capacity', sum },
  },
};
