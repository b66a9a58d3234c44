/** Words of the test action `pe-outlet`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { aboutOhms, limitOhms } from '../rangeWords.ts';
import { is, num, smallOhms } from '../values.ts';
import { pathLimit, pathLines } from './protectivePath.ts';

const copper = (v: Values): string =>
  `${num(v, 'length')} m of ${num(v, 'area')} mm² = ${smallOhms(num(v, 'sum'))} Ω`;

const made = (v: Values): string =>
  is(v, 'tethered')
    ? `The copper alone makes ${copper(v)}, and contacts a little more.`
    : 'From the PE terminal to a socket-outlet there is little but contacts.';

export const peOutlet: ActionWords = {
  purpose: 'Show that the unit carries the protective conductor on to the outlet and to its own metal case.',
  stops: {
    'near-sum':
      'the vehicle’s path to earth is poor, so a fault may not clear: do not energise (BS 7671 643.1)',
    open: 'the outlet has no earth, so a fault would make the vehicle’s body live: do not energise (BS 7671 643.1)',
    case: 'the metal case has no earth, so a fault would make it live: do not energise (BS 7671 643.1)',
  },
  lines: {
    ...pathLines({
      reads: (v) => aboutOhms(num(v, 'sum'), num(v, 'least'), num(v, 'sum') + num(v, 'allowance')),
      way: 'from the unit’s PE terminal to the outlet',
      what: 'the vehicle’s body',
      made,
    }),
    'pole-open': {
      text: 'reads open from its PE terminal to the outlet’s PE',
      why: 'The unit’s sheet says that the PE pole of its open-PEN measure stands open without power. With power the pole closes, and a loop test goes through it.',
      otherwise: 'a reading of some milliohms, as the pole is held closed',
    },
    'with-power': {
      text: 'carries PE on to the outlet when it has power',
      why: 'Its PE pole stands open now, so no test current reaches the outlet. A loop test with power goes through the closed pole.',
    },
    jumps: {
      text: (v) =>
        `reads more than ${limitOhms(num(v, 'greatest'))} Ω to the outlet’s PE while its cable is bent`,
      why: 'The ends of a parted core still touch while the cable lies still. When a driver moves the cable they part, and the vehicle has no earth.',
      otherwise: 'the reading jump as the cable is bent, by an ohm or to over-range',
    },
    case: {
      text: (v) => `has its metal case joined to PE (at most ${num(v, 'allowance')} Ω)`,
      why: 'If a live core touches the case, the fault current leaves through this joint and trips a device. Without the joint the case stays live for whoever touches it.',
      otherwise: 'a high reading from the unit’s PE terminal to its case, mostly over-range',
    },
    'to-met': {
      text: 'has its PE terminal joined to the earthing terminal (MET)',
      why: 'Both leads are at the unit, so the test current stays in the unit’s half of the path. The half back to the earthing terminal carries none.',
    },
  },
  limits: {
    sum: pathLimit((v) =>
      is(v, 'tethered') ? `${copper(v)}, and ${num(v, 'allowance')} Ω more for contacts` : 'contacts alone',
    ),
  },
};
