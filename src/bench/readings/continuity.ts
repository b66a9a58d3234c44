/** Resistance of conductors, by a d.c. source of at least 200 mA with nulled leads. */
import { ohmsShown } from './display.ts';
import { quantityOf } from './quantity.ts';
import { OHMS, onOneScale } from './scale.ts';

export const continuity = quantityOf({
  quantity: 'continuity',
  unit: 'Ω',
  ...onOneScale('continuity', { gain: 0.03, digits: 0.02, spans: OHMS }),
  display: ohmsShown,
  typedIn: ['Ω', 'kΩ'],
});
