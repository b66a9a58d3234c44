/** Words of the test action `papers`. */
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

export const papers: ActionWords = {
  title: 'Papers and the unit’s sheet',
  purpose: 'Know what was meant before looking at what was made.',
  lines: {
    'open-pen': {
      text: 'has a measure named against an open PEN conductor',
      why: 'The vehicle stands out of doors on the supply’s own combined conductor.',
    },
    window: {
      text: 'relies on a voltage window against an open PEN conductor of three phases',
      why: 'Balanced lines hold the neutral in its place with the PEN open: there is nothing to see.',
    },
    'at-origin': {
      text: 'has a residual device at its origin',
      why: 'Through two electrodes no overcurrent device clears a fault, and the unit’s own cannot see the cable that feeds it.',
    },
    'touch-voltage': {
      text: (v) =>
        `keeps its electrode’s resistance × ${1000 * num(v, 'rated')} mA at ${num(v, 'touchVoltage')} V or less`,
      why: 'A fault too small for the device to see may stand for good.',
    },
    'over-rating': {
      text: 'takes more than its overcurrent device is rated for',
      why: (v) =>
        `The unit is set to ${num(v, 'setCurrent')} A and may take that for hours; the device is rated ${num(v, 'rating')} A.`,
    },
    additional: {
      text: (v) =>
        `has a residual device of ${1000 * num(v, 'rated')} mA or less, type A, F or B, that opens every live conductor`,
      why: 'Each connecting point has its own, in the unit or before it.',
    },
    direct: {
      text: 'is protected against smooth d.c., by a detector or a type B device',
      why: 'D.c. from a vehicle blinds the other types.',
    },
    'type-ac': {
      text: 'rests on a type AC device',
      why: 'It answers to pure a.c. alone; a charger does not keep to that.',
    },
    'cable-carries': {
      text: 'has a cable that carries the device’s rating as it is laid',
      why: 'How it is laid is to be seen on the spot: the papers tell its length and areas.',
    },
    'own-circuit': { text: 'feeds nothing else', why: 'What hangs on the circuit is found by isolating it.' },
    'as-fitted': { text: 'has the devices fitted that the papers name', why: 'Papers tell what was meant.' },
    offer: {
      text: 'offers no more than it is set to',
      why: 'The setting is on the sheet; the offer is measured.',
    },
  },
};
